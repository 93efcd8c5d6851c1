package hornbook.catalogue.entry;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads entries: the shipped files first, then the shop's own over them. */
final class Shelf {
    static final String SHIPPED = "/hornbook/catalogue/entries/";

    private final EntryReader reader = new EntryReader();
    private final Digest digest = new Digest();
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    Catalogue open(Optional<Path> folder) {
        for (Kind kind : Kind.values()) {
            shipped(kind).forEach(entry -> entries.put(entry.id(), entry));
        }
        Map<String, Entry> own = folder.map(this::own).orElse(Map.of());
        entries.putAll(own);
        Catalogue all = new Catalogue(entries.values(), own.keySet(), problems, digest.hex());
        List<Problem> remarks = own.values().stream()
                .flatMap(e -> Links.check(e, e.entryKind().word() + "/" + e.id() + ".json", all).stream())
                .toList();
        return remarks.isEmpty() ? all : all.telling(remarks);
    }

    private List<Entry> shipped(Kind kind) {
        String path = SHIPPED + kind.word() + ".json";
        try (InputStream in = Shelf.class.getResourceAsStream(path)) {
            if (in == null) {
                return List.of();
            }
            byte[] content = in.readAllBytes();
            digest.add("shipped/" + kind.word(), content);
            return reader.readAll(kind, content);
        } catch (IOException e) {
            throw new UncheckedIOException("Cannot read the shipped entries at " + path, e);
        }
    }

    private Map<String, Entry> own(Path folder) {
        OwnEntries files = new OwnEntries(folder, reader, digest);
        Map<String, Entry> read = files.read(entries);
        problems.addAll(files.problems());
        return read;
    }
}
