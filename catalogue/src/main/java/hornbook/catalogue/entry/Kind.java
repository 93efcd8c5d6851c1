package hornbook.catalogue.entry;

import java.util.Arrays;
import java.util.Optional;

/** The kinds of entry, in the order in which they are listed. */
public enum Kind implements Worded {
    TRAIT("trait", Trait.class),
    MAKE("make", Make.class),
    SELLER("seller", Seller.class),
    MODEL("model", Model.class),
    QUIRK("quirk", Quirk.class),
    FAULT("fault", Fault.class),
    PART("part", Part.class),
    TOOL("tool", Tool.class),
    SUPPLY("supply", Supply.class),
    OPERATION("operation", Operation.class),
    USE_ON("use-on", UseOn.class),
    TASK("task", Task.class),
    STAGE("stage", Stage.class),
    FINDING("finding", MeasureTaken.class),
    CUP("cup", Cup.class),
    SPRING("spring", SpringChoice.class),
    INSTRUMENT("instrument", Instrument.class),
    CAUTION("caution", Caution.class),
    STATEMENT("statement", HazardStatement.class),
    PICTOGRAM("pictogram", Pictogram.class),
    ALLOY("alloy", Alloy.class),
    GRIT("grit", Grit.class),
    PRACTICE("practice", Practice.class),
    WORD("word", Word.class);

    private final String word;
    private final Class<? extends Entry> type;

    Kind(String word, Class<? extends Entry> type) {
        this.word = word;
        this.type = type;
    }

    /** The word as written in commands and as the name of its folder. */
    @Override
    public String word() {
        return word;
    }

    /** The record that holds it. */
    public Class<? extends Entry> type() {
        return type;
    }

    /** Makes its record. */
    Entry read(Fields in) {
        return switch (this) {
            case TRAIT -> Trait.from(in);
            case MAKE -> Make.from(in);
            case SELLER -> Seller.from(in);
            case MODEL -> Model.from(in);
            case QUIRK -> Quirk.from(in);
            case FAULT -> Fault.from(in);
            case PART -> Part.from(in);
            case TOOL -> Tool.from(in);
            case SUPPLY -> Supply.from(in);
            case OPERATION -> Operation.from(in);
            case USE_ON -> UseOn.from(in);
            case TASK -> Task.from(in);
            case STAGE -> Stage.from(in);
            case FINDING -> MeasureTaken.from(in);
            case CUP -> Cup.from(in);
            case SPRING -> SpringChoice.from(in);
            case INSTRUMENT -> Instrument.from(in);
            case CAUTION -> Caution.from(in);
            case STATEMENT -> HazardStatement.from(in);
            case PICTOGRAM -> Pictogram.from(in);
            case ALLOY -> Alloy.from(in);
            case GRIT -> Grit.from(in);
            case PRACTICE -> Practice.from(in);
            case WORD -> Word.from(in);
        };
    }

    /** The kind of that word, if there is one. */
    public static Optional<Kind> named(String word) {
        return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
    }

    /** The kind that a record belongs to. */
    static Kind of(Class<? extends Entry> type) {
        return Arrays.stream(values())
                .filter(k -> k.type == type)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("No kind of entry for " + type));
    }
}
