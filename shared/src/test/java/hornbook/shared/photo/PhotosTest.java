package hornbook.shared.photo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.shared.exchange.Export;
import hornbook.shared.exchange.Import;
import hornbook.shared.exchange.NoKnowledge;
import hornbook.shared.exchange.Refusal;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Contact;
import hornbook.shared.shop.Photo;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.store.Check;
import hornbook.shared.store.SmallShop;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The platform's own image reader is the judge of whether a picture is still the same. */
class PhotosTest {
    private static final String PLACE = "47.3 N 8.5 E, 4 Quay Street";

    @TempDir
    Path folder;

    private static byte[] drawn(String format) throws Exception {
        BufferedImage image = new BufferedImage(40, 30, BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 1200; i++) {
            image.setRGB(i % 40, i / 40, i * 7919);
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, format, out);
        return out.toByteArray();
    }

    private static byte[] exif(int orientation, boolean little) {
        byte[] place = PLACE.getBytes(StandardCharsets.US_ASCII);
        ByteBuffer tiff = ByteBuffer.allocate(50 + place.length);
        tiff.order(little ? java.nio.ByteOrder.LITTLE_ENDIAN : java.nio.ByteOrder.BIG_ENDIAN);
        tiff.put((little ? "II" : "MM").getBytes())
                .putShort((short) 42)
                .putInt(8)
                .putShort((short) 2);
        tiff.putShort((short) 0x010E).putShort((short) 2).putInt(place.length).putInt(40);
        tiff.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        tiff.position(40).put(place);
        return tiff.array();
    }

    private static byte[] segment(int marker, String name, byte[] body) {
        byte[] head = name.getBytes(StandardCharsets.ISO_8859_1);
        return ByteBuffer.allocate(4 + head.length + body.length)
                .putShort((short) (0xFF00 | marker))
                .putShort((short) (2 + head.length + body.length))
                .put(head)
                .put(body)
                .array();
    }

    /** As a telephone writes it: Exif with a place, XMP, a comment, and something behind the end. */
    private static byte[] telling(int orientation, boolean little) throws Exception {
        byte[] plain = drawn("jpg");
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 2);
        out.writeBytes(segment(0xE1, "Exif\0\0", exif(orientation, little)));
        out.writeBytes(segment(0xE1, "http://ns.adobe.com/xap/1.0/\0", PLACE.getBytes()));
        out.writeBytes(segment(0xFE, "", PLACE.getBytes()));
        out.write(plain, 2, plain.length - 2);
        out.writeBytes(PLACE.getBytes());
        return out.toByteArray();
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }

    private static int[] pixels(byte[] picture) throws Exception {
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(picture));
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3, 6, 8})
    void aJpegKeepsItsPictureAndWhichWayUpItIs(int orientation) throws Exception {
        for (boolean little : new boolean[] {true, false}) {
            byte[] kept = Picture.stripped(telling(orientation, little)).content();
            assertThat(text(kept)).doesNotContain("Quay", "xap");
            assertThat(pixels(kept)).isEqualTo(pixels(drawn("jpg")));
            assertThat(text(kept).contains("Exif")).isEqualTo(orientation != 1);
            assertThat(Picture.stripped(kept).content()).isEqualTo(kept);
            assertThat(orientation == 1 || text(kept).contains(text(Orientation.segment(orientation))))
                    .isTrue();
        }
    }

    @Test
    void aPngKeepsItsPictureAlone() throws Exception {
        byte[] plain = drawn("png");
        byte[] words = ("tEXtComment\0" + PLACE).getBytes(StandardCharsets.ISO_8859_1);
        CRC32 sum = new CRC32();
        sum.update(words);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(plain, 0, 33);
        out.writeBytes(ByteBuffer.allocate(8 + words.length)
                .putInt(words.length - 4)
                .put(words)
                .putInt((int) sum.getValue())
                .array());
        out.write(plain, 33, plain.length - 33);
        byte[] kept = Picture.stripped(out.toByteArray()).content();
        assertThat(text(kept)).doesNotContain("Quay");
        assertThat(pixels(kept)).isEqualTo(pixels(plain));
    }

    @ParameterizedTest
    @ValueSource(strings = {"jpg", "png"})
    void whateverIsHandedInIsKeptOrRefused(String format) throws Exception {
        byte[] good = format.equals("jpg") ? telling(6, true) : drawn("png");
        Random random = new Random(4);
        for (int i = 0; i < 2_000; i++) {
            byte[] bad = java.util.Arrays.copyOf(good, 1 + random.nextInt(good.length));
            for (int flips = random.nextInt(4); flips >= 0; flips--) {
                bad[random.nextInt(bad.length)] ^= (byte) (1 << random.nextInt(8));
            }
            try {
                byte[] kept = Picture.stripped(bad).content();
                assertThat(Picture.stripped(kept).content()).isEqualTo(kept);
            } catch (BadInput e) {
                assertThat(e.getMessage()).startsWith("is ");
            }
        }
    }

    @Test
    void photosTravelWithAnExportAndCustomersOnlyWhenAsked() throws Exception {
        Path picture = Files.write(folder.resolve("p.jpg"), telling(6, false));
        Path out = folder.resolve("out");
        try (Books books = SmallShop.in(folder.resolve("shop"))) {
            new Photos(books).add(picture, new Photos.About(null, null, null, "the neck"));
            books.write("customer", w -> w.put(new Contact("O-001", "Somebody Invented", "")));
            new Export(books, new NoKnowledge()).to(out);
            assertThat(out.resolve("contacts.csv")).doesNotExist();
            new Export(books, new NoKnowledge()).to(folder.resolve("all"), true);
            assertThat(folder.resolve("all/contacts.csv")).content().contains("Somebody Invented");
        }
        Path other = folder.resolve("other");
        try (Books books = Books.open(other, Access.WRITE)) {
            assertThat(new Import(books, new NoKnowledge()).from(out, false).refused())
                    .isEmpty();
            assertThat(books.all(Photo.class)).hasSize(1);
            assertThat(new Check(other).run().problems()).isEmpty();
        }
        Path file = Files.list(out.resolve("photos")).findFirst().orElseThrow();
        Files.write(file, drawn("png"));
        try (Books books = Books.open(folder.resolve("third"), Access.WRITE)) {
            assertThat(new Import(books, new NoKnowledge()).from(out, false).refused())
                    .extracting(Refusal::field)
                    .containsExactly("sha");
        }
    }

    @Test
    void aPhotoIsKeptBySumAndAbsenceIsNoticed() throws Exception {
        Path picture = Files.write(folder.resolve("p.jpg"), telling(6, false));
        Path shop = folder.resolve("shop");
        try (Books books = SmallShop.in(shop)) {
            Photos photos = new Photos(books);
            Photo photo = photos.add(picture, new Photos.About(null, null, null, "the neck"));
            photos.add(picture, new Photos.About(null, null, SmallShop.DAY, "again"));
            assertThat(Files.list(shop.resolve("photos"))).hasSize(1);
            assertThat(new Check(shop).run().problems()).isEmpty();
            Files.write(photos.file(photo), new byte[] {1});
            assertThat(new Check(shop).run().problems()).anyMatch(p -> p.what().contains("no longer the photo"));
            assertThatThrownBy(() -> photos.add(picture, new Photos.About("j-9999", null, null, "")))
                    .isInstanceOf(BadInput.class);
        }
    }
}
