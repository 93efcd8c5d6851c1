package hornbook.shared.exchange;

import hornbook.shared.photo.Photos;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Photo;
import hornbook.shared.store.Books;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;

/** The pictures that go with photos.csv, in a folder beside it. */
record PhotoFiles(Books books) {
    private static final String FOLDER = "photos";

    void copy(List<Photo> photos, Path to) throws IOException {
        Photos kept = new Photos(books);
        for (Photo photo : photos) {
            Path file = kept.file(photo);
            if (Files.exists(file)) {
                Path folder = Files.createDirectories(to.resolve(FOLDER));
                Files.copy(file, folder.resolve(file.getFileName()), StandardCopyOption.REPLACE_EXISTING);
            }
        }
    }

    /** The rows whose picture is there and is what its sum says; the others refused. */
    CsvFile taken(CsvFile csv, Path from, boolean dryRun) {
        List<Row> good = new ArrayList<>();
        List<Refusal> refused = new ArrayList<>(csv.refused());
        for (Row row : csv.rows()) {
            String why = take(row, from, dryRun);
            if (why.isEmpty()) {
                good.add(row);
            } else {
                refused.add(new Refusal(csv.name(), row.number(), row.line(), "sha", why));
            }
        }
        return new CsvFile(csv.name(), csv.columns(), good, refused, csv.ragged());
    }

    private String take(Row row, Path from, boolean dryRun) {
        String sha = row.cells().getOrDefault("sha", "");
        String ending = row.cells().getOrDefault("kept", "");
        if (!sha.matches("[0-9a-f]{64}") || !ending.matches("jpg|png")) {
            return "is no sum of a picture: 64 hexadecimal digits, and jpg or png as kept";
        }
        Path file = from.resolve(FOLDER).resolve(sha + "." + ending);
        if (!Files.isRegularFile(file)) {
            return "its picture " + FOLDER + "/" + file.getFileName() + " is not there: add it, or leave the row out";
        }
        try {
            Photos photos = new Photos(books);
            Photos.Kept kept = dryRun ? photos.look(file) : photos.keep(file);
            return kept.sha().equals(sha) ? "" : "its picture is not the one of that sum: add it as a new photo";
        } catch (BadInput e) {
            return String.valueOf(e.getMessage());
        }
    }
}
