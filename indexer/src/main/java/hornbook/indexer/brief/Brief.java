package hornbook.indexer.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Seller;
import hornbook.catalogue.identify.Answer;
import hornbook.catalogue.identify.Identify;
import hornbook.catalogue.identify.Question;
import hornbook.catalogue.may.May;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.store.Books;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Says what will bite on a horn, what to fetch, and how the last one went.
 *
 * <pre>{@code
 * BriefAnswer answer = new Brief(catalogue, books, identify, may).answer(BriefQuestion.of(question));
 * }</pre>
 */
public final class Brief {
    private final Catalogue catalogue;
    private final Books books;
    private final Identify identify;
    private final May may;
    private final WrongScrews wrong = new WrongScrews();

    public Brief(Catalogue catalogue, Books books, Identify identify, May may) {
        this.catalogue = catalogue;
        this.books = books;
        this.identify = identify;
        this.may = may;
    }

    /**
     * The brief.
     *
     * @throws hornbook.shared.shop.BadInput where the question names what is not known
     */
    public BriefAnswer answer(BriefQuestion question) {
        Question horn = question.horn();
        Answer who = identify.answer(horn);
        Likely likely = Likely.of(who.candidates(), catalogue);
        List<QuirkLine> quirks = new QuirkLines(catalogue, met(horn.horn())).of(identify.quirks(horn));
        Wants wants = new Wants(catalogue, quirks);
        Body body = new Body(catalogue, likely, wrong);
        Optional<Model> best = likely.best();
        Optional<Model> taken = body.takenDown();
        return new BriefAnswer(
                who.says(),
                best.map(Model::id).orElse(null),
                best.map(Model::title).orElse(null),
                quirks.stream()
                        .filter(q -> q.caution() == CautionLevel.STOP)
                        .map(QuirkLine::title)
                        .toList(),
                quirks,
                new FetchList(catalogue, wants, new Shelves(books, likely, question.reserve())).list(),
                body.threads(),
                best.map(Model::map).orElse(List.of()),
                taken.map(Model::takingDown).orElse(List.of()),
                taken.filter(t -> !t.takingDown().isEmpty() && !t.equals(best.orElse(null)))
                        .map(Model::id)
                        .orElse(null),
                body.pads(books, horn.horn()),
                best.map(Model::keyHeights).orElse(Map.of()),
                new PastJobs(books, catalogue, likely, horn.horn(), seller(horn)).list(),
                new Cautions(catalogue).of(wants.things()),
                new Forbidden(catalogue, identify, may).list(horn));
    }

    /** Quirks that findings say were met on the horn, each with its job. */
    private Map<String, String> met(@Nullable String horn) {
        Map<String, String> met = new LinkedHashMap<>();
        if (horn != null) {
            for (Finding finding : books.where(Finding.class, "horn", horn)) {
                if (catalogue.quirks().containsKey(finding.what())) {
                    met.put(finding.what(), finding.job());
                }
            }
        }
        return met;
    }

    private @Nullable Seller seller(Question horn) {
        String name = horn.mark();
        String id = horn.horn() == null
                ? null
                : books.find(Horn.class, horn.horn()).map(Horn::soldAs).orElse(null);
        return catalogue.sellers().values().stream()
                .filter(s -> s.id().equals(id) || name != null && s.title().equalsIgnoreCase(name.trim()))
                .findFirst()
                .orElse(null);
    }
}
