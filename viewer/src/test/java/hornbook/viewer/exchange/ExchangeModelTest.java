package hornbook.viewer.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.exchange.SheetKind;
import hornbook.shared.shop.Lot;
import hornbook.shared.store.Access;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A list as a spreadsheet program of another country saves it, brought in step by step. */
class ExchangeModelTest {
    private static final String LIST = "Gdzie;Co;Gewinde;Größe;Ile\n"
            + "B-1;Halsschraube;M3x0.5;2,5 mm;3\nB-2;Stange;Mar-48;;4\nB-3;Kork;;;duzo\n";

    @TempDir
    Path folder;

    private Workshop shop;
    private ExchangeModel model;

    @BeforeEach
    void open() throws Exception {
        shop = Workshop.open(folder.resolve("shop"), Access.WRITE, Optional.empty());
        model = model(shop);
        Files.write(list(), LIST.getBytes(Charset.forName("windows-1252")));
    }

    private static ExchangeModel model(Workshop shop) {
        return new ExchangeModel(
                Work.atOnce(), new ExchangeModel.Ways(shop::importingSheets, shop::importing, shop::exporting));
    }

    @AfterEach
    void close() {
        shop.close();
    }

    private Path list() {
        return folder.resolve("teile.csv");
    }

    private void told() {
        model.kind(SheetKind.LOTS);
        model.from(list());
        model.column("Gdzie", "drawer");
        model.column("Co", "title");
        model.column("Gewinde", "thread");
        model.column("Größe", "dimensions");
        model.column("Ile", "count");
    }

    @Test
    void whatWasUnderstoodIsShownAndNothingGoesOnWhileAColumnIsWanting() {
        model.from(list());
        assertThat(model.view().look().encoding()).isEqualTo("Windows-1252");
        assertThat(model.view().look().separator()).isEqualTo("semicolon");
        assertThat(model.view().look().lacking()).containsExactly("drawer", "title");
        assertThat(model.view().ready()).isFalse();
    }

    @Test
    void aTrialNamesBadRowsAndChangesNothing() {
        told();
        model.tryIt();
        assertThat(model.view().dry()).isTrue();
        assertThat(model.view().report().taken()).isEqualTo(1);
        assertThat(model.view().report().refused()).hasSize(2).anySatisfy(refusal -> {
            assertThat(refusal.field()).isEqualTo("thread");
            assertThat(refusal.why()).contains("most likely 3-48");
        });
        assertThat(shop.books().all(Lot.class)).isEmpty();
    }

    @Test
    void theRealThingIsOneDeedAndTheRowsToFixComeBackIn() throws Exception {
        told();
        model.takeIt();
        assertThat(shop.books().all(Lot.class)).extracting(Lot::title).containsExactly("Halsschraube");
        Path fix = folder.resolve("fix.csv");
        model.rowsToFix(fix);
        assertThat(model.view().said()).contains("fix.csv");
        Files.writeString(
                fix, Files.readString(fix).replaceFirst("Mar-48", "3-48").replaceFirst("duzo", "plenty"));
        model.from(fix);
        assertThat(model.view().look().fields())
                .containsEntry("Gdzie", "drawer")
                .containsEntry("Ile", "count");
        model.takeIt();
        assertThat(model.view().report().refused()).isEmpty();
        assertThat(shop.books().all(Lot.class)).hasSize(3);
        shop.books().undoLast();
        shop.books().undoLast();
        assertThat(shop.books().all(Lot.class)).isEmpty();
    }

    @Test
    void aFieldGivenToOneColumnIsTakenFromTheOther() {
        told();
        model.column("Ile", "dimensions");
        assertThat(model.view().look().fields())
                .containsEntry("Ile", "dimensions")
                .doesNotContainKey("Größe");
    }

    @Test
    void everythingOutAndInAgainElsewhere() {
        told();
        model.takeIt();
        Path out = folder.resolve("out");
        model.export(out, false);
        assertThat(model.view().said()).contains("files are written");
        try (Workshop other = Workshop.open(folder.resolve("other"), Access.WRITE, Optional.empty())) {
            ExchangeModel there = model(other);
            there.kind(null);
            there.from(out);
            there.takeIt();
            assertThat(other.books().all(Lot.class)).isEqualTo(shop.books().all(Lot.class));
        }
    }

    @Test
    void whatCannotBeReadIsOneLine() {
        model.from(folder.resolve("none.csv"));
        assertThat(model.view().trouble()).contains("none.csv").contains("cannot be read");
        assertThat(model.view().ready()).isFalse();
    }
}
