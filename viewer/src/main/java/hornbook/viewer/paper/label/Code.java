package hornbook.viewer.paper.label;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import hornbook.viewer.paper.Outlines;
import java.awt.geom.Path2D;
import java.util.Map;

/** A QR code (ISO/IEC 18004) as one outline, level M. The caller leaves four modules of paper free round it. */
final class Code {
    private final BitMatrix modules;

    Code(String text) {
        try {
            modules = new QRCodeWriter()
                    .encode(
                            text,
                            BarcodeFormat.QR_CODE,
                            0,
                            0,
                            Map.of(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.M, EncodeHintType.MARGIN, 0));
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("no code for " + text, tooLong);
        }
    }

    /** How many modules along a side. */
    int modules() {
        return modules.getWidth();
    }

    /** The dark modules; those side by side are one piece, so that no hairlines part them. */
    Path2D outline(double x, double y, double side) {
        double module = side / modules();
        Path2D.Double outline = new Path2D.Double();
        for (int row = 0; row < modules(); row++) {
            int from = 0;
            for (int column = 0; column <= modules(); column++) {
                if (column == modules() || !modules.get(column, row)) {
                    if (column > from) {
                        outline.append(
                                Outlines.box(x + from * module, y + row * module, (column - from) * module, module),
                                false);
                    }
                    from = column + 1;
                }
            }
        }
        return outline;
    }
}
