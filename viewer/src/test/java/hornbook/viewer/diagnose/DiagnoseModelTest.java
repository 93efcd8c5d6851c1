package hornbook.viewer.diagnose;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.diagnose.Advice;
import hornbook.catalogue.diagnose.DiagnoseQuestion;
import hornbook.shared.job.Ended;
import hornbook.shared.job.JobCard;
import hornbook.shared.shop.Went;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.diagnose.Told.ToolPlace;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is wrong with a horn of the demonstration shop, without a window. */
class DiagnoseModelTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private DiagnoseModel model;
    private final List<String> planned = new ArrayList<>();

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder.resolve("shop"));
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @BeforeEach
    void anew() {
        model = new DiagnoseModel(Work.atOnce(), new DiagnoseAsked(shop), (job, tasks) -> {
            planned.add(job);
            planned.addAll(tasks);
        });
    }

    private Told told() {
        assertThat(model.view().told()).isNotNull();
        return model.view().told();
    }

    private double chance(String cause) {
        return told().answer().causes().stream()
                .filter(c -> c.id().equals(cause))
                .findFirst()
                .orElseThrow()
                .probability();
    }

    private void askBurble() {
        model.about(new Complaint("", null, "tenor", "j-0237"));
        model.ask("low notes burble");
    }

    @Test
    void theOwnersWordsOfTheJobAreAskedAboutAtOnce() {
        JobCard job = shop.jobs().job("j-0237").orElseThrow();
        model.about("j-0237");
        assertThat(model.view().symptom()).isEqualTo(job.complaint());
        assertThat(model.view().complaint().instrument()).isEqualTo("tenor");
        assertThat(told().answer())
                .isEqualTo(
                        shop.diagnose().answer(new DiagnoseQuestion(job.complaint(), Map.of(), Set.of(), job.model())));
    }

    /** The leak light of the demonstration shop and its drawer, read from its own list of tools. */
    @Test
    void theNextCheckNamesItsToolsAndTheirDrawer() {
        askBurble();
        model.answer(false);
        while (told().answer().next() != null && !told().answer().next().id().equals("f-low-warble.2")) {
            model.answer(null);
        }
        var lamp = shop.tools().tool("tool-leak-light").orElseThrow();
        assertThat(told().tools()).containsExactly(new ToolPlace(lamp.title(), lamp.lies(), lamp.label(), true));
        assertThat(lamp.lies()).isNotNull();
    }

    @Test
    void answersMoveTheOddsAndCanBeTakenBack() {
        askBurble();
        String first = told().answer().next().id();
        double before = chance(first);
        model.answer(false);
        assertThat(chance(first)).isLessThan(before / 3);
        assertThat(told().answer().next().id()).isNotEqualTo(first);
        model.takeBackLast();
        assertThat(chance(first)).isEqualTo(before);
        model.answer(null);
        assertThat(chance(first)).isEqualTo(before);
        assertThat(told().answer().next().id()).isNotEqualTo(first);
        assertThat(model.view().checks()).hasSize(1);
    }

    @Test
    void whatIsFoundLeadsToTheJobsTasksAndIsLearned() {
        askBurble();
        String first = told().answer().next().id();
        int known = told().answer().causes().getFirst().jobs();
        model.answer(true);
        assertThat(told().answer().advice()).isEqualTo(Advice.CURE);
        assertThat(told().time()).isNotNull();
        assertThat(told().time().fromJobs().all()).isPositive();
        model.plan();
        assertThat(planned).startsWith("j-0237").hasSizeGreaterThan(1).contains("task-regulate-stack");
        model.found();
        assertThat(shop.jobs().job("j-0237").orElseThrow().findings()).anySatisfy(f -> {
            assertThat(f.what()).isEqualTo(first);
            assertThat(f.note()).isEqualTo(told().answer().causes().getFirst().text());
        });
        shop.books().undo(shop.books().deeds(1).getFirst().number());
        assertThat(shop.jobs().job("j-0237").orElseThrow().findings())
                .noneMatch(f -> f.what().equals(first));
        model.found();
        shop.closing().close("j-0237", new Ended(Went.SMOOTH, "the link was short", false));
        model.ask("low notes burble");
        assertThat(told().answer().causes().stream()
                        .filter(c -> c.id().equals(first))
                        .findFirst()
                        .orElseThrow()
                        .jobs())
                .isEqualTo(known + 1);
    }

    @Test
    void allNoSaysStopAndAsk() {
        askBurble();
        for (int i = 0; i < 20 && told().answer().advice() == Advice.CHECK; i++) {
            model.answer(false);
        }
        assertThat(told().answer().advice()).isEqualTo(Advice.ASK);
        assertThat(told().answer().why()).contains("ask somebody");
        assertThat(told().tools()).isEmpty();
    }

    @Test
    void whatCannotBeAskedIsOneLine() {
        model.ask("  ");
        assertThat(model.view().said()).contains("no symptom was named");
        model.about("j-9999");
        assertThat(model.view().said()).contains("no job j-9999");
        model.ask("smells of fish");
        assertThat(told().answer().causes()).isEmpty();
        assertThat(told().answer().nearest()).hasSize(3);
        model.plan();
        model.found();
        assertThat(planned).isEmpty();
    }
}
