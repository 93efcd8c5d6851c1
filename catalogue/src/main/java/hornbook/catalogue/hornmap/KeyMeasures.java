package hornbook.catalogue.hornmap;

import hornbook.catalogue.entry.KeyMap;
import hornbook.catalogue.hornmap.CupLine.KeyMeasure;
import hornbook.shared.job.KeyField;
import hornbook.shared.shop.MapRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The measures of one key: this horn's own, else its model's. */
final class KeyMeasures {
    private final @Nullable MapRow own;
    private final @Nullable KeyMap ofModel;

    KeyMeasures(@Nullable MapRow own, @Nullable KeyMap ofModel) {
        this.own = own;
        this.ofModel = ofModel;
    }

    List<KeyMeasure> list() {
        List<KeyMeasure> measures = new ArrayList<>();
        for (KeyField field : KeyField.values()) {
            String read = own == null ? "" : text(own(own, field));
            String known = ofModel == null ? "" : text(ofModel(ofModel, field));
            if (!read.isEmpty() && own != null) {
                measures.add(new KeyMeasure(field.word(), field.title(), read, own.job()));
            } else if (!known.isEmpty()) {
                measures.add(new KeyMeasure(field.word(), field.title(), known, CupLine.MODEL));
            }
        }
        return measures;
    }

    private static String text(@Nullable Object value) {
        return switch (value) {
            case null -> "";
            case BigDecimal number -> number.stripTrailingZeros().toPlainString();
            case Double number -> Usuals.plain(number);
            default -> value.toString();
        };
    }

    private static @Nullable Object own(MapRow row, KeyField field) {
        return switch (field) {
            case ROD -> row.rod();
            case TURNS_ON -> row.turnsOn();
            case ROD_DIAMETER -> row.diameterMm();
            case ROD_LENGTH -> row.lengthMm();
            case THREAD -> row.thread();
            case DRAWS_OUT -> row.drawsOut();
            case SPRING -> row.spring();
            case SPRING_SIZE -> row.springMm();
            case SPRING_LENGTH -> row.springLengthMm();
            case CUP_INSIDE -> row.cupInsideMm();
            case RIM_INSIDE -> row.rimInsideMm();
            case RIM_OUTSIDE -> row.rimOutsideMm();
            case RESONATOR -> row.resonatorMm();
        };
    }

    private static @Nullable Object ofModel(KeyMap key, KeyField field) {
        return switch (field) {
            case ROD -> key.rod();
            case TURNS_ON -> key.turnsOn();
            case ROD_DIAMETER -> key.diameter();
            case ROD_LENGTH -> key.length();
            case THREAD -> key.thread();
            case DRAWS_OUT -> key.drawsOut();
            case SPRING -> key.spring();
            case SPRING_SIZE -> key.springSize();
            case SPRING_LENGTH -> key.springLength();
            case CUP_INSIDE -> key.cupInside();
            case RIM_INSIDE -> key.rimInside();
            case RIM_OUTSIDE -> key.rimOutside();
            case RESONATOR -> key.resonator();
        };
    }
}
