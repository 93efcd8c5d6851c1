package hornbook.viewer.demo;

import hornbook.shared.exchange.ImportReport;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.viewer.workshop.Workshop;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Makes the demonstration shop, or opens the one that stands already. */
public final class DemoShop {
    /** The shop's name as its settings hold it, in JSON: by it a demo is known again. */
    private static final String NAME = "\"The Warm Room\"";

    private DemoShop() {}

    /**
     * Opens the demo in a folder, and makes it first where the folder is missing or empty, or where making it was cut
     * short.
     *
     * @throws BadInput where something else is in the folder
     */
    public static Workshop in(Path folder) {
        refuseOther(folder);
        Workshop workshop =
                Workshop.open(folder, Books.in(folder) ? Access.WRITE_IF_FREE : Access.WRITE, Optional.empty());
        if (workshop.books().setting("name").isEmpty()) {
            fill(workshop);
        }
        return workshop;
    }

    private static void refuseOther(Path folder) {
        if (Books.in(folder)) {
            try (Books books = Books.open(folder, Access.READ)) {
                boolean other =
                        books.setting("name").filter(name -> !name.equals(NAME)).isPresent();
                boolean begun =
                        books.setting("name").isEmpty() && !books.deeds(1).isEmpty();
                if (other || begun) {
                    throw notEmpty(folder);
                }
            }
        } else if (Files.exists(folder) && !isEmpty(folder)) {
            throw notEmpty(folder);
        }
    }

    private static BadInput notEmpty(Path folder) {
        return new BadInput(folder + " holds something other than the demo: name an empty or new folder with --at DIR");
    }

    private static boolean isEmpty(Path folder) {
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.allMatch(path -> path.getFileName().toString().equals("lock"));
        } catch (IOException e) {
            return false;
        }
    }

    private static void fill(Workshop workshop) {
        try {
            Path temporary = Files.createTempDirectory("hornbook-demo");
            // The deed bears the folder's name.
            Path files = Files.createDirectory(temporary.resolve("the demonstration shop"));
            try {
                for (String name : names()) {
                    copy(name, files.resolve(name));
                }
                ImportReport report = workshop.importing().from(files, false);
                if (!report.refused().isEmpty()) {
                    throw new IllegalStateException("the demo's files are not whole: "
                            + report.refused().getFirst());
                }
            } finally {
                delete(temporary);
            }
        } catch (IOException e) {
            throw new BadInput("the demo's files cannot be laid out: check the room on the disk");
        }
    }

    /** A jar cannot be listed like a folder; the names stand in a file of their own. */
    private static List<String> names() throws IOException {
        try (InputStream in = resource("files.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
        }
    }

    private static void copy(String name, Path to) throws IOException {
        try (InputStream in = resource(name)) {
            Files.copy(in, to);
        }
    }

    private static InputStream resource(String name) {
        InputStream in = DemoShop.class.getResourceAsStream(name);
        if (in == null) {
            throw new IllegalStateException("the demo lacks " + name);
        }
        return in;
    }

    private static void delete(Path folder) {
        try (Stream<Path> inside = Files.walk(folder)) {
            for (Path file : inside.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
