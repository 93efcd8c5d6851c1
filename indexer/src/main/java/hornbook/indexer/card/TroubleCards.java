package hornbook.indexer.card;

import hornbook.catalogue.entry.Cause;
import hornbook.catalogue.entry.Condition;
import hornbook.catalogue.entry.Conditions;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.Quirk;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import hornbook.catalogue.entry.Wanted;
import java.util.Collection;

/** Cards of traits, quirks and faults. */
final class TroubleCards {
    /** A look helps; what bites is what was asked for. */
    private static final float LOOK = 0.85f;

    private static final float VALUE = 2;
    private static final float CONDITION = 2.5f;

    Draft trait(Trait trait) {
        Draft card = Card.draft("trait", trait.id(), trait.title())
                .say(Field.NAME, words(trait.id()))
                .say(Field.GIST, trait.question())
                .say(Field.TEXT, trait.look())
                .say(Field.TEXT, trait.usual())
                .say(Field.TEXT, trait.missNote())
                .standing(LOOK);
        for (TraitValue value : trait.values()) {
            card.say(Field.GIST, words(value.id()) + ": " + value.description());
            card.concept(trait.id() + "=" + value.id(), VALUE);
        }
        return card;
    }

    Draft quirk(Quirk quirk) {
        Draft card = Card.draft("quirk", quirk.id(), quirk.title())
                .say(Field.NAME, words(quirk.id().substring(2)))
                .say(Field.GIST, quirk.bites())
                .say(Field.TEXT, quirk.whatToDo())
                .say(Field.TEXT, quirk.confirm());
        Conditions.leaves(quirk.when()).forEach(leaf -> condition(card, leaf));
        wanted(card, quirk.tools());
        wanted(card, quirk.parts());
        wanted(card, quirk.supplies());
        return card;
    }

    private static void condition(Draft card, Condition leaf) {
        switch (leaf) {
            case Condition.Is(String trait, String value) -> {
                card.concept(trait + "=" + value, CONDITION);
                card.link(trait, 0.5f);
            }
            case Condition.Between(String trait, double low, double high) -> card.link(trait, 0.5f);
            case Condition.Of(String id) -> card.concept(id, CONDITION);
            default -> {}
        }
    }

    private static void wanted(Draft card, Collection<Wanted> all) {
        for (Wanted wanted : all) {
            card.link(wanted.id(), 0.3f);
            card.say(Field.TEXT, wanted.note());
        }
    }

    Draft fault(Fault fault) {
        Draft card = Card.draft("fault", fault.id(), fault.title())
                .say(Field.NAME, words(fault.id().substring(2)))
                .say(Field.TEXT, fault.check())
                .say(Field.GIST, fault.remedy());
        for (Cause cause : fault.causes()) {
            card.say(Field.GIST, cause.text()).say(Field.TEXT, cause.check());
            card.link(cause.fault(), (float) cause.share());
        }
        fault.quirks().forEach(quirk -> card.link(quirk, 0.5f));
        return card;
    }

    /** The words in an id are names too: {@code bell-key-side}. */
    static String words(String id) {
        return id.replace('-', ' ').replace('.', ' ');
    }
}
