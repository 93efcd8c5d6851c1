package hornbook.viewer.setting;

import hornbook.shared.setting.SettingBook;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Shown;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;

/** What the pane of settings knows and does, without a widget. */
public final class SettingModel {
    private final Work work;
    private final Latest asking;
    private final SettingBook book;
    private final Shown<SettingView> shown = new Shown<>(SettingView.NOTHING, SettingView::troubled);

    public SettingModel(Work work, SettingBook book) {
        this.work = work;
        this.asking = work.latest();
        this.book = book;
    }

    SettingView view() {
        return shown.now();
    }

    void onChange(Consumer<SettingView> draw) {
        shown.onChange(draw);
    }

    void refresh() {
        asking.ask(progress -> book.all(), shown.ends(lines -> shown.show(view().with(lines))));
    }

    /** Sets it to what was written; nothing written means that what is usual holds again. */
    void write(String name, String typed) {
        String before = view().lines().stream()
                .filter(line -> line.name().equals(name) && line.value() != null)
                .map(line -> String.valueOf(line.value()))
                .findFirst()
                .orElse("");
        if (typed.strip().equals(before) && view().trouble().isEmpty()) {
            return;
        }
        shown.show(view().wrote(name));
        work.write(
                progress -> typed.isBlank() ? book.unset(name) : book.set(name, typed), shown.ends(done -> refresh()));
    }
}
