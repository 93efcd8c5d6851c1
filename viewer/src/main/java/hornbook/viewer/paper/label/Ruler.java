package hornbook.viewer.paper.label;

import hornbook.viewer.paper.Sheet;
import java.util.List;

/** The page to try a printer with: two rules of 100 mm to lay a steel rule on. */
final class Ruler {
    static final double LENGTH = 100;
    static final double LEFT = 40;
    static final double TOP = 80;

    private static final double DOWN_TOP = 110;
    private static final double TICK = 2;
    private static final double PEN = 0.2;
    private static final List<String> WORDS = List.of(
            "Lay a steel rule on both lines: from 0 to 100 must be 100 mm.",
            "If not, print again at 100 % (actual size), not fitted to the page,",
            "before you use up a sheet of labels.");

    private Ruler() {}

    static void print(Sheet sheet) {
        sheet.page();
        sheet.text("Test page", LEFT, 35, 18, 0);
        for (int i = 0; i < WORDS.size(); i++) {
            sheet.text(WORDS.get(i), LEFT, 45 + 5 * i, 10, 0);
        }
        sheet.line(LEFT, TOP, LEFT + LENGTH, TOP, PEN);
        sheet.line(LEFT, DOWN_TOP, LEFT, DOWN_TOP + LENGTH, PEN);
        for (int mm = 0; mm <= LENGTH; mm++) {
            double tick = mm % 10 == 0 ? 3 * TICK : mm % 5 == 0 ? 2 * TICK : TICK;
            sheet.line(LEFT + mm, TOP, LEFT + mm, TOP - tick, PEN);
            sheet.line(LEFT, DOWN_TOP + mm, LEFT + tick, DOWN_TOP + mm, PEN);
            if (mm % 10 == 0) {
                String number = String.valueOf(mm);
                sheet.text(number, LEFT + mm - sheet.width(number, 8) / 2, TOP - 3 * TICK - 1, 8, 0);
                sheet.text(number, LEFT + 3 * TICK + 1.5, DOWN_TOP + mm + 1, 8, 0);
            }
        }
    }
}
