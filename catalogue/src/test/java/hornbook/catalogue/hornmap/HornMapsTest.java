package hornbook.catalogue.hornmap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryCheck;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Span;
import hornbook.catalogue.identify.Demo;
import hornbook.shared.job.JobBook;
import hornbook.shared.job.KeyField;
import hornbook.shared.job.Look;
import hornbook.shared.job.MapBook;
import hornbook.shared.job.PadFitted;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** On the demonstration shop; usual openings as in the trade's table key_heights.csv (from memory, fair). */
class HornMapsTest {
    @TempDir
    Path folder;

    private Demo demo;

    @BeforeEach
    void open() {
        demo = new Demo(folder);
    }

    @AfterEach
    void close() {
        demo.close();
    }

    private HornMap map(String job) {
        return new HornMaps(demo.catalogue(), demo.books(), StandardSizes.load().reader())
                .job(job)
                .orElseThrow();
    }

    private static CupLine cup(HornMap map, String id) {
        return map.cups().stream()
                .filter(line -> line.cup().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Story 5: the cups of both repads were measured; 31 mm is wanted by cup F of the first. */
    @Test
    void whatWasReadOnTheHornStandsBeforeWhatItsModelHas() {
        HornMap map = map("j-0240");
        assertThat(map.job()).isEqualTo("j-0240");
        CupLine f = cup(map, "cup-f");
        assertThat(f.inside()).isNotNull().satisfies(size -> {
            assertThat(size.mm()).isBetween(30.75, 31.25);
            assertThat(size.from()).isEqualTo("j-0240");
        });
        assertThat(f.pad()).isNotNull().satisfies(pad -> assertThat(pad.own()).isFalse());
        assertThat(f.usualHeight()).isEqualTo(new Span(6.2, 7.6));
        assertThat(map.cups()).extracting(CupLine::cup).doesNotContain("cup-high-g");
        assertThat(f.key()).extracting(CupLine.KeyMeasure::field).contains("rod-diameter", "thread");
    }

    @Test
    void anOutlierRaisesAQuestionAndBarsNothing() {
        new JobBook(demo.books()).find("j-0240", new Look("finding-key-height", "cup-f", "9.1", "mm", false, null, ""));
        CupLine f = cup(map("j-0240"), "cup-f");
        assertThat(f.found()).isEqualTo(new CupLine.Size(9.1, "j-0240"));
        assertThat(f.remarks()).anySatisfy(remark -> assertThat(remark).contains("outside the usual 6.2-7.6 mm"));
        Usuals usuals = new Usuals(demo.catalogue());
        assertThat(usuals.of("finding-tenon-od", "alto", "", 24.0).orElseThrow().outside())
                .isFalse();
        Usualness foreign = usuals.of("finding-tenon-od", "alto", "", 27.0).orElseThrow();
        assertThat(foreign.outside()).isTrue();
        assertThat(foreign.usual()).isEqualTo("23.5-25.0");
        assertThat(foreign.means()).contains("foreign neck");
        assertThat(usuals.all("alto")).hasSize(46);
    }

    /** The demonstration's height gauge reads too much or too little by what the shop knows. */
    @Test
    void theKnownErrorOfAToolIsTakenOff() {
        new JobBook(demo.books())
                .find("j-0240", new Look("finding-cup-id", "cup-d", "33.30", "mm", false, "tool-caliper", ""));
        String error = demo.books()
                .find(hornbook.shared.shop.ShopTool.class, "tool-caliper")
                .orElseThrow()
                .errorMm();
        double off = error.isBlank() ? 0 : Double.parseDouble(error);
        assertThat(cup(map("j-0240"), "cup-d").inside())
                .isNotNull()
                .satisfies(size -> assertThat(size.mm()).isCloseTo(33.30 - off, within(0.0005)));
    }

    @Test
    void whatAJobTaughtGoesIntoTheEntryOnceAndComesOutAgain() {
        Lessons before = new Lessons(demo.catalogue(), demo.books());
        assertThat(before.of("j-0243")).isEmpty();
        assertThatThrownBy(() -> before.teach("j-0243")).isInstanceOf(BadInput.class);
        Model was = demo.catalogue().models().get("m-brindlow-nightferry-tenor");
        new JobBook(demo.books()).tookDown("j-0243", "neck", "one thumb screw", "");
        new MapBook(demo.books()).measure("j-0243", "F", "cup-f", KeyField.ROD_DIAMETER, "2.38");
        new JobBook(demo.books())
                .pad("j-0243", new PadFitted("cup-f", null, new BigDecimal("36.5"), null, null, "", false));
        assertThat(before.of("j-0243").orElseThrow().says())
                .anyMatch(line -> line.contains("taking down"))
                .anyMatch(line -> line.startsWith("key F"));
        Deed deed = before.teach("j-0243");
        Catalogue now = Catalogue.open(folder.resolve("entries"));
        assertThat(now.problems()).isEmpty();
        Model is = now.models().get("m-brindlow-nightferry-tenor");
        assertThat(is.takingDown())
                .singleElement()
                .satisfies(step -> assertThat(step.job()).isEqualTo("j-0243"));
        assertThat(is.map()).anySatisfy(key -> assertThat(key.source()).isEqualTo("this shop, j-0243"));
        assertThat(is.padSet()).containsAllEntriesOf(was.padSet().isEmpty() ? Map.of() : was.padSet());
        assertThat(new EntryCheck(now).check(Kind.MODEL, "x", new EntryWriter().write(is)))
                .isEmpty();
        assertThat(new Lessons(now, demo.books()).of("j-0243")).isEmpty();
        demo.books().undo(deed.number());
        assertThat(Catalogue.open(folder.resolve("entries")).models()).containsEntry(was.id(), was);
    }
}
