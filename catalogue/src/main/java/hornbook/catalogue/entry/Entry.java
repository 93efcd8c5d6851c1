package hornbook.catalogue.entry;

/** A piece of knowledge with its source: shipped, or the shop's own. Immutable. */
public sealed interface Entry
        permits Alloy,
                Caution,
                Cup,
                Fault,
                Grit,
                HazardStatement,
                Instrument,
                Make,
                MeasureTaken,
                Model,
                Operation,
                Pictogram,
                Practice,
                Quirk,
                Seller,
                SpringChoice,
                Stage,
                Task,
                Thing,
                Trait,
                UseOn,
                Word {
    /** Unique among all entries: small letters, digits, hyphens and dots. */
    String id();

    /** What a person calls it. */
    String title();

    /** Where it comes from. */
    String source();

    /** How sure it is, in words. */
    String sureness();

    /** What kind of entry it is. */
    default Kind entryKind() {
        return Kind.of(getClass());
    }

    /** Source and sureness together. */
    default Provenance provenance() {
        return new Provenance(source(), sureness());
    }
}
