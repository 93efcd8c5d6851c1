package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.viewer.demo.DemoShop;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What hands do at a drawer, said on the command line: the same deeds as in the window, in the same words. */
class DrawerWordsTest {
    @TempDir
    static Path folder;

    @BeforeAll
    static void makeShop() {
        DemoShop.in(folder.resolve("shop")).close();
    }

    private static CalledCli run(int code, String... words) {
        CalledCli called =
                new CalledCli(Map.of("HORNBOOK_SHOP", folder.resolve("shop").toString()), "Linux", folder);
        assertThat(called.run(words)).as(String.join(" ", words) + called.err).isEqualTo(code);
        return called;
    }

    private static JsonNode json(CalledCli called) {
        return JsonMapper.shared().readTree(called.out.toString());
    }

    /** Story 3 (scenario): discs lie under “buttons, misc.”; the label is put right, and the walk goes on. */
    @Test
    void aLabelIsPutRightAndTheNextDrawerNamed() {
        JsonNode due = json(run(0, "look-through", "--cabinet", "card", "--json"));
        assertThat(due.get("drawers").toString()).contains("d-card-r5c5");
        JsonNode done =
                json(run(0, "look-through", "d-card-r5c5", "--label", "SNAP DISCS", "--contents", "discs", "--json"));
        assertThat(done.get("drawers").get(0).get("label").asString()).isEqualTo("SNAP DISCS");
        assertThat(done.get("drawers").get(0).get("label_state").asString()).isEqualTo("right");
        assertThat(done.get("next").asString()).isEqualTo("d-card-r5c6");
        run(0, "undo");
        assertThat(json(run(0, "drawer", "d-card-r5c5", "--json")).get("label").asString())
                .isEqualTo("buttons, misc.");
    }

    @Test
    void lookingThroughWithoutSayingWhatWasFoundChangesNothing() {
        CalledCli called = run(0, "look-through", "d-card-r5c4");
        assertThat(called.err.toString()).contains("nothing is done yet");
        assertThat(run(2, "look-through", "d-card-r5c4", "--right", "--wrong")
                        .err
                        .toString())
                .contains("one of");
        assertThat(run(2, "look-through", "d-card-r5c4", "--contents", "x").err.toString())
                .contains("--right");
    }

    @Test
    void aLabelIsWrittenWithoutLookingInside() {
        run(0, "label", "d-card-r1c1", "--write", "PIVOTS I");
        JsonNode card = json(run(0, "drawer", "d-card-r1c1", "--json"));
        assertThat(card.get("label").asString()).isEqualTo("PIVOTS I");
        run(0, "undo");
        assertThat(run(2, "label", "d-card-r1c1").err.toString()).contains("--pdf");
        assertThat(run(2, "label", "d-card-r1c1", "d-card-r1c2", "--write", "X")
                        .err
                        .toString())
                .contains("one drawer");
    }

    @Test
    void aCabinetIsSetUpListedAndTakenBack() {
        JsonNode made = json(run(0, "cabinet", "Oak chest", "--rows", "2", "--columns", "3", "--json"));
        assertThat(made.get("drawers")).hasSize(6);
        assertThat(json(run(0, "cabinet", "--json")).get("cabinets").toString()).contains("Oak chest");
        run(0, "undo");
        assertThat(run(1, "cabinet", "Oak chest").err.toString()).contains("no cabinet");
        assertThat(run(2, "cabinet", "Oak chest", "--rows", "2").err.toString()).contains("--columns");
    }

    /** The die of 4-36 is lent since June 2024 (scenario, mess 5). */
    @Test
    void toolsThatWantSomethingAreNamed() {
        String wanting = run(0, "tool").out.toString();
        assertThat(wanting).contains("4-36").contains("lent");
        assertThat(json(run(0, "tool", "tool-caliper", "--json"))
                        .get("error_mm")
                        .asString())
                .isEqualTo("+0.02");
    }

    @Test
    void aBagIsSortedOutWhereTheLikesLie() {
        CalledCli asked = run(
                0, "stock", "sort-out", "lot-0499", "1", "pivot screw", "--thread", "3-48", "--size", "length 10.4");
        assertThat(asked.out.toString().lines().findFirst().orElseThrow()).startsWith("lot-0001");
        assertThat(asked.err.toString()).contains("nothing is done yet");
        JsonNode done = json(run(0, "stock", "sort-out", "lot-0499", "1", "pivot screw", "--to", "hook 1", "--json"));
        assertThat(done.get("lots").toString()).contains("lot-0499").contains("sorted out of");
        run(0, "undo");
        assertThat(run(2, "stock", "sort-out", "lot-0499", "1", "x", "--thread", "3-47", "--to", "hook 1")
                        .err
                        .toString())
                .contains("thread");
    }

    @Test
    void aWordWhereASizeOrNumberBelongsIsRefusedInPlainWords() {
        String rod = "part-hinge-rod";
        assertThat(run(2, "fit", "--kind", rod, "--diameter", "thick").err.toString())
                .contains("“thick” is no size");
        assertThat(run(2, "fit", "--kind", rod, "--length", "long").err.toString())
                .contains("“long” is no size");
        assertThat(run(2, "cabinet", "Oak chest", "--rows", "two", "--columns", "3")
                        .err
                        .toString())
                .contains("“two” is no whole number");
        assertThat(run(2, "estimate", "--task", "task-inspect", "--rate", "dear")
                        .err
                        .toString())
                .contains("“dear” is no number")
                .doesNotContain("Exception");
        assertThat(run(2, "drawer").err.toString()).contains("say which drawer");
        assertThat(run(2, "job", "pad", "j-0240", "cup-f", "31", "--lot", "lot-0262")
                        .err
                        .toString())
                .contains("no pad");
    }

    @Test
    void aJobWhoseHornIsNotPlacedIsEstimatedByItsInstrument() {
        CalledCli in = run(0, "job", "take-in", "--complaint", "leaks", "--instrument", "tenor", "--json");
        String job = json(in).get("id").asString();
        run(0, "estimate", "--task", "task-pads-out:24", "--job", job);
        run(0, "undo");
    }

    @Test
    void aNameThatSaysNoKindIsRemarkedOn() {
        assertThat(run(0, "stock", "new", "gadget", "1", "--in", "hook 1").err.toString())
                .contains("--kind");
        assertThat(run(0, "stock", "new", "neck screw", "1", "--in", "hook 1")
                        .err
                        .toString())
                .doesNotContain("--kind");
        run(0, "undo");
        run(0, "undo");
    }
}
