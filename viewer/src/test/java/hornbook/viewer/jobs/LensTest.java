package hornbook.viewer.jobs;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.job.JobCard.PhotoLine;
import hornbook.shared.photo.Photos;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.viewer.window.Fx;
import hornbook.viewer.work.Work;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Photos stand upright and are seen down to the pixel. */
class LensTest {
    private static final int LONG = 40;
    private static final int SHORT = 20;

    @TempDir
    Path folder;

    @BeforeAll
    static void start() {
        Fx.start();
    }

    /** The camera lay with its top to the right: what stands at the picture's left is written down at its bottom. */
    private Path photo() throws IOException {
        BufferedImage picture = new BufferedImage(LONG, SHORT, BufferedImage.TYPE_INT_RGB);
        Graphics2D draw = picture.createGraphics();
        draw.setColor(Color.RED);
        draw.fillRect(0, SHORT / 2, LONG, SHORT / 2);
        draw.dispose();
        ByteArrayOutputStream jpeg = new ByteArrayOutputStream();
        ImageIO.write(picture, "jpg", jpeg);
        byte[] plain = jpeg.toByteArray();
        ByteArrayOutputStream turned = new ByteArrayOutputStream();
        turned.write(plain, 0, 2);
        turned.writeBytes(exif());
        turned.write(plain, 2, plain.length - 2);
        return Files.write(folder.resolve("portrait.jpg"), turned.toByteArray());
    }

    /** Orientation 6 of JEITA CP-3451, tag 274: the first row is the right side, the first column the top. */
    private static byte[] exif() {
        ByteBuffer out = ByteBuffer.allocate(36);
        out.putShort((short) 0xFFE1).putShort((short) 34).put(new byte[] {'E', 'x', 'i', 'f', 0, 0});
        out.put(new byte[] {'M', 'M', 0, 42}).putInt(8).putShort((short) 1);
        out.putShort((short) 274).putShort((short) 3).putInt(1);
        out.putShort((short) 6).putShort((short) 0).putInt(0);
        return out.array();
    }

    @Test
    void aPortraitStandsUprightAndComesNearToItsPixels() throws IOException {
        try (Books books = Books.open(folder.resolve("shop"), Access.WRITE)) {
            Photos photos = new Photos(books);
            Photos.Kept kept = photos.keep(photo());
            String file = kept.sha() + "." + kept.ending();
            assertThat(photos.orientation(file)).isEqualTo(6);
            Image upright = Upright.read(photos.file(file), 6, 0);
            assertThat(upright.getWidth()).isEqualTo(SHORT);
            assertThat(upright.getHeight()).isEqualTo(LONG);
            assertThat(upright.getPixelReader().getColor(2, LONG / 2).getRed()).isGreaterThan(0.8);
            assertThat(upright.getPixelReader().getColor(SHORT - 3, LONG / 2).getRed())
                    .isLessThan(0.2);
            AtomicInteger away = new AtomicInteger();
            Lens lens = Fx.on(() -> new Lens(away::incrementAndGet));
            Stage stage = Fx.on(() -> {
                Stage made = new Stage();
                made.setScene(new Scene(lens, 900, 700));
                made.show();
                lens.show(new PhotoLine("photo-1", file, "as it came"), new Album(Work.atOnce(), photos));
                return made;
            });
            Fx.settle();
            assertThat(lens.near()).as("the whole of it").isGreaterThan(10);
            Fx.run(() -> new Robot().keyType(KeyCode.DIGIT1));
            assertThat(lens.near()).as("a pixel a point").isEqualTo(1);
            Fx.run(() -> new Robot().keyType(KeyCode.EQUALS));
            assertThat(lens.near()).isEqualTo(1.25);
            assertThat(lens.getAccessibleText()).contains("as it came");
            Fx.run(stage::hide);
        }
    }
}
