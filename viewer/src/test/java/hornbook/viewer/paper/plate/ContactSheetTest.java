package hornbook.viewer.paper.plate;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.picture.Pictures;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Rendered;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ContactSheetTest {
    private static final double COARSE = 60;

    @TempDir
    static Path folder;

    private static Path pdf;
    private static ContactSheet.Printed printed;

    @BeforeAll
    static void print() {
        pdf = folder.resolve("pictures.pdf");
        printed = new ContactSheet(Catalogue.shipped(), PaperSize.A4).print(pdf);
    }

    /** The files that are shipped are counted, not what the program believes it has. */
    @Test
    void thereAreAsManyDrawingsAsPictureFiles() throws Exception {
        assertThat(printed.pictures()).hasSize((int) shippedFiles()).doesNotHaveDuplicates();
    }

    @Test
    void everyDrawingIsOnItsPageAndInsideThePaper() {
        Map<Integer, Rendered> pages = new HashMap<>();
        Rectangle2D paper = new Rectangle2D.Double(5, 5, 200, 287);
        for (ContactSheet.Placed at : printed.pictures()) {
            Rectangle2D box = new Rectangle2D.Double(at.x(), at.y(), at.width(), at.height());
            Rendered page = pages.computeIfAbsent(at.page(), n -> Rendered.page(pdf, n, COARSE));
            assertThat(page.inked(box)).as(at.toString()).isTrue();
            assertThat(paper.contains(box)).as(at.toString()).isTrue();
        }
        assertThat(pages).hasSize(printed.pages());
    }

    @Test
    void noDrawingCoversAnother() {
        List<ContactSheet.Placed> all = printed.pictures();
        for (int i = 0; i < all.size(); i++) {
            for (int j = i + 1; j < all.size(); j++) {
                if (all.get(i).page() == all.get(j).page()) {
                    assertThat(box(all.get(i)).intersects(box(all.get(j)))).isFalse();
                }
            }
        }
    }

    @Test
    void theWordsOfEachStandBeneathInFull() {
        String text = packed(Rendered.text(pdf));
        Pictures pictures = new Pictures();
        pictures.drawnTraits().forEach(drawn -> {
            assertThat(text)
                    .contains(packed(pictures.look(drawn.trait()).orElseThrow().alt()));
            drawn.values()
                    .forEach(value -> assertThat(text)
                            .contains(packed(value))
                            .contains(packed(pictures.picture(drawn.trait(), value)
                                    .orElseThrow()
                                    .alt())));
        });
        assertThat(text).doesNotContain("…").doesNotContain("\uFFFD");
    }

    private static Rectangle2D box(ContactSheet.Placed at) {
        return new Rectangle2D.Double(at.x(), at.y(), at.width(), at.height());
    }

    private static String packed(String text) {
        return text.replaceAll("\\s+", "");
    }

    private static long shippedFiles() throws IOException, URISyntaxException {
        URI list = Pictures.class
                .getResource("/hornbook/catalogue/pictures/drawn-traits.txt")
                .toURI();
        if (list.getScheme().equals("file")) {
            return drawings(Path.of(list).getParent());
        }
        try (FileSystem jar = FileSystems.newFileSystem(list, Map.of())) {
            return drawings(jar.getPath("/hornbook/catalogue/pictures"));
        }
    }

    private static long drawings(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> file.toString().endsWith(".svg")).count();
        }
    }
}
