package hornbook.viewer.sheet;

import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.Price;
import hornbook.catalogue.identify.Question;
import hornbook.indexer.brief.BriefQuestion;
import hornbook.shared.job.JobCard;
import hornbook.shared.shop.Job;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.owner.HandBack;
import hornbook.viewer.paper.owner.HandBackPaper;
import hornbook.viewer.paper.owner.Quote;
import hornbook.viewer.paper.owner.QuotePaper;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Prints the sheets that go to the owner of a horn. Of the owner no more than a code, and that only where it is asked for. */
public final class OwnerSheets {
    private final Workshop shop;
    private final PaperSize paper;

    public OwnerSheets(Workshop shop, PaperSize paper) {
        this.shop = shop;
        this.paper = paper;
    }

    /**
     * A quote.
     *
     * @param card of the job; empty where there is none yet
     * @param model id of the horn's model; null where not known
     * @param price null where no rate is known: its place stays blank
     * @throws hornbook.shared.shop.BadInput where the file cannot be written
     */
    public Printed quote(
            Optional<JobCard> card,
            @Nullable String model,
            EstimateAnswer time,
            @Nullable Price price,
            List<String> notDone,
            boolean withOwner,
            Path file) {
        String title = model == null
                ? "as it was shown"
                : shop.catalogue().entry(model).map(Entry::title).orElse("not placed yet");
        Quote quote = new Quote(
                card.map(JobCard::id).orElse(""),
                card.map(c -> c.horn() + ", ").orElse("") + title,
                card.map(JobCard::complaint).orElse(""),
                withOwner ? card.flatMap(this::owner).orElse(null) : null,
                card.map(JobCard::promised).orElse(null),
                time,
                price,
                card.map(OwnerSheets::agreed).orElse(List.of()),
                card.map(this::stops).orElse(List.of()),
                notDone);
        return new QuotePaper(shop.catalogue(), paper, shop.name(), shop.books().today()).print(quote, file);
    }

    private static List<String> agreed(JobCard card) {
        return card.consents().stream()
                .map(yes -> yes.what() + ", " + yes.day())
                .toList();
    }

    /** By name only: they decide price and consent. */
    private List<String> stops(JobCard card) {
        return shop.brief()
                .answer(BriefQuestion.of(Question.of(List.of()).about(card.horn())))
                .stops();
    }

    private Optional<String> owner(JobCard card) {
        return shop.books().find(Job.class, card.id()).map(Job::ownerCode);
    }

    /**
     * What goes back with the horn.
     *
     * @param told its owner is filled in where {@code withOwner}
     * @throws hornbook.shared.shop.BadInput where the file cannot be written
     */
    public Printed handBack(JobCard card, HandBack told, boolean withOwner, Path file) {
        HandBack named = withOwner
                ? new HandBack(owner(card).orElse(null), told.notDone(), told.faultsLeft(), told.billed())
                : told;
        return new HandBackPaper(
                        shop.catalogue(), paper, shop.name(), shop.books().today())
                .print(card, named, file);
    }
}
