package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.shared.exchange.CsvFile;
import hornbook.shared.exchange.EntryFile;
import hornbook.shared.exchange.KnowledgeFiles;
import hornbook.shared.exchange.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Reads and writes the files of knowledge of the exchange format. */
public final class KnowledgeSheets implements KnowledgeFiles {
    private static final String MODELS = "models.jsonl";

    private final Catalogue catalogue;
    private final EntryWriter json = new EntryWriter();

    /** @param catalogue what is known now: the entries to write out, and the traits that looks are held against */
    public KnowledgeSheets(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    @Override
    public List<String> names() {
        return List.of(Makes.FILE, Stencils.FILE, MODELS, Layouts.FILE, Takedowns.FILE, Looks.FILE);
    }

    @Override
    public Incoming read(Path folder) {
        Found found = new Found();
        sheet(folder, Makes.FILE, found, (row, into) -> into.add(Makes.entry(row), Makes.FILE));
        sheet(folder, Stencils.FILE, found, (row, into) -> into.add(Stencils.entry(row), Stencils.FILE));
        if (Files.exists(folder.resolve(MODELS))) {
            new ModelLines(MODELS).read(folder.resolve(MODELS), found);
        }
        sheet(folder, Layouts.FILE, found, Layouts::read);
        sheet(folder, Takedowns.FILE, found, Takedowns::read);
        Looks looks = new Looks(catalogue);
        sheet(folder, Looks.FILE, found, looks::read);
        List<EntryFile> files = found.entries().stream().map(this::file).toList();
        return new Incoming(found.read(), files, found.refused(), List.of(), found.order());
    }

    private EntryFile file(Entry entry) {
        return new EntryFile(entry.entryKind().word() + "/" + entry.id() + ".json", json.write(entry));
    }

    /** Takes one row; throws {@link BadRow} naming the field. */
    interface RowTaker {
        void take(Cells row, Found into);
    }

    private static void sheet(Path folder, String name, Found found, RowTaker taker) {
        Path file = folder.resolve(name);
        if (!Files.exists(file)) {
            return;
        }
        CsvFile sheet = CsvFile.read(file);
        found.read(sheet.rows().size() + sheet.refused().size());
        sheet.refused().forEach(found::refuse);
        sheet.rows().forEach(row -> {
            try {
                taker.take(new Cells(row.cells()), found);
            } catch (BadRow bad) {
                found.refuse(new Refusal(name, row.number(), row.line(), bad.field(), bad.why()));
            }
        });
    }

    @Override
    public void write(Path folder, Map<String, List<String>> order) throws IOException {
        Sorted sorted = new Sorted(order);
        CsvFile.write(
                folder.resolve(Makes.FILE),
                Makes.COLUMNS,
                sorted.own(catalogue, catalogue.makes().values(), Makes.FILE)
                        .map(Makes::cells)
                        .toList());
        CsvFile.write(
                folder.resolve(Stencils.FILE),
                Stencils.COLUMNS,
                sorted.own(catalogue, catalogue.sellers().values(), Stencils.FILE)
                        .map(Stencils::cells)
                        .toList());
        var models = sorted.own(catalogue, catalogue.models().values(), MODELS).toList();
        Files.writeString(folder.resolve(MODELS), ModelLines.write(models));
        CsvFile.write(
                folder.resolve(Layouts.FILE),
                Layouts.COLUMNS,
                sorted.by(models, Layouts.FILE).flatMap(Layouts::rows).toList());
        CsvFile.write(
                folder.resolve(Takedowns.FILE),
                Takedowns.COLUMNS,
                sorted.by(models, Takedowns.FILE).flatMap(Takedowns::rows).toList());
        CsvFile.write(
                folder.resolve(Looks.FILE),
                Looks.COLUMNS,
                sorted.by(List.copyOf(catalogue.traits().values()), Looks.FILE)
                        .flatMap(Looks::row)
                        .toList());
    }
}
