package hornbook.viewer.exchange;

import hornbook.shared.exchange.Export;
import hornbook.shared.exchange.Import;
import hornbook.shared.exchange.ImportReport;
import hornbook.shared.exchange.SheetImport;
import hornbook.shared.exchange.SheetKind;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Leads through bringing a list in and taking everything out, without a widget. */
public final class ExchangeModel {
    private final Work work;
    private final Ways ways;
    private final Latest looking;
    private Consumer<ExchangeView> listener = view -> {};
    private ExchangeView view = ExchangeView.NOTHING;

    /** The ways in and out of the books; each is asked for when it is gone. */
    public record Ways(Supplier<SheetImport> sheets, Supplier<Import> whole, Supplier<Export> out) {}

    public ExchangeModel(Work work, Ways ways) {
        this.work = work;
        this.ways = ways;
        this.looking = work.latest();
    }

    ExchangeView view() {
        return view;
    }

    void onChange(Consumer<ExchangeView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** What the rows are; null for a whole export. */
    void kind(@Nullable SheetKind kind) {
        if (kind != view.kind()) {
            show(view.of(kind));
            look();
        }
    }

    /** The list, or the folder of a whole export. */
    void from(Path file) {
        show(view.from(file));
        look();
    }

    /** That column holds that field; an empty field leaves the column out. */
    void column(String column, String field) {
        Map<String, String> told = new HashMap<>(view.told());
        // Who gives a field to one column takes it from the other.
        told.replaceAll((other, held) -> held.equals(field) ? "" : held);
        if (view.look() != null && !field.isEmpty()) {
            view.look().fields().forEach((other, held) -> {
                if (held.equals(field)) {
                    told.put(other, "");
                }
            });
        }
        told.put(column, field);
        show(view.telling(told));
        look();
    }

    private void look() {
        Path from = view.from();
        SheetKind kind = view.kind();
        Map<String, String> told = view.told();
        if (from == null || kind == null) {
            return;
        }
        looking.ask(
                progress -> ways.sheets().get().look(from, kind, told),
                new Ends<>(look -> show(view.looked(look)), this::failed));
    }

    /** Says what would be taken, and changes nothing. */
    void tryIt() {
        run(true);
    }

    /** Takes every good row in one deed. */
    void takeIt() {
        run(false);
    }

    private void run(boolean dry) {
        if (!view.ready()) {
            return;
        }
        show(view.busy(dry ? "Trying it\u2026" : "Taking it\u2026"));
        work.write(progress -> imported(dry), new Ends<>(report -> show(view.reported(report, dry)), this::failed));
    }

    private ImportReport imported(boolean dry) {
        Path from = java.util.Objects.requireNonNull(view.from());
        SheetKind kind = view.kind();
        return kind == null
                ? ways.whole().get().from(from, dry)
                : ways.sheets().get().from(from, kind, view.told(), dry);
    }

    /** Writes the refused rows as a list of their own, those of a whole export into a folder. */
    void rowsToFix(Path to) {
        ImportReport report = view.report();
        Path from = view.from();
        if (report == null || from == null) {
            return;
        }
        work.read(
                progress -> {
                    if (view.kind() == null) {
                        ways.whole().get().rowsToFix(from, report, to);
                    } else {
                        ways.sheets().get().rowsToFix(from, report, to);
                    }
                    return to;
                },
                new Ends<>(
                        done -> show(view.saying("The refused rows stand in " + done
                                + ", each with why: correct them there and bring that in.")),
                        this::failed));
    }

    /** Writes the whole shop into a folder. */
    void export(Path folder, boolean withCustomers) {
        show(view.busy("Writing " + folder));
        work.read(
                progress -> ways.out().get().to(folder, withCustomers),
                new Ends<>(
                        done -> show(view.saying(done.files().size() + " files are written in " + done.folder() + ".")),
                        this::failed));
    }

    private void failed(Throwable thrown) {
        boolean told = thrown instanceof BadInput || thrown instanceof ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        show(view.troubled(told ? words : "This is a fault of Hornbook's own: " + words));
    }

    private void show(ExchangeView now) {
        view = now;
        listener.accept(now);
    }
}
