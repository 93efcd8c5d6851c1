package hornbook.viewer.paper;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.Result;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.multi.qrcode.QRCodeMultiReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** A page as a printer would put it on paper: the picture a printed page is, measured in millimetres. */
public record Rendered(BufferedImage image, double dpi) {
    private static final int DARK = 160;

    public static Rendered page(Path pdf, int page, double dpi) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new Rendered(
                    new PDFRenderer(document).renderImageWithDPI(page - 1, (float) dpi, ImageType.RGB), dpi);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static String text(Path pdf) {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public double mm(int pixels) {
        return pixels * 25.4 / dpi;
    }

    public int pixels(double mm) {
        return (int) Math.round(mm * dpi / 25.4);
    }

    public boolean dark(int x, int y) {
        return new Color(image.getRGB(x, y)).getGreen() < DARK;
    }

    /** Whether anything but white is in there; millimetres. */
    public boolean inked(Rectangle2D area) {
        for (int y = Math.max(0, pixels(area.getMinY()));
                y < Math.min(image.getHeight(), pixels(area.getMaxY()));
                y++) {
            for (int x = Math.max(0, pixels(area.getMinX()));
                    x < Math.min(image.getWidth(), pixels(area.getMaxX()));
                    x++) {
                if (dark(x, y)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** As a hand-held camera sees it: turned, out of focus. */
    public Rendered photographed(double degrees, int blur) {
        int side = (int) Math.hypot(image.getWidth(), image.getHeight());
        BufferedImage turned = new BufferedImage(side, side, BufferedImage.TYPE_INT_RGB);
        Graphics2D on = turned.createGraphics();
        on.setColor(Color.WHITE);
        on.fillRect(0, 0, side, side);
        on.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        AffineTransform turn = AffineTransform.getRotateInstance(Math.toRadians(degrees), side / 2.0, side / 2.0);
        turn.translate((side - image.getWidth()) / 2.0, (side - image.getHeight()) / 2.0);
        on.drawImage(image, turn, null);
        on.dispose();
        float[] even = new float[blur * blur];
        Arrays.fill(even, 1f / even.length);
        return new Rendered(
                new ConvolveOp(new Kernel(blur, blur, even), ConvolveOp.EDGE_NO_OP, null).filter(turned, null), dpi);
    }

    /** Every QR code on it, with its middle in millimetres. */
    public Map<String, double[]> codes() {
        int[] pixels = image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
        BinaryBitmap bits = new BinaryBitmap(
                new HybridBinarizer(new RGBLuminanceSource(image.getWidth(), image.getHeight(), pixels)));
        Map<String, double[]> codes = new TreeMap<>();
        try {
            for (Result code : new QRCodeMultiReader().decodeMultiple(bits, Map.of(DecodeHintType.TRY_HARDER, true))) {
                // The first three points are the middles of the corner patterns; the first and third lie opposite.
                var points = List.of(code.getResultPoints());
                codes.put(code.getText(), new double[] {
                    (points.get(0).getX() + points.get(2).getX()) / 2 * 25.4 / dpi,
                    (points.get(0).getY() + points.get(2).getY()) / 2 * 25.4 / dpi
                });
            }
        } catch (NotFoundException none) {
            return Map.of();
        }
        return codes;
    }
}
