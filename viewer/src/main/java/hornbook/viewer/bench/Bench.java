package hornbook.viewer.bench;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.hornmap.HornMap;
import hornbook.catalogue.hornmap.HornMaps;
import hornbook.catalogue.identify.Answer;
import hornbook.catalogue.identify.Comparison;
import hornbook.catalogue.identify.Identify;
import hornbook.catalogue.identify.Question;
import hornbook.catalogue.identify.Seen;
import hornbook.indexer.brief.Brief;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.BriefQuestion;
import hornbook.shared.job.HornCard;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Jobs;
import hornbook.shared.job.OnBench;
import hornbook.shared.shop.BadInput;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.brief.BriefPaper;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** What the bench asks of the shop. Each call may take a while; all but the constructor run beside the window. */
public final class Bench {
    private static final String MEMBER = "family-member";
    private static final Set<String> HERE = Set.of("open", "waiting");

    private final Supplier<Catalogue> catalogue;
    private final Supplier<Identify> identify;
    private final Supplier<Brief> brief;
    private final Jobs jobs;
    private final Predicate<String> agreed;
    private final Supplier<HornMaps> maps;

    /**
     * @param catalogue asked each time, as are the others, for entries may change
     * @param agreed whether a job's owner said yes to looks that leave a mark
     */
    public Bench(
            Supplier<Catalogue> catalogue,
            Supplier<Identify> identify,
            Supplier<Brief> brief,
            Jobs jobs,
            Predicate<String> agreed,
            Supplier<HornMaps> maps) {
        this.maps = maps;
        this.catalogue = catalogue;
        this.identify = identify;
        this.brief = brief;
        this.jobs = jobs;
        this.agreed = agreed;
    }

    Weighed weigh(InHand horn) {
        Question question = horn.question();
        Identify now = identify.get();
        Answer answer = now.answer(question);
        List<String> two = firstTwo(horn, answer);
        Comparison differ = two.size() < 2 ? null : now.compare(question, two);
        return new Weighed(answer, differ, catalogue.get());
    }

    /** The best two, or the one that is watched and the best other. */
    private static List<String> firstTwo(InHand horn, Answer answer) {
        return Stream.concat(
                        Stream.ofNullable(horn.watched()),
                        answer.candidates().stream().map(c -> c.id()))
                .distinct()
                .limit(2)
                .toList();
    }

    BriefAnswer brief(InHand horn) {
        return brief.get().answer(BriefQuestion.of(horn.question()));
    }

    /**
     * Prints a brief.
     *
     * @return what came of it, in a sentence
     */
    String print(InHand horn, BriefAnswer answer, Path file) {
        String about = horn.horn() == null
                ? horn.serial()
                : horn.serial().isBlank() ? horn.horn() : horn.horn() + ", " + horn.serial();
        BriefPaper.Printed printed = new BriefPaper(catalogue.get(), PaperSize.usual()).print(answer, about, file);
        return "The brief is in " + printed.file() + ", " + printed.pages()
                + (printed.pages() == 1 ? " page." : " pages.");
    }

    /** A horn of the books, with all that was ever seen of it. */
    InHand horn(String id) {
        HornCard card = jobs.horn(id).orElseThrow(() -> new BadInput("There is no horn " + id + "."));
        String job = card.jobs().stream()
                .filter(j -> HERE.contains(j.status()))
                .map(HornCard.PastJob::id)
                .findFirst()
                .orElse(null);
        return onBench(card, job);
    }

    /** The horn of a job. */
    InHand job(String id) {
        JobCard job = jobs.job(id).orElseThrow(() -> new BadInput("There is no job " + id + "."));
        HornCard card = jobs.horn(job.horn()).orElseThrow();
        return onBench(card, HERE.contains(job.status()) ? id : null);
    }

    private InHand onBench(HornCard card, @Nullable String job) {
        List<Seen> looks = identify.get().looks(Question.of(List.of()).about(card.id()));
        String serial = card.serial().matches(".*[0-9].*") ? card.serial() : "";
        String mark = card.soldAs() == null ? "" : title(card.soldAs());
        Set<String> held = looks.stream().map(Seen::trait).collect(Collectors.toCollection(HashSet::new));
        if (!serial.isEmpty()) {
            held.add(InHand.SERIAL);
        }
        if (!mark.isEmpty()) {
            held.add(InHand.MARK);
        }
        boolean consent = job != null && agreed.test(job);
        return new InHand(card.id(), job, title(card), looks, held, serial, mark, Set.of(), null, consent, false);
    }

    private String title(HornCard card) {
        return card.model().equals("unlisted") ? card.instrument() + ", not placed yet" : title(card.model());
    }

    private String title(String id) {
        return catalogue.get().entry(id).map(Entry::title).orElse(id);
    }

    /** Its cups, as those of a model. @throws BadInput where the model is none */
    HornMap cups(InHand horn, String model) {
        return maps.get()
                .as(horn.horn(), model)
                .orElseThrow(() -> new BadInput("Nothing says which model it is: take a look or two first."));
    }

    /** Horns that are here now. */
    List<OnBench> here() {
        return jobs.onBench();
    }

    /** A horn that may be of that model: of its instrument, nothing else seen. */
    InHand model(String id) {
        Model model = catalogue.get().models().get(id);
        if (model == null) {
            throw new BadInput("There is no model " + id + ".");
        }
        List<Seen> looks =
                model.instruments().size() == 1 ? List.of(new Seen.OneOf(MEMBER, model.instruments())) : List.of();
        return new InHand(null, null, "", looks, Set.of(), "", "", Set.of(), id, false, false);
    }
}
