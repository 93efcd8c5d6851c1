package hornbook.viewer.drawers;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.store.Access;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The first hour of an empty shop: a cabinet, its drawers looked through, their labels printed. */
class DeskModelTest {
    @TempDir
    Path folder;

    private Workshop shop;
    private OnDemo parts;

    @BeforeEach
    void open() {
        shop = Workshop.open(folder.resolve("shop"), Access.WRITE, Optional.empty());
        parts = OnDemo.of(shop);
        parts.drawers().refresh();
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private void cabinet(String rows) {
        parts.desk().cabinet(parts.drawers()::newest);
        parts.desk().answer(new Answers(Map.of("name", "Oak chest", "rows", rows, "columns", "3", "where", "")));
    }

    @Test
    void theFirstCabinetStandsInView() {
        assertThat(parts.drawers().view().cabinet()).isEmpty();
        cabinet("2");
        assertThat(parts.drawers().view().cabinet().orElseThrow().drawers()).hasSize(6);
        assertThat(parts.desk().view().ask()).isNull();
    }

    @Test
    void aPartsHornIsSetUpAndStandsAmongThePlaces() {
        parts.desk().place(parts.drawers()::refresh);
        parts.desk().answer(new Answers(Map.of("name", "", "kind", "parts horn", "where", "", "note", "")));
        assertThat(parts.desk().view().ask().trouble()).contains("name");
        parts.desk().answer(new Answers(Map.of("name", "horn E", "kind", "parts horn", "where", "", "note", "")));
        assertThat(parts.drawers().view().shop().places())
                .extracting(place -> place.name() + ", " + place.kind())
                .containsExactly("horn E, parts horn");
        shop.books().undoLast();
        parts.drawers().refresh();
        assertThat(parts.drawers().view().shop().places()).isEmpty();
    }

    @Test
    void aNumberThatIsNoneIsSaidAndTheQuestionStays() {
        cabinet("two");
        assertThat(parts.desk().view().ask().trouble()).contains("rows").contains("two");
        assertThat(parts.drawers().view().cabinets()).isEmpty();
    }

    @Test
    void labelsArePrintedFromAnyCellAndTheNextSheetGoesOnThere() {
        cabinet("2");
        parts.desk().layAside("d-oak-chest-r1c1");
        parts.desk().layAside("d-oak-chest-r1c2");
        parts.desk().print(List.of());
        Path file = folder.resolve("labels.pdf");
        parts.desk()
                .answer(new Answers(
                        Map.of("cell", "5", "paper", "a4", "size", "70x37", "ruler", "no", "file", file.toString())));
        assertThat(file).isNotEmptyFile();
        assertThat(parts.desk().view().said()).contains("2 labels");
        assertThat(parts.desk().view().toPrint()).isEmpty();
        parts.desk().print(List.of("d-oak-chest-r2c1"));
        assertThat(parts.desk().view().ask().fields().getFirst().text()).isEqualTo("7");
    }

    @Test
    void aCellThatTheSheetHasNotIsSaid() {
        cabinet("2");
        parts.desk().print(List.of("d-oak-chest-r1c1"));
        parts.desk()
                .answer(new Answers(Map.of(
                        "cell",
                        "99",
                        "paper",
                        "a4",
                        "size",
                        "70x37",
                        "ruler",
                        "no",
                        "file",
                        folder.resolve("l.pdf").toString())));
        assertThat(parts.desk().view().ask().trouble()).contains("no cell 99");
    }
}
