package hornbook.viewer.bench;

import hornbook.catalogue.identify.Candidate;
import hornbook.catalogue.identify.NextLook;
import hornbook.indexer.brief.QuirkLine;
import hornbook.shared.shop.Consent;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.diagnose.DiagnoseAsked;
import hornbook.viewer.diagnose.DiagnoseModel;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A bench without a window, on the demonstration shop: what its tests do with it and read off it. */
abstract class OnTheBench {
    @TempDir
    static Path folder;

    static Workshop shop;

    BenchModel model;

    @BeforeAll
    static void open() {
        shop = DemoShop.in(folder);
    }

    @AfterAll
    static void close() {
        shop.close();
    }

    static BenchModel model(Workshop shop, Work work) {
        return new BenchModel(
                work,
                new Bench(
                        shop::catalogue,
                        shop::identify,
                        shop::brief,
                        shop.jobs(),
                        job -> !shop.books().where(Consent.class, "job", job).isEmpty(),
                        shop::hornMaps),
                new BenchBook(shop.books(), shop::confirm, shop::catalogue, shop.intake(), shop.jobBook()));
    }

    /** What is wrong with the horn on it. */
    static DiagnoseModel wrong(Workshop shop) {
        return new DiagnoseModel(Work.atOnce(), new DiagnoseAsked(shop), (job, tasks) -> {});
    }

    @BeforeEach
    void clear() {
        model = model(shop, Work.atOnce());
        model.refresh();
    }

    void answer(String trait, String value) {
        model.choose(trait);
        model.press(value);
    }

    NextLook marking(String trait) {
        return model.view().weighed().answer().marking().stream()
                .filter(l -> l.trait().equals(trait))
                .findFirst()
                .orElseThrow();
    }

    String asked() {
        return Objects.requireNonNull(model.view().asking().trait()).id();
    }

    double probability(String id) {
        return model.view().weighed().answer().candidates().stream()
                .filter(c -> c.id().equals(id))
                .mapToDouble(Candidate::probability)
                .sum();
    }

    double unlisted() {
        return model.view().weighed().answer().unlisted();
    }

    List<String> brief() {
        return model.view().brief().quirks().stream().map(QuirkLine::id).toList();
    }
}
