package hornbook.catalogue.entry;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** The shop's own entries: {@code entries/<kind>/<id>.json}, each read by itself; a bad one is set aside. */
final class OwnEntries {
    private static final long LARGEST = 4_000_000;

    private final Path folder;
    private final EntryReader reader;
    private final Digest digest;
    private final List<Problem> problems = new ArrayList<>();

    OwnEntries(Path folder, EntryReader reader, Digest digest) {
        this.folder = folder;
        this.reader = reader;
        this.digest = digest;
    }

    /** What was wrong, file by file. */
    List<Problem> problems() {
        return problems;
    }

    /** The entries that can be used, by id, kind by kind. */
    Map<String, Entry> read(Map<String, Entry> shipped) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (Path dir : inside(folder)) {
            if (Files.isDirectory(dir)) {
                unknownFolder(dir);
            }
        }
        for (Kind kind : Kind.values()) {
            for (Path file : inside(folder.resolve(kind.word()))) {
                if (file.getFileName().toString().endsWith(".json")) {
                    String name = kind.word() + "/" + file.getFileName();
                    one(kind, file)
                            .filter(e -> free(e, name, shipped))
                            .filter(e -> free(e, name, entries))
                            .ifPresent(e -> entries.put(e.id(), e));
                }
            }
        }
        return entries;
    }

    private void unknownFolder(Path dir) {
        String name = dir.getFileName().toString();
        if (Kind.named(name).isEmpty() && !name.startsWith(".")) {
            aside(name, "", "no kind of entry is called so", "name the folder by the kind of its entries");
        }
    }

    /** An own entry may replace one of its own kind; the id of another kind is taken. */
    private boolean free(Entry entry, String file, Map<String, Entry> entries) {
        Entry other = entries.get(entry.id());
        if (other == null || other.entryKind() == entry.entryKind()) {
            return true;
        }
        aside(file, "id", "is also the id of a " + other.entryKind().word(), "give it an id of its own");
        return false;
    }

    private Optional<Entry> one(Kind kind, Path path) {
        String file = kind.word() + "/" + path.getFileName();
        try {
            if (Files.size(path) > LARGEST) {
                aside(file, "", "is larger than an entry can be", "move it elsewhere");
                return Optional.empty();
            }
            byte[] content = Files.readAllBytes(path);
            digest.add(file, content);
            Entry entry = reader.read(kind, text(content));
            String name = entry.id() + ".json";
            if (!name.equals(path.getFileName().toString())) {
                aside(file, "id", "differs from the name of the file", "call the file " + name);
                return Optional.empty();
            }
            List<Problem> figures = Figures.check(entry, file);
            problems.addAll(figures);
            return figures.isEmpty() ? Optional.of(entry) : Optional.empty();
        } catch (UnreadableEntry e) {
            problems.add(e.in(file));
        } catch (CharacterCodingException e) {
            aside(file, "", "is not UTF-8 text", "save it as UTF-8");
        } catch (IOException e) {
            aside(file, "", "cannot be read (" + e.getMessage() + ")", "look at the file and its permissions");
        }
        return Optional.empty();
    }

    private static String text(byte[] content) throws CharacterCodingException {
        return StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(content))
                .toString();
    }

    private List<Path> inside(Path dir) {
        if (!Files.isDirectory(dir)) {
            return List.of();
        }
        try (Stream<Path> paths = Files.list(dir)) {
            return paths.sorted().toList();
        } catch (IOException e) {
            aside(folder.relativize(dir).toString(), "", "cannot be listed", "look at the folder and its permissions");
            return List.of();
        }
    }

    private void aside(String file, String field, String why, String whatToDo) {
        problems.add(new Problem(file, field, why, whatToDo, true));
    }
}
