package hornbook.viewer.tools;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.stock.MemberLine;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demonstration shop has 86 tools and 521 members of sets, of which eight are not good (scenario, 2). */
class ToolsModelTest {
    @TempDir
    static Path folder;

    private static Workshop shop;

    private ToolsModel model;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @BeforeEach
    void show() {
        model = new ToolsModel(Work.atOnce(), shop.tools(), shop.toolBook());
        model.refresh();
    }

    @Test
    void thoseThatWantSomethingStandFirst() {
        assertThat(model.view().tools()).hasSize(86);
        assertThat(model.view().tools().stream().flatMap(tool -> tool.wanting().stream()))
                .hasSize(8);
        assertThat(model.view().tools().getFirst())
                .matches(tool -> !tool.wanting().isEmpty() || !tool.state().equals("good"));
    }

    @Test
    void theDieLentOutSaysToWhomAndSinceWhenAndComesBack() {
        model.choose("tool-taps-dies");
        MemberLine die = member("4-36 old-ASME");
        assertThat(die.state()).isEqualTo("lent");
        assertThat(die.lentTo()).isNotBlank();
        assertThat(die.since()).isBefore(LocalDate.of(2024, 7, 1));
        model.good(die);
        assertThat(model.view().open().orElseThrow().wanting())
                .noneMatch(m -> m.member().equals("4-36 old-ASME"));
        shop.books().undoLast();
    }

    @Test
    void lendingWantsACode() {
        model.choose("tool-taps-dies");
        model.ask("");
        model.answer(new Answers(Map.of("member", "M2x0.4", "state", "lent", "to", "")));
        assertThat(model.view().ask().trouble()).contains("to whom");
    }

    private MemberLine member(String size) {
        return model.view().open().orElseThrow().wanting().stream()
                .filter(member -> member.member().equals(size))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aGaugeIsCheckedPutElsewhereAndTakenBack() {
        model.choose("tool-caliper");
        model.askError();
        model.answer(new Answers(Map.of("error", "a hair", "against", "")));
        assertThat(model.view().ask().trouble()).contains("no error in mm");
        model.answer(new Answers(Map.of("error", "-0,01", "against", "the 5 mm block")));
        assertThat(model.view().open().orElseThrow().errorMm()).isEqualTo("-0.01");
        model.askPut();
        model.answer(new Answers(Map.of("to", "hook 2")));
        assertThat(model.view().open().orElseThrow().label()).isEqualTo("hook 2");
        shop.books().undoLast();
        shop.books().undoLast();
        model.refresh();
        assertThat(model.view().open().orElseThrow().errorMm()).isEqualTo("+0.02");
    }

    @Test
    void aNewToolAndOneMoreInASetAreWrittenDown() {
        model.askNew();
        model.answer(new Answers(Map.of("title", "burnisher, oval", "serves", "dents", "to", "hook 1")));
        assertThat(model.view().tools()).hasSize(87);
        model.choose("tool-taps-dies");
        model.askMore();
        model.answer(new Answers(Map.of("kind", "die", "member", "9 BA")));
        assertThat(model.view().open().orElseThrow().members())
                .filteredOn(MemberLine::good)
                .extracting(MemberLine::member)
                .contains("9 BA");
        shop.books().undoLast();
        shop.books().undoLast();
        model.refresh();
        assertThat(model.view().tools()).hasSize(86);
    }
}
