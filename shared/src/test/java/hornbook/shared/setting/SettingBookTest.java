package hornbook.shared.setting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SettingBookTest {
    @TempDir
    Path folder;

    private Books books;
    private SettingBook settings;

    @BeforeEach
    void open() {
        books = Books.open(folder, Access.WRITE);
        settings = new SettingBook(books);
    }

    @AfterEach
    void close() {
        books.close();
    }

    @Test
    void whatIsSetIsListedAndTakenBack() {
        assertThat(settings.all()).hasSize(Setting.values().length).allSatisfy(line -> {
            assertThat(line.value()).isNull();
            assertThat(line.meaning()).endsWith(".");
            assertThat(line.usual()).isNotBlank();
        });
        Deed deed = settings.set("hourly-rate", "42,50");
        assertThat(settings.one("hourly_rate").value()).isEqualTo("42.50");
        assertThat(Setting.HOURLY_RATE.number(books)).contains(new BigDecimal("42.50"));
        books.undo(deed.number());
        assertThat(settings.one("hourly_rate").value()).isNull();
        settings.set("hourly_rate", "50");
        settings.unset("hourly_rate");
        assertThat(Setting.HOURLY_RATE.number(books)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "hourly_rate, 42, 42",
        "service_level, 0.98, 0.98",
        "review_days, 14, 14",
        "pad_tie, Down, down",
        "as_of, 2026-09-30, 2026-09-30",
        "name, The Warm Room, The Warm Room",
        "smallest_order, 'sup-v-marlbeck=40 sup-v-tidegate = 25.75', sup-v-marlbeck=40 sup-v-tidegate=25.75"
    })
    void whatWasWrittenIsReadAgain(String name, String typed, String said) {
        settings.set(name, typed);
        assertThat(settings.one(name).value()).isEqualTo(said);
        assertThat(settings.one(name).trouble()).isNull();
    }

    @ParameterizedTest
    @CsvSource({
        "hourly_rate, a lot, money from 0 up",
        "hourly_rate, -5, money from 0 up",
        "service_level, 95, a chance from 0.5 to 0.999",
        "service_level, 1, a chance from 0.5 to 0.999",
        "review_days, 0, whole days from 1 to 92",
        "review_days, 2.5, whole days from 1 to 92",
        "materials_handling, 15, a share from 0 to 1",
        "pad_tie, left, up or down",
        "as_of, 30.9.2026, a day as 2026-09-30",
        "name, '  ', a few words",
        "smallest_order, marlbeck 40, 'a supplier and money, as sup-v-marlbeck=40'",
        "smallest_order, sup-v-marlbeck=40 euro, a supplier and money",
        "colour, red, 'there are name, hourly_rate'",
    })
    void whatCannotBeIsOneClearLine(String name, String typed, String says) {
        assertThatThrownBy(() -> settings.set(name, typed))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining(says)
                .hasMessageContaining(name.equals("colour") ? "colour" : name);
        assertThat(books.deeds(5)).isEmpty();
    }

    /** Numbers once stood there as text; what another program left there does not hide the rest. */
    @Test
    void whatStandsThereOtherwiseIsReadOrNamed() {
        books.write("by hand", w -> {
            w.setting("hourly_rate", "\"48.50\"");
            w.setting("smallest_order", "{\"sup-v-new\": 40}");
            w.setting("service_level", "3");
        });
        assertThat(Setting.HOURLY_RATE.number(books)).contains(new BigDecimal("48.50"));
        assertThat(Setting.SMALLEST_ORDER.bySupplier(books)).isEqualTo(Map.of("sup-v-new", new BigDecimal("40")));
        assertThat(settings.one("service_level").trouble()).contains("service_level is “3”: write a chance");
        assertThatThrownBy(() -> books.reading(Setting.SERVICE_LEVEL::numberOrUsual))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("service_level");
    }
}
