package hornbook.viewer.paper.label;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.stock.DrawerCard;
import hornbook.shared.store.Access;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Rendered;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelTest {
    @TempDir
    Path folder;

    @ParameterizedTest(name = "label “{0}”, contents “{1}”")
    @CsvSource({
        "PIVOTS, screws, PIVOTS, screws",
        "'',     screws, screws, ''",
        "PIVOTS, '',     PIVOTS, ''",
        "'',     '',     'Card index, row 1, column 4', ''"
    })
    void theHeadingIsWhatIsKnown(String written, String found, String heading, String contents) {
        assertThat(Label.of(card(written, found)))
                .isEqualTo(new Label("d-card-r1c4", heading, contents, "Card index, row 1, column 4"));
    }

    /** Names of people stand in notes, so notes stay off paper. */
    @Test
    void aNoteIsNotPrinted() {
        Path pdf = folder.resolve("labels.pdf");
        new LabelSheets(LabelGrid.of(PaperSize.A4, "70x37"), 1, false)
                .print(List.of(Label.of(card("PIVOTS", "screws"))), pdf);
        assertThat(Rendered.text(pdf)).contains("PIVOTS").contains("screws").doesNotContain("Quill");
    }

    /** The circle closes: what a reader makes of the code is understood as that drawer. */
    @Test
    void theCodeNamesItsDrawer() {
        Path shop = folder.resolve("shop");
        DemoShop.in(shop).close();
        try (Workshop workshop = Workshop.open(shop, Access.READ, Optional.empty())) {
            DrawerCard card = workshop.stock().drawer("d-card-r5c5").orElseThrow();
            assertThat(workshop.stock().drawer(Label.of(card).code())).contains(card);
        }
    }

    private static DrawerCard card(String label, String contents) {
        return new DrawerCard(
                "d-card-r1c4",
                "Card index, row 1, column 4",
                label,
                contents,
                "right",
                LocalDate.of(2026, 1, 2),
                "set aside for Mrs Quill",
                null,
                List.of(),
                List.of(),
                List.of());
    }
}
