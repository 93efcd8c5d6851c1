package hornbook.viewer.card;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Entry;
import hornbook.shared.shop.Job;
import hornbook.shared.stock.LotLine;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardsTest {
    @TempDir
    static Path folder;

    private static Workshop shop;
    private static Cards cards;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder.resolve("shop"));
        cards = new Cards(shop.stock(), shop.furniture(), shop.jobs(), shop::catalogue);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @Test
    void aLotSaysWhereItLiesHowManyThereAreAndWhatLiesBesideIt() {
        Card card = cards.card("lot", "lot-0262").orElseThrow();
        Block.Lies lies = only(card, Block.Lies.class);
        assertThat(lies.label()).isEqualTo("buttons, misc.");
        assertThat(lies.count()).isEqualTo("3");
        assertThat(only(card, Block.Lots.class).lots())
                .extracting(LotLine::id)
                .contains("lot-0260")
                .doesNotContain("lot-0262");
    }

    @Test
    void aKeepsakeIsHeeded() {
        assertThat(only(cards.card("lot", "lot-0496").orElseThrow(), Block.Heed.class)
                        .words())
                .contains("never use");
    }

    @Test
    void aDrawerNamesItsNeighbours() {
        Card card = cards.card("place", "d-card-r1c1").orElseThrow();
        assertThat(links(card, "Beside it"))
                .extracting(Block.Link::id, Block.Link::note)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple("d-card-r1c2", "right"),
                        org.assertj.core.groups.Tuple.tuple("d-card-r2c1", "below"));
    }

    @Test
    void aShopToolAndWhatIsKnownOfItAreOneCard() {
        Card card = cards.card("tool", "tool-pin-spanner").orElseThrow();
        assertThat(only(card, Block.Lies.class).drawer()).isEqualTo("d-card-r3c6");
        assertThat(links(card, "Serves")).isNotEmpty();
    }

    @Test
    void aQuirkOfTheStopKindStops() {
        Block.Heed heed = only(cards.card("quirk", "q-snap-on-spud").orElseThrow(), Block.Heed.class);
        assertThat(heed.stop()).isTrue();
    }

    @Test
    void everyEntryHasACardThatSaysWhereItComesFrom() {
        List<Entry> all = List.copyOf(shop.catalogue().all());
        assertThat(all).hasSizeGreaterThan(500).allSatisfy(entry -> {
            Card card = cards.card(entry.entryKind().word(), entry.id()).orElseThrow();
            assertThat(card.title()).isNotBlank();
            assertThat(texts(card, "Where this comes from"))
                    .singleElement()
                    .asString()
                    .contains(entry.source().strip());
        });
    }

    @Test
    void everyJobAndItsHornHaveACard() {
        assertThat(shop.books().all(Job.class)).hasSizeGreaterThan(200).allSatisfy(job -> {
            Card card = cards.card("job", job.id()).orElseThrow();
            assertThat(links(card, "Horn")).extracting(Block.Link::id).containsExactly(job.horn());
            assertThat(links(cards.card("horn", job.horn()).orElseThrow(), "Its jobs"))
                    .extracting(Block.Link::id)
                    .contains(job.id());
        });
    }

    @Test
    void whatIsNotThereHasNone() {
        for (String kind : List.of("lot", "place", "cabinet", "job", "horn", "tool", "quirk")) {
            assertThat(cards.card(kind, "x-none")).as(kind).isEmpty();
        }
    }

    private static <B extends Block> B only(Card card, Class<B> type) {
        return card.blocks().stream()
                .filter(type::isInstance)
                .map(type::cast)
                .findFirst()
                .orElseThrow();
    }

    private static List<Block.Link> links(Card card, String heading) {
        return card.blocks().stream()
                .flatMap(b -> b instanceof Block.Links(String h, List<Block.Link> links) && h.equals(heading)
                        ? links.stream()
                        : Stream.of())
                .toList();
    }

    private static List<String> texts(Card card, String heading) {
        return card.blocks().stream()
                .flatMap(b -> b instanceof Block.Text(String h, String words) && h.equals(heading)
                        ? Stream.of(words)
                        : Stream.of())
                .toList();
    }
}
