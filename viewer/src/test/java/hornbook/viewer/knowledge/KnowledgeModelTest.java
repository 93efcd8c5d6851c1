package hornbook.viewer.knowledge;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.edit.Choice;
import hornbook.catalogue.edit.Difference;
import hornbook.catalogue.edit.EntryBook;
import hornbook.catalogue.edit.Spot;
import hornbook.catalogue.edit.Standing;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Problem;
import hornbook.catalogue.entry.Provenance.Basis;
import hornbook.catalogue.entry.Quirk;
import hornbook.viewer.card.Block;
import hornbook.viewer.card.Cards;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.node.JsonNodeFactory;

/** The screen without its widgets, on the demonstration shop. */
class KnowledgeModelTest {
    @TempDir
    static Path folder;

    private static Workshop shop;

    private KnowledgeModel model;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder.resolve("shop"));
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    @BeforeEach
    void make() {
        Cards cards = new Cards(shop.stock(), shop.furniture(), shop.jobs(), shop::catalogue);
        model = new KnowledgeModel(Work.atOnce(), shop::entryBook, cards);
        model.refresh();
    }

    private static void undo() {
        shop.books().undo(shop.books().deeds(1).getFirst().number());
    }

    @Test
    void eachKindIsCountedAndListed() {
        Catalogue catalogue = shop.catalogue();
        assertThat(model.view().counts()).hasSize(Kind.values().length);
        for (Kind kind : Kind.values()) {
            model.choose(kind);
            assertThat(model.view().lines()).hasSize(catalogue.all(kind).size());
            assertThat(model.view().counts())
                    .containsEntry(kind, catalogue.all(kind).size());
        }
    }

    @Test
    void theFilterKeepsWhatBearsAllWords() {
        model.choose(Kind.QUIRK);
        model.filter("Rolled rim");
        assertThat(model.view().lines())
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line.title() + line.id()).containsIgnoringCase("rim"));
        model.filter("no such words");
        assertThat(model.view().lines()).isEmpty();
    }

    @Test
    void aTraitShowsItsValuesWithDrawings() {
        model.open("tone-hole-rim");
        Block.Drawn drawn = model.view().open().card().blocks().stream()
                .filter(Block.Drawn.class::isInstance)
                .map(Block.Drawn.class::cast)
                .findFirst()
                .orElseThrow();
        assertThat(drawn.look()).isPresent();
        assertThat(drawn.values())
                .hasSameSizeAs(shop.catalogue().traits().get("tone-hole-rim").values())
                .allSatisfy(value -> assertThat(value.picture()).isPresent());
    }

    /** Every entry of every kind says something besides its source. */
    @Test
    void everyKindHasACard() {
        for (Kind kind : Kind.values()) {
            model.choose(kind);
            model.open(model.view().lines().getFirst().id());
            assertThat(model.view().open().card().blocks().size())
                    .as(kind.word())
                    .isGreaterThan(1);
        }
    }

    @Test
    void aShippedEntryIsChangedInAnOwnCopyOnlyOnceItsSourceIsTold() {
        model.choose(Kind.QUIRK);
        model.open("q-red-rot");
        assertThat(model.view().open().own()).isFalse();
        model.edit();
        EditModel edit = model.view().edit();
        edit.text(Spot.of("confirm"), "Look into the bow with a lamp.");
        assertThat(edit.view().fit()).isFalse();
        assertThat(edit.view().proposal().standing()).isEqualTo(Standing.OVER_SHIPPED);
        assertThat(problems(edit)).extracting(Problem::field).containsExactlyInAnyOrder("source", "sureness");
        edit.tell(edit.view().origin().basis(Basis.THIS_SHOP).detail("j-0237").sureness("sure"));
        assertThat(edit.view().fit()).isTrue();
        assertThat(edit.view().proposal().changes())
                .extracting(Difference::field)
                .containsExactly("confirm", "source", "sureness");

        edit.save();
        assertThat(model.view().edit()).isNull();
        assertThat(model.view().open().own()).isTrue();
        assertThat(model.view().open().shipped()).isTrue();
        Quirk saved = shop.catalogue().quirks().get("q-red-rot");
        assertThat(saved.confirm()).isEqualTo("Look into the bow with a lamp.");
        assertThat(saved.provenance().basis()).isEqualTo(Basis.THIS_SHOP);
        assertThat(saved.provenance().jobs()).containsExactly("j-0237");

        model.askToTakeAway();
        assertThat(model.view().asking()).contains("shipped holds again");
        model.takeAway();
        assertThat(model.view().open().own()).isFalse();
        assertThat(shop.catalogue().entry("q-red-rot"))
                .isEqualTo(Catalogue.shipped().entry("q-red-rot"));
        undo();
        assertThat(shop.catalogue().isOwn("q-red-rot")).isTrue();
        shop.entryBook().takeAway("q-red-rot");
    }

    @Test
    void aNewEntryMakesItsIdFromItsTitleAndIsRefusedUntilWhole() {
        model.choose(Kind.SUPPLY);
        model.create();
        EditModel edit = model.view().edit();
        edit.text(Spot.of("title"), "Cork grease, tin");
        assertThat(edit.view().draft().text(Spot.of("id"))).isEqualTo("sup-cork-grease-tin");
        edit.text(Spot.of("lead_days"), "soon");
        assertThat(problems(edit))
                .filteredOn(p -> p.field().equals("lead_days"))
                .singleElement()
                .satisfies(p -> assertThat(p.why()).isEqualTo("must be a whole number"));
        edit.value(Spot.of("lead_days"), Figures.read("7"));
        edit.add(Spot.of("hazards"), JsonNodeFactory.instance.stringNode(""));
        assertThat(problems(edit)).extracting(Problem::field).contains("hazards.1");
        edit.takeOut(Spot.of("hazards", "1"));
        edit.tell(Origin.NOT_TOLD.basis(Basis.MEMORY).sureness("likely"));
        problems(edit).forEach(p -> edit.text(Spot.of(p.field()), "some"));
        edit.save();
        assertThat(edit.view().trouble()).isEmpty();
        assertThat(shop.catalogue().entry("sup-cork-grease-tin")).isPresent();
        assertThat(model.view().open().id()).isEqualTo("sup-cork-grease-tin");
        undo();
        assertThat(shop.catalogue().entry("sup-cork-grease-tin")).isEmpty();
    }

    @Test
    void whatAnOwnEntrySaidOfItsSourceMayStand() {
        Entry own = shop.catalogue().makes().values().iterator().next();
        model.open(own.id());
        model.edit();
        EditModel edit = model.view().edit();
        assertThat(edit.mayStand()).isTrue();
        edit.text(Spot.of("notes"), "Rims often bevelled.");
        assertThat(edit.view().fit()).isTrue();
        assertThat(edit.view().proposal().changes())
                .extracting(Difference::field)
                .containsExactly("notes");
    }

    @Test
    void whatWasWrittenIsNotLostByOneKey() {
        model.open("q-red-rot");
        model.edit();
        EditModel edit = model.view().edit();
        assertThat(model.back()).isTrue();
        assertThat(model.view().edit()).as("nothing was written").isNull();
        model.edit();
        edit = model.view().edit();
        edit.text(Spot.of("bites"), "Something else.");
        model.refresh();
        assertThat(model.view().edit()).as("the shop changed under it").isSameAs(edit);
        model.back();
        assertThat(edit.view().leaving()).isTrue();
        assertThat(model.view().edit()).isSameAs(edit);
        model.back();
        assertThat(model.view().edit()).isNull();
        assertThat(model.view().open().id()).isEqualTo("q-red-rot");
    }

    @Test
    void idsAreOfferedByTheirTitles() {
        model.open("q-red-rot");
        model.edit();
        EditModel edit = model.view().edit();
        List<Choice> found = new ArrayList<>();
        edit.offer(List.of("tool"), "loupe", Spot.of("tools", "1", "id"), found::addAll);
        assertThat(found).extracting(Choice::text).contains("tool-loupe");
        List<Choice> jobs = new ArrayList<>();
        edit.offerJobs("j-0237", jobs::addAll);
        assertThat(jobs).extracting(Choice::text).containsExactly("j-0237");
    }

    @Test
    void aWhollyOwnEntrySaysWhatNamesItBeforeItGoes() {
        model.open("k-halverick");
        model.askToTakeAway();
        assertThat(model.view().asking()).startsWith("These name it").contains("Halverick");
        model.keep();
        assertThat(model.view().asking()).isNull();
        assertThat(shop.catalogue().makes()).containsKey("k-halverick");
    }

    @Test
    void aBrokenFileIsListedAndMended() throws IOException {
        Path file = folder.resolve("shop/entries/part/part-mine.json");
        Files.createDirectories(file.getParent());
        Files.writeString(
                file,
                "{\"id\": \"part-mine\", \"titel\": \"Mine\", \"source\": \"this shop\", \"sureness\": \"sure\"}");
        KnowledgeModel fresh = new KnowledgeModel(
                Work.atOnce(),
                () -> new EntryBook(Catalogue.open(folder.resolve("shop/entries")), shop.books()),
                new Cards(shop.stock(), shop.furniture(), shop.jobs(), shop::catalogue));
        fresh.chooseBroken();
        assertThat(fresh.view().broken())
                .singleElement()
                .satisfies(p -> assertThat(p.line()).startsWith("part/part-mine.json"));
        fresh.mend("part/part-mine.json");
        EditModel edit = fresh.view().edit();
        assertThat(problems(edit)).extracting(Problem::field).contains("titel", "title");
        edit.takeOut(Spot.of("titel"));
        edit.text(Spot.of("title"), "Mine");
        assertThat(edit.view().fit()).isTrue();
        edit.save();
        assertThat(fresh.view().broken()).isEmpty();
        assertThat(shop.catalogue().thing("part-mine")).isPresent();
        shop.entryBook().takeAway("part-mine");
    }

    private static List<Problem> problems(EditModel edit) {
        return edit.view().proposal().problems();
    }
}
