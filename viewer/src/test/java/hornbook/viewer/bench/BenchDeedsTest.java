package hornbook.viewer.bench;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.identify.Candidate;
import hornbook.catalogue.identify.Confirmation;
import hornbook.catalogue.identify.NewModel;
import hornbook.catalogue.identify.NextLook;
import hornbook.shared.shop.Consent;
import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.viewer.bench.BenchBook.Reason;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** What the bench writes down, and takes back. */
class BenchDeedsTest extends OnTheBench {
    @Test
    void itIsThisTakesANewHornInWritesItsLooksAndCanBeUndone() {
        int horns = shop.books().all(Horn.class).size();
        model.press("alto");
        answer("bell-brace", "three-point");
        model.serial("36612");
        model.deeds().confirm("m-halverick-drumlin-alto", Confirmation.NAME, new Reason("quick", "sticks on low C"));
        String horn = Objects.requireNonNull(model.view().horn().horn());
        assertThat(shop.books().find(Horn.class, horn).orElseThrow())
                .returns("m-halverick-drumlin-alto", Horn::model)
                .returns("alto", Horn::instrument)
                .returns("36612", Horn::serial)
                .returns("sure", Horn::sureness);
        assertThat(shop.books().where(Finding.class, "horn", horn))
                .extracting(Finding::what)
                .containsExactly("bell-brace");
        assertThat(shop.books().where(Job.class, "horn", horn))
                .extracting(Job::complaint)
                .containsExactly("sticks on low C");
        model.deeds().undo();
        assertThat(shop.books().find(Horn.class, horn).orElseThrow().model()).isEqualTo("unlisted");
        assertThat(shop.books().where(Finding.class, "horn", horn)).isEmpty();
        assertThat(shop.books().all(Horn.class)).hasSize(horns + 1);
    }

    @Test
    void anEntryIsMadeFromTheHornAndWeighedFromThenOn() {
        model.lay("job", "j-0240");
        Reason none = new Reason("quick", "");
        model.deeds().entry(new NewModel("k-sorakane", false, "Model Twelve", null), none);
        String first = model.view().said();
        model.deeds().entry(new NewModel("Oddhaven", true, "Lantern Street", null), none);
        assertThat(model.view().said()).as(first).contains("Oddhaven Lantern Street");
        assertThat(shop.catalogue().models()).containsKey("m-oddhaven-lantern-street-alto");
        assertThat(Catalogue.open(folder.resolve("entries")).problems()).isEmpty();
        assertThat(model.view().weighed().answer().candidates())
                .extracting(Candidate::id)
                .contains("m-oddhaven-lantern-street-alto");
        model.deeds().undo();
        assertThat(shop.catalogue().models()).doesNotContainKey("m-oddhaven-lantern-street-alto");
    }

    @Test
    void aLookThatMarksIsOfferedOnceTheOwnerSaidYes() {
        model.lay("job", "j-0238");
        assertThat(model.view().horn().consent()).isFalse();
        NextLook needle = marking("pad-fixing");
        assertThat(model.view().mayMark(needle)).isFalse();
        model.choose("lacquer-type");
        assertThat(asked()).isNotEqualTo("lacquer-type");
        assertThat(model.view().said()).contains("leaves a mark");
        model.deeds().agreed();
        assertThat(shop.books().where(Consent.class, "job", "j-0238")).hasSize(1);
        assertThat(model.view().mayMark(needle)).isTrue();
        // Acetone can ruin celluloid, and looks that would tell of celluloid are still open.
        assertThat(model.view().mayMark(marking("lacquer-type"))).isFalse();
        model.deeds().undo();
        assertThat(shop.books().where(Consent.class, "job", "j-0238")).isEmpty();
    }
}
