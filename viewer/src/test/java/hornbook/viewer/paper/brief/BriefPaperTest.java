package hornbook.viewer.paper.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.identify.Question;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.BriefQuestion;
import hornbook.indexer.brief.QuirkLine;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Horn;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Rendered;
import hornbook.viewer.workshop.Workshop;
import java.awt.Color;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The printed brief, on the horns of the demonstration shop. */
class BriefPaperTest {
    private static final int LONGEST = 3;

    @TempDir
    static Path folder;

    private static Workshop shop;
    private static List<BriefAnswer> longest;

    @BeforeAll
    static void askAboutEachMake() {
        shop = DemoShop.in(folder.resolve("shop"));
        Map<String, String> hornOf = new LinkedHashMap<>();
        shop.books().all(Horn.class).forEach(horn -> hornOf.putIfAbsent(make(horn), horn.id()));
        longest = Stream.concat(
                        Stream.of(shop.brief().answer(BriefQuestion.of(Question.of(List.of())))),
                        hornOf.values().stream().map(BriefPaperTest::about))
                .sorted(Comparator.comparingInt(BriefPaperTest::size).reversed())
                .limit(LONGEST)
                .toList();
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    private static String make(Horn horn) {
        return horn.model().replaceFirst("^(m-[^-]+).*", "$1");
    }

    private static BriefAnswer about(String horn) {
        return shop.brief().answer(BriefQuestion.of(Question.of(List.of()).about(horn)));
    }

    private static int size(BriefAnswer brief) {
        return 4 * brief.quirks().size() + brief.fetch().size() + brief.jobs().size();
    }

    private static Path print(BriefAnswer brief, PaperSize paper) {
        Path file = folder.resolve(paper + ".pdf");
        BriefPaper.Printed printed = new BriefPaper(shop.catalogue(), paper).print(brief, "on the bench", file);
        assertThat(printed.pages()).isBetween(1, 2);
        assertThat(printed.leftOut()).noneMatch(left -> left.contains("lines"));
        return file;
    }

    @ParameterizedTest
    @EnumSource(PaperSize.class)
    void theLongestAreTwoPagesAndNothingThatCanHurtIsLeftOut(PaperSize paper) {
        for (BriefAnswer brief : longest) {
            String text = packed(Rendered.text(print(brief, paper)));
            assertThat(brief.stops()).isNotEmpty();
            brief.quirks().stream()
                    .filter(q -> q.caution() == CautionLevel.STOP)
                    .forEach(stop -> holds(text, "STOP " + stop.title(), stop.bites(), stop.whatToDo()));
            holds(text, "The safety data sheet of the product in hand");
            brief.cautions().stream()
                    .filter(c -> c.text().contains("safety data sheet of the product"))
                    .forEach(c -> holds(text, c.title()));
        }
    }

    @Test
    void everyThingToFetchIsThereWithItsDrawerAndTheLabelAsWritten() {
        BriefAnswer brief = about("h-194");
        String text = packed(Rendered.text(print(brief, PaperSize.A4)));
        assertThat(brief.fetch()).extracting(f -> f.drawer()).contains("d-card-r3c6");
        brief.fetch().forEach(fetch -> {
            holds(text, fetch.title());
            if (fetch.drawer() != null) {
                holds(text, fetch.drawer() + " “" + fetch.label() + "”");
            }
        });
        assertThat(text.contains("\uFFFD")).isFalse();
    }

    @Test
    void eachQuirkIsNamedOnceAndAPossibleOneWithItsLook() {
        BriefAnswer brief = about("h-194");
        String text = packed(Rendered.text(print(brief, PaperSize.A4)));
        for (QuirkLine quirk : brief.quirks()) {
            String once = packed(quirk.title() + ". ");
            assertThat(text.indexOf(once)).as(once).isNotNegative().isEqualTo(text.lastIndexOf(once));
            if (quirk.settledBy() != null) {
                holds(
                        text,
                        "Look: "
                                + shop.catalogue()
                                        .traits()
                                        .get(quirk.settledBy())
                                        .title());
            }
        }
    }

    @Test
    void itIsBlackAndGreyAlone() {
        Rendered page = Rendered.page(print(about("h-194"), PaperSize.A4), 1, 72);
        for (int y = 0; y < page.image().getHeight(); y++) {
            for (int x = 0; x < page.image().getWidth(); x++) {
                Color ink = new Color(page.image().getRGB(x, y));
                assertThat(ink.getRed()).isEqualTo(ink.getGreen()).isEqualTo(ink.getBlue());
            }
        }
    }

    @Test
    void aFileThatIsNoPdfIsLeftAlone() throws Exception {
        Path letter = Files.writeString(folder.resolve("letter.txt"), "dear owner");
        assertThatThrownBy(() -> new BriefPaper(shop.catalogue(), PaperSize.A4).print(about("h-194"), "", letter))
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("is no PDF");
        assertThat(letter).hasContent("dear owner");
    }

    private static void holds(String text, String... each) {
        for (String words : each) {
            assertThat(text.contains(packed(words))).as(words).isTrue();
        }
    }

    private static String packed(String text) {
        return text.replaceAll("\\s+", "");
    }
}
