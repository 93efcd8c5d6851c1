package hornbook.viewer.setting;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.setting.Setting;
import hornbook.shared.store.Access;
import hornbook.viewer.window.Fx;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The settings in the window, on an empty shop. */
class SettingPaneTest {
    @TempDir
    Path folder;

    @Test
    void whatIsWrittenHoldsAndWhatCannotBeIsSaidBesideIt() {
        Fx.start();
        try (Workshop shop = Workshop.open(folder, Access.WRITE, Optional.empty())) {
            SettingModel model = new SettingModel(Work.atOnce(), shop.settings());
            Fx.run(() -> {
                SettingPane pane = new SettingPane(model);
                Scene scene = new Scene(pane);
                pane.refresh();
                TextField rate = (TextField) scene.lookup("#setting-hourly_rate");
                rate.setText("42,50");
                rate.fireEvent(new javafx.event.ActionEvent());
                assertThat(rate.getText()).isEqualTo("42.50");
                rate.setText("dear");
                rate.fireEvent(new javafx.event.ActionEvent());
                assertThat(rate.getText()).isEqualTo("dear");
                assertThat(((Label) rate.getParent().getParent().lookup(".heed")).getText())
                        .isEqualTo("setting hourly_rate is “dear”: write money from 0 up, as 42 or 42.50");
            });
            assertThat(Setting.HOURLY_RATE.text(shop.books())).contains("42.50");
            Fx.run(() -> model.write("hourly_rate", ""));
            assertThat(Setting.HOURLY_RATE.text(shop.books())).isEmpty();
            shop.books().undo(shop.books().deeds(1).getFirst().number());
            assertThat(Setting.HOURLY_RATE.text(shop.books())).contains("42.50");
            int deeds = shop.books().deeds(9).size();
            Fx.run(() -> {
                model.refresh();
                model.write("hourly_rate", "42.50");
            });
            assertThat(shop.books().deeds(9)).hasSize(deeds);
        }
    }
}
