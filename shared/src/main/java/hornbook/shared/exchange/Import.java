package hornbook.shared.exchange;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Photo;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Takes a folder of exchange files into the books: every good row in one deed, every bad one named. */
public final class Import {
    private static final JsonMapper JSON = new JsonMapper();

    private final Books books;
    private final KnowledgeFiles knowledge;

    public Import(Books books, KnowledgeFiles knowledge) {
        this.books = books;
        this.knowledge = knowledge;
    }

    /**
     * Reads a folder; ids in it are kept as the shop's own.
     *
     * @param dryRun reports what would be taken and changes nothing
     * @throws BadInput where the folder holds no file of the exchange format
     */
    public ImportReport from(Path folder, boolean dryRun) {
        KnowledgeFiles.Incoming entries = knowledge.read(folder);
        Sheets sheets = books.reading(view -> new Sheets(view, entries.refused(), entries.remarks()));
        boolean any = readSettings(folder, sheets) || entries.read() > 0;
        for (Kind<?> kind : Kind.KEPT) {
            Path file = folder.resolve(kind.file());
            if (Files.exists(file)) {
                any = true;
                CsvFile csv = CsvFile.read(file);
                sheets.read(kind, kind.type() == Photo.class ? new PhotoFiles(books).taken(csv, folder, dryRun) : csv);
            }
        }
        Path gone = folder.resolve(OutOfUse.FILE);
        if (Files.exists(gone)) {
            sheets.outOfUse(CsvFile.read(gone));
        }
        if (!any) {
            throw new BadInput(folder + " holds no file of the exchange format, as lots.csv: name a folder that does");
        }
        LocalDate today = books.today();
        books.attempt("import of " + folder.getFileName(), writing -> {
            entries.entries().forEach(entry -> writing.entry(entry.path(), entry.json()));
            FileOrder.add(writing, books, entries.order());
            sheets.into(writing, today);
            return !dryRun && (sheets.changed() || !entries.entries().isEmpty());
        });
        return sheets.report(entries);
    }

    /**
     * Writes the rows that were refused as files of the same names, each row with why: corrected, that folder comes back
     * in.
     *
     * @throws BadInput where the folder cannot be written, or is the one that was read
     */
    public void rowsToFix(Path folder, ImportReport report, Path to) {
        try {
            Files.createDirectories(to);
        } catch (IOException e) {
            throw new BadInput(to + " cannot be made: name a folder that may be written");
        }
        for (Kind<?> kind : Kind.KEPT) {
            List<Refusal> refused = report.refused().stream()
                    .filter(no -> no.row() > 0 && no.file().equals(kind.file()))
                    .toList();
            if (!refused.isEmpty()) {
                Path file = folder.resolve(kind.file());
                RowsToFix.write(CsvFile.read(file), refused, file, to.resolve(kind.file()));
            }
        }
    }

    private static boolean readSettings(Path folder, Sheets sheets) {
        Path file = folder.resolve(Export.SETTINGS);
        if (!Files.exists(file)) {
            return false;
        }
        try {
            JsonNode tree = JSON.readTree(Files.readString(file));
            if (!tree.isObject()) {
                throw new IOException("no object");
            }
            tree.properties()
                    .forEach(p -> sheets.setting(p.getKey(), p.getValue().toString()));
        } catch (IOException | JacksonException e) {
            sheets.refuse(
                    Refusal.wholeFile(Export.SETTINGS, "is not a JSON object of settings: correct or leave it out"));
        }
        return true;
    }
}
