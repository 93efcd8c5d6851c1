package hornbook.catalogue.may;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Caution;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Tool;
import hornbook.catalogue.entry.UseOn;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Says whether a thing may be used on something.
 *
 * <pre>{@code
 * new May(catalogue).answer(MayQuestion.of("acetone", "lacquer-type", "nitrocellulose")).verdict(); // STOP
 * }</pre>
 */
public final class May {
    private static final String NOTHING_SAID = "no entry says anything about it: try it where it does not show, or ask";
    private static final String DECIDES =
            "The safety data sheet of the product in hand, its label and the local code" + " decide.";

    private final Catalogue catalogue;
    private final ThingNamed named;

    public May(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.named = new ThingNamed(catalogue);
    }

    /**
     * Whether it may.
     *
     * @throws BadInput where thing, trait or value is not known
     */
    public MayAnswer answer(MayQuestion question) {
        String id = named.id(question.thing());
        Surface surface = Surface.of(question.on(), catalogue);
        List<Ground> grounds = grounds(id, surface);
        Optional<Ground> hardest = grounds.stream().findFirst();
        Allowed verdict = known(grounds, surface) ? grounds.getFirst().verdict() : Allowed.NOT_KNOWN;
        return new MayAnswer(
                id,
                named.title(id),
                verdict,
                verdict == Allowed.NOT_KNOWN ? NOTHING_SAID : grounds.getFirst().why(),
                hardest.map(Ground::instead).orElse(null),
                caution(id),
                hardest.map(Ground::source).orElse(null),
                grounds,
                lookFirst(id, surface));
    }

    /** Every use that an entry stops or warns of on a value of a trait, hardest first. */
    public List<UseOn> against(String trait, String value) {
        return uses().stream()
                .filter(u -> u.trait().equals(trait) && u.values().contains(value))
                .filter(u -> Allowed.of(u.verdict()) != Allowed.OK)
                .sorted(Comparator.comparing((UseOn u) -> u.verdict())
                        .reversed()
                        .thenComparing(UseOn::id))
                .toList();
    }

    /** An ok counts only where an entry speaks of everything that was asked; a warning counts alone. */
    private static boolean known(List<Ground> grounds, Surface surface) {
        if (grounds.isEmpty()) {
            return false;
        }
        return grounds.getFirst().verdict() != Allowed.OK
                || surface.can().entrySet().stream()
                        .allMatch(t -> t.getValue().stream()
                                .allMatch(v -> grounds.stream()
                                        .anyMatch(g -> g.trait().equals(t.getKey())
                                                && g.value().equals(v))));
    }

    private Collection<UseOn> uses() {
        return catalogue.all(UseOn.class).values();
    }

    private List<Ground> grounds(String id, Surface surface) {
        List<Ground> grounds = new ArrayList<>();
        for (UseOn use : uses()) {
            if (use.use().equals(id)) {
                surface.can().getOrDefault(use.trait(), List.of()).stream()
                        .filter(use.values()::contains)
                        .map(v -> ground(use, v, surface.assumed().contains(use.trait())))
                        .forEach(grounds::add);
            }
        }
        grounds.sort(Comparator.comparing(Ground::verdict).reversed().thenComparing(Ground::assumed));
        return grounds;
    }

    private static Ground ground(UseOn use, String value, boolean assumed) {
        return new Ground(
                use.id(),
                use.trait(),
                value,
                Allowed.of(use.verdict()),
                use.why() + (assumed ? " (" + use.trait() + " was not looked at: taken as " + value + ")" : ""),
                use.instead(),
                use.see(),
                assumed,
                use.source() + ", " + use.sureness());
    }

    private List<String> lookFirst(String id, Surface surface) {
        return uses().stream()
                .filter(u -> u.use().equals(id) && Allowed.of(u.verdict()) == Allowed.STOP)
                .map(UseOn::trait)
                .filter(t -> !surface.can().containsKey(t) || surface.assumed().contains(t))
                .distinct()
                .toList();
    }

    private @Nullable String caution(String id) {
        List<String> texts = catalogue.entry(id).stream()
                .flatMap(entry -> switch (entry) {
                    case Supply supply -> Stream.concat(Stream.ofNullable(supply.caution()), hazards(supply));
                    case Tool tool -> Stream.ofNullable(tool.caution());
                    default -> Stream.empty();
                })
                .toList();
        String text = String.join(". ", texts);
        return text.isEmpty() ? null : text.contains("safety data sheet") ? text : text + ". " + DECIDES;
    }

    private Stream<String> hazards(Supply supply) {
        return supply.hazards().stream()
                .flatMap(h -> catalogue.entry(h).stream())
                .filter(Caution.class::isInstance)
                .map(c -> ((Caution) c).text());
    }
}
