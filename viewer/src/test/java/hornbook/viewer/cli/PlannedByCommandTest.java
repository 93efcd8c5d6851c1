package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a complaint to planned work to its minutes, by commands. */
class PlannedByCommandTest {
    @TempDir
    Path folder;

    @BeforeEach
    void makeShop() {
        DemoShop.in(folder.resolve("shop")).close();
    }

    private CalledCli call(int code, String... args) {
        CalledCli called =
                new CalledCli(Map.of("HORNBOOK_SHOP", folder.resolve("shop").toString()), "Linux", folder);
        assertThat(called.run(args))
                .as("%s %s", String.join(" ", args), called.err)
                .isEqualTo(code);
        return called;
    }

    private String out(String... args) {
        return call(0, args).out.toString();
    }

    private String refused(String... args) {
        CalledCli called = call(2, args);
        assertThat(called.err.toString()).hasLineCount(1);
        return called.err.toString();
    }

    @Test
    void theCureOfAComplaintIsPlannedAndEstimated() {
        assertThat(refused("estimate", "--job", "j-0239"))
                .contains("no work is planned on j-0239 yet", "job plan j-0239");
        String said = out("diagnose", "--job", "j-0239", "low", "notes", "burble");
        assertThat(said).contains("hornbook job plan j-0239 task-");
        String plan = said.lines()
                .filter(line -> line.contains("job plan"))
                .findFirst()
                .orElseThrow()
                .replaceFirst(",.*", "")
                .replaceFirst(".*hornbook ", "");
        out(plan.split(" "));
        out("job", "plan", "j-0239", "teardown", "pad-fit:3");
        String estimate = out("estimate", "--job", "j-0239");
        assertThat(estimate).contains(" x3").contains("min in four of five");
        assertThat(out("job", "show", "j-0239")).containsPattern("planned   .* x3");
        out("undo");
        assertThat(out("job", "show", "j-0239")).doesNotContain(" x3");
    }

    @Test
    void aTaskNamedBesideThePlanGoesBeforeIt() {
        out("job", "plan", "j-0243", "pad-fit:24");
        assertThat(out("estimate", "--job", "j-0243", "--task", "pad-fit:2", "--task", "teardown"))
                .contains(" x2")
                .doesNotContain(" x24");
    }

    @Test
    void whatCannotBePlannedIsSaid() {
        assertThat(refused("job", "plan", "j-0243", "banana")).contains("“banana” is no task");
        assertThat(refused("job", "plan", "j-0243", "pad-fit:many")).contains("write it as task-pad-fit:24");
        assertThat(refused("job", "plan", "j-0243", "pad-fit:-1")).contains("fewer than none");
        assertThat(refused("job", "plan", "j-9243", "pad-fit")).contains("there is no job j-9243");
        assertThat(refused("job", "plan", "j-0243", "pad-fit:0")).contains("planned already");
        assertThat(refused("diagnose", "--job", "j-9999")).contains("there is no job j-9999");
        assertThat(refused("diagnose")).contains("no symptom was named");
    }

    /** A person who types something else gets nothing made up, and what was perhaps meant. */
    @Test
    void whatIsNoSymptomIsRefused() {
        assertThat(call(1, "diagnose", "banana").out.toString())
                .contains("is read as no symptom", "perhaps one of these")
                .doesNotContain("%");
    }
}
