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
}
