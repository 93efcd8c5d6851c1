package hornbook.catalogue.identify;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.EntryCheck;
import hornbook.catalogue.entry.EntryWriter;
import hornbook.catalogue.entry.Kind;
import hornbook.catalogue.entry.Model;
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
            Horn after = confirm.is("h-192", "m-halverick-drumlin-alto", Confirmation.PAPER);
            assertThat(after.sureness()).isEqualTo("sure");
            assertThat(after.identifiedBy()).isEqualTo("paper");
            assertThat(confirm.is("h-192", "m-halverick-drumlin-alto", Confirmation.TRAITS)
                            .sureness())
                    .isEqualTo("likely");
            undoLast(demo, 2);
            assertThat(demo.books().find(Horn.class, "h-192")).contains(before);
            assertThatThrownBy(() -> confirm.is("h-192", "m-halverick-drumlim-alto", Confirmation.PAPER))
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
                    .entryFrom(horn.id(), job.id(), "k-halverick", "Back Shelf");
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
}
