package hornbook.viewer.paper.owner;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.EstimateQuestion;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.catalogue.estimate.Price;
import hornbook.catalogue.estimate.Rates;
import hornbook.shared.job.JobCard;
import hornbook.shared.shop.Contact;
import hornbook.shared.shop.Job;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Rendered;
import hornbook.viewer.paper.Spoken;
import hornbook.viewer.workshop.Workshop;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Quote and hand-back on the demonstration shop: what a customer is promised, after the trade notes. */
class OwnerPapersTest {
    private static final String JOB = "j-0164";

    @TempDir
    static Path folder;

    private static Workshop shop;
    private static JobCard card;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder.resolve("shop"));
        String owner = shop.books().find(Job.class, JOB).orElseThrow().ownerCode();
        shop.books().write("a name", w -> w.put(new Contact(owner, "Wilmet Harrowgate", "tel 555 0100")));
        card = shop.jobs().job(JOB).orElseThrow();
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    private static String quote(boolean priced) {
        EstimateAnswer time = shop.estimate()
                .estimate(new EstimateQuestion(
                        List.of(new TaskCount("task-teardown", 1), new TaskCount("task-pad-fit", 24)),
                        "m-chantreval-halyard-alto",
                        null,
                        null));
        Price price =
                Price.of(time, new Rates(new BigDecimal("60"), BigDecimal.ZERO, BigDecimal.ZERO), new BigDecimal("40"));
        Path file = folder.resolve("quote.pdf");
        new QuotePaper(
                        shop.catalogue(),
                        PaperSize.LETTER,
                        shop.name(),
                        shop.books().today())
                .print(
                        new Quote(
                                JOB,
                                "h-191",
                                card.complaint(),
                                null,
                                null,
                                time,
                                priced ? price : null,
                                List.of("snap-on spuds drilled, 2024-03-06"),
                                List.of("Snap-on resonators"),
                                List.of("no lacquer work")),
                        file);
        assertThat(Rendered.page(file, 1, 40).image().getWidth()).isPositive();
        String text = packed(Rendered.text(file));
        holds(text, Spoken.minutes((int) time.p50Min()), Spoken.minutes((int) time.p80Min()));
        if (priced) {
            holds(text, price.usual().toPlainString(), "Work stops at " + price.stopLimit());
        }
        return text;
    }

    @Test
    void aQuoteTellsBothTimesTheSpanTheStopLimitAndAsksForConsent() {
        String text = quote(true);
        holds(
                text,
                card.complaint(),
                "no lacquer work",
                "snap-on spuds drilled, 2024-03-06",
                "Snap-on resonators",
                "Teardown: keys and pads off",
                "Old parts",
                "duty of care");
    }

    @Test
    void withoutARateTheSumsAreLeftToWriteIn() {
        String text = quote(false);
        holds(text, "the sum at which work stops");
        assertThat(text.contains(packed("Work stops at"))).isFalse();
    }

    @Test
    void aHandBackTellsWhatWasDoneWhatWentInAndHowToSettleIn() {
        Path file = folder.resolve("back.pdf");
        new HandBackPaper(
                        shop.catalogue(),
                        PaperSize.A4,
                        shop.name(),
                        shop.books().today())
                .print(
                        card,
                        new HandBack(
                                null,
                                List.of("neck not straightened"),
                                List.of("low B slow"),
                                new BigDecimal("812.50")),
                        file);
        String text = packed(Rendered.text(file));
        holds(
                text,
                "Whole repad",
                "bearing sleeve, two pin holes",
                "To pay: 812.50",
                "neck not straightened",
                "low B slow",
                "four to eight weeks",
                "Worked: 18 h 23 min, quoted 15 h 45 min",
                "3.012 mm as found");
        assertThat(text).doesNotContain("cup-");
    }

    @Test
    void noNameAndNoCodeOfTheOwnerIsOnEither() {
        String owner = shop.books().find(Job.class, JOB).orElseThrow().ownerCode();
        Path file = folder.resolve("plain.pdf");
        new HandBackPaper(
                        shop.catalogue(),
                        PaperSize.A4,
                        shop.name(),
                        shop.books().today())
                .print(card, new HandBack(null, List.of(), List.of(), null), file);
        for (String text : List.of(packed(Rendered.text(file)), quote(true))) {
            for (String never : List.of("Wilmet", "Harrowgate", "5550100", owner)) {
                assertThat(text.contains(never)).as(never).isFalse();
            }
        }
    }

    private static void holds(String text, String... each) {
        for (String words : each) {
            assertThat(text.contains(packed(words))).as(words).isTrue();
        }
    }

    private static String packed(String text) {
        return text.replaceAll("\\s+", "");
    }
}
