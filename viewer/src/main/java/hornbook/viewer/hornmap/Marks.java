package hornbook.viewer.hornmap;

import hornbook.catalogue.hornmap.CupLine;
import hornbook.shared.job.KeyField;
import hornbook.viewer.hornmap.CupMark.Tone;
import java.math.BigDecimal;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** What each cup says on a layer. */
record Marks(Layer layer, KeyField field, Tray tray) {
    private static final String NONE = "none left";
    private static final String LEAK = "Leak seen under light touch, by cup";

    CupMark mark(CupLine line) {
        String value = value(line);
        Tone tone = value.equals(NONE)
                ? Tone.HEED
                : value.isEmpty() ? Tone.BLANK : own(line) ? heed(line) ? Tone.HEED : Tone.READ : Tone.SUPPOSED;
        String said =
                value.isEmpty() ? "nothing yet" : value + (tone == Tone.SUPPOSED ? ", not read on this horn" : "");
        String remark = tone == Tone.HEED ? ", out of the usual" : "";
        return new CupMark(
                line.cup(), line.title(), value, tone, line.title() + ", " + layer.title() + ": " + said + remark);
    }

    private String value(CupLine line) {
        return switch (layer) {
            case PADS -> pad(line);
            case INSIDES -> size(line.inside());
            case FOUND -> height(line, line.found());
            case LEFT -> height(line, line.left());
            case LEAKS -> leak(line).map(CupLine.Note::value).orElse("");
            case KEYS -> key(line).map(CupLine.KeyMeasure::value).orElse("");
        };
    }

    private String pad(CupLine line) {
        Double found = tray.size(line.cup());
        boolean fitted = line.pad() != null && line.pad().own();
        if (!fitted && tray.none().containsKey(line.cup())) {
            return NONE;
        }
        return !fitted && found != null ? "\u2192 " + plain(found) : size(line.pad());
    }

    private static String height(CupLine line, CupLine.@Nullable Size read) {
        return read != null ? size(read) : line.modelHeight() == null ? "" : plain(line.modelHeight());
    }

    private boolean own(CupLine line) {
        return switch (layer) {
            case PADS -> line.pad() != null && line.pad().own();
            case INSIDES -> line.inside() != null && line.inside().own();
            case FOUND -> line.found() != null;
            case LEFT -> line.left() != null;
            case LEAKS -> true;
            case KEYS -> key(line).filter(key -> !key.from().equals("model")).isPresent();
        };
    }

    private boolean heed(CupLine line) {
        return switch (layer) {
            case LEAKS ->
                leak(line).filter(note -> !note.value().equals("none")).isPresent();
            case FOUND, LEFT, INSIDES -> !line.remarks().isEmpty();
            case PADS, KEYS -> false;
        };
    }

    private static Optional<CupLine.Note> leak(CupLine line) {
        return line.findings().stream()
                .filter(note -> note.title().equals(LEAK))
                .findFirst();
    }

    private Optional<CupLine.KeyMeasure> key(CupLine line) {
        return line.key().stream()
                .filter(key -> key.field().equals(field.word()))
                .findFirst();
    }

    static String size(CupLine.@Nullable Size size) {
        return size == null ? "" : plain(size.mm());
    }

    static String plain(double mm) {
        return BigDecimal.valueOf(mm).stripTrailingZeros().toPlainString();
    }
}
