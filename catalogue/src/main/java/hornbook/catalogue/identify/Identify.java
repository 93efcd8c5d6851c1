package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Nearest;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Says what horn it is, how sure that is, and what to look at next.
 *
 * <pre>{@code
 * Identify identify = new Identify(catalogue, books);
 * Answer answer = identify.answer(Question.of(List.of(reader.read("tone-hole-rim=rolled"))));
 * }</pre>
 *
 * <p>Safe to ask from several threads. What the horns in the books teach is gathered at the first question and anew
 * once the books have changed.
 */
public final class Identify {
    private static final double LEAST = 1e-6;

    private final Catalogue catalogue;
    private final @Nullable Books books;
    private final Cases cases;
    private final AtomicReference<@Nullable Gathered> gathered = new AtomicReference<>();

    private record Gathered(long feedEnd, Experience experience, Knowledge plain, Knowledge learned) {}

    /** @param books the shop's; without them only what entries state counts */
    public Identify(Catalogue catalogue, @Nullable Books books) {
        this.catalogue = catalogue;
        this.books = books;
        this.cases = new Cases(catalogue, books);
    }

    /**
     * What it may be.
     *
     * @throws BadInput where the question names what is not known
     */
    public Answer answer(Question question) {
        Asked asked = ask(question);
        Standing standing = asked.standing();
        List<QuirkDoubt> doubts = asked.knowledge().doubts(standing);
        List<Candidate> candidates = candidates(asked);
        double unlisted = standing.posterior()[standing.unlisted()];
        Oddities oddities = new Oddities(standing);
        NextLooks.Offer looks = asked.knowledge().nextLooks().offer(standing, doubts, question.consent());
        return new Answer(
                Said.line(candidates, unlisted),
                candidates,
                unlisted,
                years(asked).orElse(null),
                looks.safe(),
                looks.marking(),
                oddities.odd(listedBest(standing)),
                remarks(asked, oddities),
                standing.exponent());
    }

    /** Where these models differ, what would part them, and what of this horn fits none of them. */
    public Comparison compare(Question question, List<String> ids) {
        Asked asked = ask(question);
        return new Comparing(asked.standing())
                .compare(ids.stream().map(this::entry).toList());
    }

    /** How likely each quirk bites, all entries and unlisted together, in the order of the catalogue. */
    public List<QuirkChance> quirks(Question question) {
        Asked asked = ask(question);
        return asked.knowledge().doubts(asked.standing()).stream()
                .map(d -> new QuirkChance(d.quirk().id(), d.probability(), settling(d, asked)))
                .toList();
    }

    /** Chances of each value of a trait of one value, all entries together; empty for any other trait. */
    public Map<String, Double> values(Question question, String trait) {
        Asked asked = ask(question);
        return new TraitChances(asked.standing()).of(trait);
    }

    /** The looks that count for a question: what was said, and what the books hold of its horn besides. */
    public List<Seen> looks(Question question) {
        return cases.of(question, gather().experience()).seen();
    }

    private static List<String> settling(QuirkDoubt doubt, Asked asked) {
        return asked.knowledge().open(doubt.quirk(), asked.standing()).stream()
                .sorted(Comparator.comparingDouble(t -> -doubt.falls().getOrDefault(t, 0.0)))
                .toList();
    }

    private record Asked(Knowledge knowledge, Case horn, Standing standing) {}

    private Asked ask(Question question) {
        Gathered now = gather();
        Case horn = cases.of(question, now.experience());
        Knowledge knowledge = question.plain() ? now.plain() : now.learned();
        return new Asked(knowledge, horn, knowledge.stand(horn));
    }

    private Gathered gather() {
        long feedEnd = books == null ? 0 : books.feedEnd();
        Gathered known = gathered.get();
        if (known != null && known.feedEnd() == feedEnd) {
            return known;
        }
        Experience experience = books == null ? Experience.NONE : new ExperienceReader(catalogue, books).read();
        Gathered anew = new Gathered(
                feedEnd, experience, Knowledge.plain(catalogue, experience), Knowledge.learned(catalogue, experience));
        gathered.set(anew);
        return anew;
    }

    private static List<Candidate> candidates(Asked asked) {
        Standing standing = asked.standing();
        Reasons reasons = new Reasons(standing);
        Dating dating = new Dating(asked.horn().serial());
        return IntStream.range(0, standing.unlisted())
                .filter(e -> standing.posterior()[e] >= LEAST)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer e) -> -standing.posterior()[e])
                        .thenComparing(e -> standing.models().get(e).id()))
                .map(e -> candidate(standing, reasons, dating, e))
                .toList();
    }

    private static Candidate candidate(Standing standing, Reasons reasons, Dating dating, int e) {
        Model model = standing.models().get(e);
        return new Candidate(
                model.id(),
                model.title(),
                standing.posterior()[e],
                Dating.span(dating.years(model)).orElse(null),
                reasons.of(e));
    }

    private static java.util.Optional<YearSpan> years(Asked asked) {
        Standing standing = asked.standing();
        Dating dating = new Dating(asked.horn().serial());
        double @Nullable [] sum = null;
        for (int e = 0; e < standing.unlisted(); e++) {
            double weight = standing.posterior()[e];
            if (weight >= LEAST) {
                double[] own = dating.years(standing.models().get(e));
                sum = sum == null ? new double[own.length] : sum;
                for (int y = 0; y < own.length; y++) {
                    sum[y] += weight * own[y];
                }
            }
        }
        return sum == null ? java.util.Optional.empty() : Dating.span(sum);
    }

    private static List<Integer> listedBest(Standing standing) {
        return IntStream.range(0, standing.unlisted())
                .boxed()
                .max(Comparator.comparingDouble(e -> standing.posterior()[e]))
                .stream()
                .toList();
    }

    private List<String> remarks(Asked asked, Oddities oddities) {
        List<String> remarks = new ArrayList<>(oddities.remarks(asked.standing().best()));
        String mark = asked.horn().mark();
        if (mark != null && !asked.knowledge().weighing().knowsMark(mark)) {
            remarks.add("the name “" + mark + "” is not known here: it changes nothing");
        }
        SerialReading serial = asked.horn().serial();
        if (serial != null && !serial.told()) {
            remarks.add("no digit of the serial could be read: it changes nothing");
        }
        return remarks;
    }

    private int entry(String id) {
        List<Model> models =
                Objects.requireNonNull(gathered.get()).plain().weighing().models();
        for (int e = 0; e < models.size(); e++) {
            if (models.get(e).id().equals(id)) {
                return e;
            }
        }
        throw new BadInput("model “" + id + "” is not known: "
                + Nearest.of(id, catalogue.models().keySet())
                        .map(n -> "perhaps " + n + " is meant")
                        .orElse("“hornbook find --kind model” lists them"));
    }
}
