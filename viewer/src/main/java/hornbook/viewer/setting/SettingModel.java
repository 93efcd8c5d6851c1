package hornbook.viewer.setting;

import hornbook.shared.setting.SettingBook;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;

/** What the pane of settings knows and does, without a widget. */
public final class SettingModel {
    private final Work work;
    private final Latest asking;
    private final SettingBook book;
    private Consumer<SettingView> listener = view -> {};
    private SettingView view = SettingView.NOTHING;

    public SettingModel(Work work, SettingBook book) {
        this.work = work;
        this.asking = work.latest();
        this.book = book;
    }

    SettingView view() {
        return view;
    }

    void onChange(Consumer<SettingView> draw) {
        listener = draw;
        draw.accept(view);
    }

    void refresh() {
        asking.ask(progress -> book.all(), new Ends<>(lines -> show(view.with(lines)), this::failed));
    }

    /** Sets it to what was written; nothing written means that what is usual holds again. */
    void write(String name, String typed) {
        String before = view.lines().stream()
                .filter(line -> line.name().equals(name) && line.value() != null)
                .map(line -> String.valueOf(line.value()))
                .findFirst()
                .orElse("");
        if (typed.strip().equals(before) && view.trouble().isEmpty()) {
            return;
        }
        show(view.wrote(name));
        work.write(
                progress -> typed.isBlank() ? book.unset(name) : book.set(name, typed),
                new Ends<>(done -> refresh(), this::failed));
    }

    private void failed(Throwable thrown) {
        show(view.troubled(String.valueOf(thrown.getMessage())));
    }

    private void show(SettingView now) {
        view = now;
        listener.accept(now);
    }
}
