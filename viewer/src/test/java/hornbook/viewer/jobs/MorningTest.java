package hornbook.viewer.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.job.JobCard;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.Lot;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.clock.ClockModel;
import hornbook.viewer.clock.TaskChoice;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A morning at the bench without a widget: a horn is taken in, worked on, and handed back. */
class MorningTest {
    @TempDir
    Path folder;

    private final List<String> mapped = new ArrayList<>();
    private Workshop shop;
    private JobsModel model;

    @BeforeEach
    void open() {
        shop = DemoShop.in(folder.resolve("shop"));
        ClockModel clock = new ClockModel(
                Work.atOnce(),
                shop.jobs(),
                shop.clocks(),
                new TaskChoice(shop::catalogue, shop.jobs(), shop.usualWork()));
        model = new JobsFromShop(shop, Work.atOnce()).model(clock, mapped::add, name -> Optional.empty());
        model.inView().refresh();
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private JobCard card() {
        return model.view().page().card();
    }

    private void answer(String... fields) {
        Map<String, String> given = new java.util.HashMap<>();
        for (int i = 0; i < fields.length; i += 2) {
            given.put(fields[i], fields[i + 1]);
        }
        model.answer(new Answers(given));
    }

    private void takeIn() {
        model.begin(Act.TAKE_IN);
        model.choose("new");
        answer(
                "complaint", "low C burbles",
                "instrument", "alto",
                "kind", "partial",
                "serial", "40?367",
                "mark", "Merrivane",
                "promised", "14",
                "quoted", "180");
    }

    @Test
    void aHornComesInUnderTheNameOnIt() {
        model.begin(Act.TAKE_IN);
        model.choose("new");
        answer("complaint", "", "instrument", "alto", "kind", "partial");
        assertThat(model.view().ask().trouble()).contains("fill it in");
        answer("complaint", "burbles", "instrument", "alto", "kind", "partial", "promised", "Friday");
        assertThat(model.view().ask().trouble()).contains("is no day");
        takeIn();
        assertThat(model.view().ask()).isNull();
        assertThat(card().complaint()).isEqualTo("low C burbles");
        assertThat(card().quotedMin()).isEqualTo(180);
        assertThat(card().promised()).isEqualTo(shop.books().today().plusDays(14));
        Horn horn = shop.books().find(Horn.class, card().horn()).orElseThrow();
        assertThat(horn.soldAs()).isEqualTo("s-merrivane");
        assertThat(model.view().bench()).anyMatch(on -> on.id().equals(card().id()));
    }

    /** Usual tenon of an alto 23.5 to 25.0 mm: findings.csv, common practice, from memory. */
    @Test
    void aReadingSaysWhatIsUsualAndAnOutlierAsksButIsKept() {
        takeIn();
        model.begin(Act.FINDING);
        assertThat(model.view().pick().options().getFirst().words()).contains("tenon");
        model.choose("finding-tenon-od");
        assertThat(model.view().ask().title()).contains("Usual: 23.5-25.0 mm");
        answer("value", "");
        assertThat(model.view().ask().trouble()).contains("as read");
        answer("value", "27,1", "tool", "tool-caliper");
        assertThat(model.view().remark())
                .contains("outside the usual 23.5-25.0")
                .contains("foreign neck");
        assertThat(card().findings()).singleElement().satisfies(f -> {
            assertThat(f.value()).isEqualTo("27.1");
            assertThat(f.unit()).isEqualTo("mm");
        });
        assertThat(model.leave()).isTrue();
        assertThat(model.view().remark()).isNull();
    }

    @Test
    void aPartGoesOutOfItsDrawerAndUndoPutsItBack() {
        model.inView().open("j-0238");
        model.begin(Act.PART);
        model.typed("corvane disc 19");
        assertThat(model.view().pick().options()).anyMatch(o -> o.value().equals("lot-0262"));
        String before = count("lot-0262");
        model.choose("lot-0262");
        assertThat(count("lot-0262")).isEqualTo("2").isNotEqualTo(before);
        assertThat(card().parts()).extracting(JobCard.PartLine::lot).contains("lot-0262");
        shop.books().undo(shop.books().deeds(1).getFirst().number());
        assertThat(count("lot-0262")).isEqualTo(before);
        model.begin(Act.PART);
        model.choose("lot-0496");
        assertThat(model.view().pick().trouble()).as("a pattern is never used").contains("keepsake");
    }

    private String count(String lot) {
        return shop.books().find(Lot.class, lot).orElseThrow().count().written();
    }

    /** Story 8: the shop's clocks lift the book's 1131 minutes; the true P50 is 1503. */
    @Test
    void whatWillItCost() {
        model.inView().open("j-0243");
        model.begin(Act.ESTIMATE);
        Expected first = model.view().expected();
        assertThat(first.answer().p50Min()).isGreaterThan(first.answer().bookMin());
        assertThat(first.answer().fromJobs().make()).isGreaterThanOrEqualTo(13);
        model.expected().change("task-free-screw", 6);
        assertThat(model.view().expected().answer().p50Min())
                .isGreaterThan(first.answer().p50Min());
        assertThat(shop.jobs().job("j-0243").orElseThrow().planned())
                .contains(new JobCard.PlannedLine("task-free-screw", 6));
        model.quote(model.view().expected().answer().p80Min());
        assertThat(card().quotedMin()).isGreaterThan(1000);
    }

    @Test
    void whatDiagnoseMakesTheJobsTasksIsInItsBooks() {
        model.plan("j-0237", List.of("task-regulate-stack", "task-leak-check"));
        assertThat(shop.jobs().job("j-0237").orElseThrow().planned())
                .extracting(JobCard.PlannedLine::task)
                .containsExactly("task-regulate-stack", "task-leak-check");
        assertThat(model.view().expected().tasks()).hasSize(2);
        model.expected().change("task-leak-check", 0);
        assertThat(shop.jobs().job("j-0237").orElseThrow().planned()).hasSize(1);
        shop.books().undoLast();
        model.inView().refresh();
        assertThat(model.view().expected().tasks()).hasSize(2);
        assertThat(model.view().expected().planned()).isTrue();
    }

    @Test
    void pastJobsOfTheSamePatternAreAtHand() {
        model.inView().open("j-0237");
        assertThat(model.view().kin()).extracting(past -> past.id()).contains("j-0164");
        model.begin(Act.PAST);
        model.typed("spanner");
        assertThat(model.view().pick().options()).isNotEmpty();
        model.choose("j-0164");
        assertThat(card().id()).isEqualTo("j-0164");
        assertThat(model.view().page().open()).isFalse();
    }

    @Test
    void itIsClosedHandedBackAndTeachesItsModel() throws IOException {
        model.inView().open("j-0243");
        model.begin(Act.DOWN);
        answer("piece", "neck", "how", "one thumb screw");
        model.begin(Act.TIMER);
        answer("what", "penetrant", "minutes", "0");
        assertThat(model.view().ask().trouble()).contains("one or more");
        answer("what", "penetrant", "minutes", "90");
        assertThat(card().standing().timers()).hasSize(1);
        model.ready(card().standing().timers().getFirst().id());
        assertThat(card().standing().timers()).isEmpty();
        model.begin(Act.WHERE);
        answer("piece", "horn", "where", "hook 2", "waits", "stack rod");
        model.begin(Act.YES);
        answer("what", "try the frozen rod", "by", "O-119");
        model.begin(Act.MAP);
        assertThat(mapped).containsExactly("h-200");
        Path picture = folder.resolve("bench.png");
        ImageIO.write(new BufferedImage(4, 4, BufferedImage.TYPE_INT_RGB), "png", picture.toFile());
        model.photo(picture);
        answer("word", "as it came");
        assertThat(shop.photos().file(card().photos().getFirst().file())).isNotEmptyFile();
        model.begin(Act.CLOSE);
        answer("grade", "fair", "sentence", "one rod fought", "back", "goes", "teach", "yes");
        assertThat(model.view().trouble()).isNull();
        Job job = shop.books().find(Job.class, "j-0243").orElseThrow();
        assertThat(job.status()).isEqualTo(JobStatus.DONE);
        assertThat(card().standing().pieces())
                .singleElement()
                .satisfies(piece -> assertThat(piece.where()).contains("handed back"));
        assertThat(shop.catalogue().models().get("m-brindlow-nightferry-tenor").takingDown())
                .isNotEmpty();
        assertThat(Act.fitting(model.view().page())).contains(Act.FOLLOW_UP).doesNotContain(Act.PART);
        shop.books().undoLast();
        model.inView().refresh();
        assertThat(card().status())
                .as("closed, taught and handed back in one deed")
                .isEqualTo("open");
        assertThat(card().standing().pieces()).extracting(p -> p.where()).containsExactly("hook 2");
        assertThat(shop.catalogue().models().get("m-brindlow-nightferry-tenor").takingDown())
                .isEmpty();
    }

    @Test
    void countsAndMinutesArePutRight() {
        model.inView().open("j-0243");
        int before = card().minutes();
        shop.clocks().told("j-0243", "task-inspect", 1, 30, null, "N.O.");
        shop.clocks().start("j-0243", "task-pad-fit", 1, "N.O.");
        model.inView().refresh();
        model.begin(Act.TIMES);
        assertThat(model.view().pick().options().getFirst().note()).contains("its clock runs");
        model.choose("task-pad-fit");
        answer("count", "24", "minutes", "0");
        assertThat(card().standing().clocks().getFirst().count()).isEqualTo(24);
        model.begin(Act.TIMES);
        model.choose("task-inspect");
        answer("count", "0", "minutes", "20");
        assertThat(model.view().ask().trouble()).contains("one or more");
        answer("count", "1", "minutes", "20");
        assertThat(card().tasks())
                .filteredOn(line -> line.task().equals("task-inspect"))
                .extracting(JobCard.TaskLine::minutes)
                .containsExactly(20);
        model.begin(Act.TIMES);
        model.choose("another");
        model.choose("task-quote");
        answer("minutes", "15", "count", "1");
        assertThat(card().minutes()).isEqualTo(before + 20 + 15);
    }

    @Test
    void whatIsAgreedAtTheCounterIsWrittenDownWithItsDay() {
        model.begin(Act.TAKE_IN);
        model.choose("new");
        answer(
                "complaint",
                "bell dented",
                "instrument",
                "tenor",
                "kind",
                "body",
                "owner",
                "O-200",
                "consent",
                "dents lifted, lacquer may mark",
                "note",
                "case, no neck screw");
        assertThat(card().consents()).singleElement().satisfies(yes -> {
            assertThat(yes.day()).isEqualTo(shop.books().today());
            assertThat(yes.saidBy()).isEqualTo("O-200");
        });
        assertThat(card().note()).isEqualTo("case, no neck screw");
    }
}
