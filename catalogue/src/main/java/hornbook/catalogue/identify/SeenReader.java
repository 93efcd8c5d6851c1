package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.catalogue.entry.TraitValue;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads looks as a person writes them: {@code trait=value}, {@code trait=one|other} where it may be either,
 * {@code trait=no:value}, {@code trait=2.84 mm} or {@code .112 in}, {@code trait=absent}, {@code trait=unknown}. Of a
 * trait of many values, each named is there, {@code no:} before it that it is not, {@code none} that none is.
 */
public final class SeenReader {
    private static final String NOT = "no:";

    private final Catalogue catalogue;
    private final MeasureReader measures;

    public SeenReader(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.measures = new MeasureReader(StandardSizes.load().reader());
    }

    /**
     * Reads one look.
     *
     * @throws BadInput in one line: what is not known, and what was perhaps meant
     */
    public Seen read(String text) {
        int equals = text.indexOf('=');
        if (equals < 1) {
            throw new BadInput("“" + text + "” is no look: write trait=value, as tone-hole-rim=rolled");
        }
        Trait trait = trait(text.substring(0, equals).trim());
        String value = text.substring(equals + 1).trim();
        return switch (value) {
            case "" -> throw new BadInput(trait.id() + ": a value is missing: write one of " + values(trait));
            case Seen.CannotTell.WORD, "?" -> new Seen.CannotTell(trait.id());
            case Seen.Absent.WORD -> new Seen.Absent(trait.id());
            default -> read(trait, value);
        };
    }

    private Seen read(Trait trait, String value) {
        return switch (trait.kind()) {
            case NUMBER -> measures.read(trait, value);
            case ONE -> new Seen.OneOf(trait.id(), choices(trait, value));
            case MANY -> new Seen.Parts(trait.id(), parts(trait, value));
            case MARK -> new Seen.OneOf(trait.id(), List.of(value));
        };
    }

    private List<String> choices(Trait trait, String value) {
        List<String> named = new ArrayList<>();
        List<String> not = new ArrayList<>();
        for (String part : split(value)) {
            boolean no = part.startsWith(NOT);
            (no ? not : named).add(known(trait, no ? part.substring(NOT.length()) : part));
        }
        if (named.isEmpty()) {
            trait.values().stream()
                    .map(TraitValue::id)
                    .filter(v -> !not.contains(v))
                    .forEach(named::add);
        }
        named.removeAll(not);
        if (named.isEmpty()) {
            throw new BadInput(trait.id() + "=" + value + " leaves no value: take one of the no: away");
        }
        return named.stream().distinct().toList();
    }

    private Map<String, Boolean> parts(Trait trait, String value) {
        Map<String, Boolean> there = new LinkedHashMap<>();
        for (String part : split(value)) {
            boolean no = part.startsWith(NOT);
            String known = known(trait, no ? part.substring(NOT.length()) : part);
            if (none(known)) {
                parts(trait).forEach(v -> there.put(v, no));
            } else {
                there.put(known, !no);
            }
        }
        return there;
    }

    /** The values that can be there: all but the one that says that none is. */
    static List<String> parts(Trait trait) {
        return trait.values().stream().map(TraitValue::id).filter(v -> !none(v)).toList();
    }

    private static boolean none(String value) {
        return value.equals("none") || value.equals("none-seen") || value.equals("independent");
    }

    private static List<String> split(String value) {
        return Arrays.stream(value.split("\\|"))
                .map(String::trim)
                .filter(p -> !p.isEmpty())
                .toList();
    }

    private Trait trait(String id) {
        Trait trait = catalogue.traits().get(id);
        if (trait == null) {
            String nearest = Nearest.of(id, catalogue.traits().keySet())
                    .map(n -> "perhaps " + n + " is meant")
                    .orElse("“hornbook find --kind trait” lists them");
            throw new BadInput("trait “" + id + "” is not known: " + nearest);
        }
        return trait;
    }

    private static String known(Trait trait, String value) {
        if (trait.value(value).isPresent() || (trait.kind() == TraitKind.MANY && value.equals("none"))) {
            return value;
        }
        List<String> ids = trait.values().stream().map(TraitValue::id).toList();
        Optional<String> nearest = Nearest.of(value, ids);
        throw new BadInput(trait.id() + " has no value “" + value + "”: "
                + nearest.map(n -> "perhaps " + n + " is meant").orElse("write one of " + values(trait)));
    }

    private static String values(Trait trait) {
        return trait.kind() == TraitKind.NUMBER
                ? "a length, as 2.84 mm"
                : String.join(", ", trait.values().stream().map(TraitValue::id).toList());
    }
}
