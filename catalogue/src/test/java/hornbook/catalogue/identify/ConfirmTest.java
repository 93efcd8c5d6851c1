package hornbook.catalogue.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryCheck;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Years;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ConfirmTest {
    @TempDir
    Path folder;

    @Test
    void whatItIsGoesIntoTheBooksAndComesOutAgain() {
        try (Demo demo = new Demo(folder)) {
            Confirm confirm = new Confirm(demo.catalogue(), demo.books());
            Horn before = demo.books().find(Horn.class, "h-192").orElseThrow();
            Horn after = confirm.is(MadeOut.of("h-192", "m-halverick-drumlin-alto", Confirmation.PAPER));
            assertThat(after.sureness()).isEqualTo("sure");
            assertThat(after.identifiedBy()).isEqualTo("paper");
            assertThat(confirm.is(MadeOut.of("h-192", "m-halverick-drumlin-alto", Confirmation.TRAITS))
                            .sureness())
                    .isEqualTo("likely");
            undoLast(demo, 2);
            assertThat(demo.books().find(Horn.class, "h-192")).contains(before);
            assertThatThrownBy(() -> confirm.is(MadeOut.of("h-192", "m-halverick-drumlim-alto", Confirmation.PAPER)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("perhaps m-halverick-drumlin-alto is meant");
        }
    }

    private static void undoLast(Demo demo, int deeds) {
        long last = demo.books().deeds(1).getFirst().number();
        for (int i = 0; i < deeds; i++) {
            demo.books().undo(last - i);
        }
    }

    @Test
    void aHornThatNoEntryDescribesBecomesOne() {
        try (Demo demo = new Demo(folder)) {
            Horn horn = demo.books().all(Horn.class).stream()
                    .filter(h -> h.model().equals("unlisted"))
                    .max(Comparator.comparingInt(h ->
                            demo.books().where(Finding.class, "horn", h.id()).size()))
                    .orElseThrow();
            Job job = demo.books().where(Job.class, "horn", horn.id()).getFirst();
            Model made = new Confirm(demo.catalogue(), demo.books())
                    .entryFrom(
                            new MadeOut(horn.id(), "unlisted", Confirmation.TAKEN_APART, job.id(), List.of(), null),
                            new NewModel("k-halverick", false, "Back Shelf", null));
            assertThat(made.provenance().jobs()).containsExactly(job.id());
            Catalogue now = Catalogue.open(folder.resolve("entries"));
            assertThat(now.problems()).isEmpty();
            assertThat(now.models()).containsEntry(made.id(), made);
            assertThat(new EntryCheck(now).check(Kind.MODEL, "x", new EntryWriter().write(made)))
                    .isEmpty();
            assertThat(demo.books().find(Horn.class, horn.id()).orElseThrow().model())
                    .isEqualTo(made.id());
            Answer answer = new Identify(now, demo.books())
                    .answer(Question.of(List.of()).about(horn.id()));
            assertThat(answer.candidates().subList(0, 3))
                    .extracting(Candidate::id)
                    .contains(made.id());
        }
    }

    @Test
    void looksGoDownWithItOnceAndUndoTakesThemAway() {
        try (Demo demo = new Demo(folder)) {
            Confirm confirm = new Confirm(demo.catalogue(), demo.books());
            int before = demo.books().where(Finding.class, "horn", "h-194").size();
            List<Seen> looks = demo.seen(
                    "octave-mechanism=auto-swivel", // the books hold that already
                    "bell-brace=ring|two-bar",
                    "bell-diameter=6.1 in",
                    "thumb-hook=unknown");
            confirm.is(
                    new MadeOut("h-194", "m-chantreval-halyard-tenor", Confirmation.NAME, "j-0237", looks, "19433T"));
            assertThat(demo.books().where(Finding.class, "horn", "h-194"))
                    .hasSize(before + 2)
                    .anySatisfy(f -> assertThat(f.value()).isEqualTo("ring|two-bar"))
                    .anySatisfy(f -> assertThat(f.value() + " " + f.unit()).isEqualTo("154.94 mm"));
            assertThat(demo.identify().looks(Question.of(List.of()).about("h-194")))
                    .extracting(Seen::written)
                    .contains("bell-brace=ring|two-bar", "bell-diameter=154.94 mm", "octave-mechanism=auto-swivel");
            undoLast(demo, 1);
            assertThat(demo.books().where(Finding.class, "horn", "h-194")).hasSize(before);
        }
    }

    @Test
    void aModelOfANewMakeComesWithItsMakeAsOneDeed() {
        try (Demo demo = new Demo(folder)) {
            MadeOut seen = new MadeOut(
                    "h-192",
                    "unlisted",
                    Confirmation.TAKEN_APART,
                    "j-0235",
                    demo.seen("bell-brace=ring", "pitch-stamp=unknown"),
                    null);
            Confirm confirm = new Confirm(demo.catalogue(), demo.books());
            Model made = confirm.entryFrom(seen, new NewModel("Oddhaven", true, "Pattern 9", new Years(1921, 1925)));
            Catalogue now = Catalogue.open(folder.resolve("entries"));
            assertThat(now.problems()).isEmpty();
            assertThat(now.makes()).containsKey("k-oddhaven");
            assertThat(made.years()).isEqualTo(new Years(1921, 1925));
            assertThat(made.shares("bell-brace").orElseThrow().share("ring")).isGreaterThan(0.8);
            undoLast(demo, 1);
            assertThat(Catalogue.open(folder.resolve("entries")).makes()).doesNotContainKey("k-oddhaven");
            assertThatThrownBy(() -> confirm.entryFrom(seen, new NewModel("Halverick", true, "x", null)))
                    .isInstanceOf(BadInput.class)
                    .hasMessageContaining("choose it");
        }
    }
}
