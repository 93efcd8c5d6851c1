package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryReader;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.ReadableJson;
import hornbook.catalogue.entry.UnreadableEntry;
import hornbook.shared.exchange.Refusal;
import hornbook.shared.store.SafeFiles;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** models.jsonl: a model a line, one JSON object each. */
final class ModelsFile {
    static final String NAME = "models.jsonl";
    private static final long LARGEST = 256L * 1024 * 1024;

    private final EntryReader reader = new EntryReader();
    private final ModelLine lines = new ModelLine();

    void read(Path file, Intake intake) {
        if (!Files.exists(file)) {
            return;
        }
        try {
            if (Files.size(file) > LARGEST) {
                intake.refuse(Refusal.wholeFile(NAME, "is larger than 256 MB: split it"));
                return;
            }
            int number = 0;
            for (String line : text(file).split("\n", -1)) {
                number++;
                if (!line.isBlank()) {
                    intake.count();
                    one(line, new Place(NAME, number, number), intake);
                }
            }
        } catch (CharacterCodingException e) {
            intake.refuse(Refusal.wholeFile(NAME, "is not UTF-8 text: save it as UTF-8"));
        } catch (IOException e) {
            intake.refuse(Refusal.wholeFile(NAME, "cannot be read: check that it is a file, and its permissions"));
        }
    }

    void write(Catalogue catalogue, Sorted sorted, Path file) throws IOException {
        StringBuilder text = new StringBuilder();
        for (Model model :
                sorted.own(catalogue, catalogue.models().values(), NAME).toList()) {
            text.append(ReadableJson.flat(lines.write(model))).append('\n');
        }
        Path aside = file.resolveSibling("." + file.getFileName() + ".new");
        Files.writeString(aside, text);
        SafeFiles.rename(aside, file);
    }

    private void one(String line, Place place, Intake intake) {
        try {
            Model model = (Model) reader.read(Kind.MODEL, lines.entry(line));
            Model old = intake.before().models().get(model.id());
            intake.take(old == null ? model : model.with(old.map(), old.takingDown()), place);
        } catch (UnreadableEntry e) {
            intake.refuse(place, e.in(NAME));
        } catch (BadCell e) {
            intake.refuse(place.refuse(e.field(), e.why()));
        }
    }

    private static String text(Path file) throws IOException {
        String text = StandardCharsets.UTF_8
                .newDecoder()
                .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                .toString();
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }
}
