package hornbook.catalogue.edit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitKind;
import hornbook.catalogue.entry.TraitValue;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * What a field that names something may name, so that nobody has to know an id by heart.
 *
 * <p>A schema says it with the annotation {@code names}: words for kinds of entry; {@code value} for a value of the trait
 * at hand, {@code value:TRAIT} for one of that trait; {@code condition}; {@code any} for an entry or a trait with its
 * value; {@code blank} where a name may be blank.
 */
public final class Naming {
    private static final int OFFERED = 8;
    private static final String VALUE_OF = "value:";

    private final Catalogue catalogue;

    public Naming(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * What may be meant, the likeliest first.
     *
     * @param names what the field has to name
     * @param typed what stands there so far
     * @param draft the entry in which it stands
     * @param spot where in it
     */
    public List<Choice> choices(List<String> names, String typed, Draft draft, Spot spot) {
        return names.stream()
                .flatMap(name -> choices(name, typed, draft, spot))
                .distinct()
                .limit(OFFERED)
                .toList();
    }

    private Stream<Choice> choices(String name, String typed, Draft draft, Spot spot) {
        if (name.startsWith(VALUE_OF)) {
            return like(typed, valuesOf(name.substring(VALUE_OF.length())));
        }
        return switch (name) {
            case "value" -> like(typed, valuesAtHand(draft, spot));
            case "condition", "any" -> conditions(typed, name.equals("any"));
            case "blank" -> Stream.empty();
            default -> like(typed, entries(Kind.named(name).orElseThrow()));
        };
    }

    /** What a person calls what is named; empty where that is nothing, or no more than the name itself. */
    public String title(String named) {
        return catalogue
                .entry(named)
                .map(Entry::title)
                .filter(title -> !title.equals(named))
                .orElse("");
    }

    private Stream<Choice> entries(Kind kind) {
        return catalogue.all(kind).values().stream().map(entry -> new Choice(entry.id(), entry.title()));
    }

    /** The trait that the place lies in; else the trait that is being written, or that the entry speaks of. */
    private Stream<Choice> valuesAtHand(Draft draft, Spot spot) {
        Optional<String> within =
                spot.steps().stream().filter(catalogue.traits()::containsKey).findFirst();
        if (within.isEmpty() && draft.kind() == Kind.TRAIT) {
            return draft.at(Spot.of("values")).stream()
                    .flatMap(JsonNode::valueStream)
                    .map(value -> new Choice(
                            value.path("id").asString(""),
                            value.path("description").asString("")));
        }
        return valuesOf(within.orElseGet(() -> draft.text(Spot.of("trait"))));
    }

    private Stream<Choice> valuesOf(String id) {
        Trait trait = catalogue.traits().get(id);
        if (trait == null) {
            return Stream.empty();
        }
        return trait.kind() == TraitKind.NUMBER
                ? Stream.of(new Choice("mean", "usual reading"), new Choice("sd", "spread from horn to horn"))
                : trait.values().stream().map(Naming::choice);
    }

    private static Choice choice(TraitValue value) {
        return new Choice(value.id(), value.description());
    }

    /** Completes what stands behind the last sign. */
    private Stream<Choice> conditions(String typed, boolean any) {
        int from = 1
                + Stream.of("&", "|", "(", "!", " ")
                        .mapToInt(typed::lastIndexOf)
                        .max()
                        .orElse(-1);
        String before = typed.substring(0, from);
        String last = typed.substring(from);
        int equals = last.indexOf('=');
        if (equals > 0) {
            String trait = last.substring(0, equals + 1);
            return like(last.substring(equals + 1), valuesOf(last.substring(0, equals)))
                    .map(value -> new Choice(before + trait + value.text(), value.title()));
        }
        Stream<Choice> named = any
                ? catalogue.all().stream()
                        .filter(entry -> entry.entryKind() != Kind.WORD)
                        .map(entry -> new Choice(entry.id(), entry.title()))
                : Stream.of(Kind.TRAIT, Kind.MODEL, Kind.MAKE).flatMap(this::entries);
        return like(last, named).map(entry -> new Choice(before + entry.text(), entry.title()));
    }

    private static Stream<Choice> like(String typed, Stream<Choice> all) {
        String text = typed.strip().toLowerCase(Locale.ROOT);
        List<String> words = List.of(text.split("\\s+"));
        List<Choice> fit = all.filter(
                        choice -> words.stream().allMatch(word -> said(choice).contains(word)))
                .toList();
        return Stream.concat(
                fit.stream().filter(choice -> choice.text().contains(text)),
                fit.stream().filter(choice -> !choice.text().contains(text)));
    }

    private static String said(Choice choice) {
        return choice.text() + " " + choice.title().toLowerCase(Locale.ROOT);
    }
}
