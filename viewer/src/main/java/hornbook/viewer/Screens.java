package hornbook.viewer;

import hornbook.viewer.bench.BenchModel;
import hornbook.viewer.bench.BenchScreen;
import hornbook.viewer.card.Card;
import hornbook.viewer.clock.ClockModel;
import hornbook.viewer.clock.ClockStrip;
import hornbook.viewer.deed.DeedModel;
import hornbook.viewer.deed.DeedStrip;
import hornbook.viewer.diagnose.DiagnoseAsked;
import hornbook.viewer.diagnose.DiagnoseModel;
import hornbook.viewer.drawers.DrawersModel;
import hornbook.viewer.drawers.DrawersScreen;
import hornbook.viewer.exchange.ExchangeScreen;
import hornbook.viewer.find.FindModel;
import hornbook.viewer.find.FindScreen;
import hornbook.viewer.find.Puller;
import hornbook.viewer.gauges.FitModel;
import hornbook.viewer.gauges.GaugesScreen;
import hornbook.viewer.hand.HandModel;
import hornbook.viewer.hornmap.HornMapModel;
import hornbook.viewer.hornmap.HornMapScreen;
import hornbook.viewer.jobs.JobsFromShop;
import hornbook.viewer.jobs.JobsModel;
import hornbook.viewer.jobs.JobsScreen;
import hornbook.viewer.knowledge.KnowledgeScreen;
import hornbook.viewer.restock.RestockScreen;
import hornbook.viewer.restock.SaveAs;
import hornbook.viewer.setting.SettingPane;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.input.KeyCode;

/** Makes the screens of an opened shop, and the ways from one to another. */
final class Screens {
    private final Workshop workshop;
    private final Work work;
    private final Models models;

    Screens(Workshop workshop, Work work) {
        this.workshop = workshop;
        this.work = work;
        models = new Models(workshop, work);
    }

    Shell shell() {
        HandModel hand = models.hand();
        DrawersModel drawers = models.drawers(hand);
        FindModel find = models.find(drawers);
        BenchModel bench = models.bench();
        Way way = new Way();
        Puller pulling = (drawer, lot, then) -> {
            drawers.open(drawer, lot, then);
            way.go(ScreenName.DRAWERS);
        };
        Consumer<String> pull = drawer -> pulling.pull(drawer, "", "");
        HornMapModel map = models.hornMap();
        ClockModel clock = models.clock();
        JobsFromShop ofJobs = new JobsFromShop(workshop, work);
        JobsModel jobs = ofJobs.model(
                clock,
                horn -> {
                    map.show(horn);
                    way.go(ScreenName.HORN_MAP);
                },
                name -> new SaveDialog().file(name, "pdf"));
        Consumer<String> openJob = job -> {
            jobs.inView().open(job);
            way.go(ScreenName.JOBS);
        };
        Consumer<Card> lay = card -> {
            bench.lay(card.kind(), card.id());
            way.go(ScreenName.BENCH);
        };
        FitModel fit = models.fit();
        GaugesScreen gauges = gauges(fit, pull);
        BiConsumer<String, String> fits = (kind, id) -> {
            fit.about(kind, id);
            gauges.toFit();
            way.go(ScreenName.FIT);
        };
        hand.onFit(lot -> fits.accept("lot", lot));
        BenchScreen atBench =
                new BenchScreen(bench, wrong(jobs, way), pull, openJob, () -> new SaveDialog().file("brief", "pdf"));
        atBench.onFit(model -> fits.accept("model", model));
        FindScreen finding = new FindScreen(find, pulling, lay, openJob);
        finding.onFit(card -> fits.accept(card.kind(), card.id()));
        JobsScreen atJobs =
                new JobsScreen(jobs, ofJobs.album(), wrong(jobs, way), models.honesty(), models.year(), pull);
        atJobs.onFit(job -> fits.accept("job", job));
        KnowledgeScreen known = new KnowledgeScreen(models.knowledge(), pull, lay);
        known.onFit(card -> fits.accept(card.kind(), card.id()));
        List<Screen> screens = List.of(
                atBench,
                finding,
                new DrawersScreen(drawers, hand, models.desk(), models.tools(), () -> way.go(ScreenName.IN_OUT)),
                new HornMapScreen(map),
                atJobs,
                gauges,
                restock(pull, () -> way.go(ScreenName.IN_OUT)),
                known,
                new ExchangeScreen(models.exchange(), new SettingPane(models.settings())));
        Shell shell = new Shell(workshop.name(), screens);
        DeedModel deeds = new DeedModel(work, workshop.books());
        shell.foot(new DeedStrip(deeds));
        shell.onTakeBack(deeds::takeBack);
        shell.onScan(code -> {
            drawers.scanned(code);
            way.go(ScreenName.DRAWERS);
        });
        way.shell = shell;
        shell.foot(new ClockStrip(clock));
        shell.onControl(KeyCode.J, clock::key);
        clock.refresh();
        return shell;
    }

    private GaugesScreen gauges(FitModel fit, Consumer<String> pull) {
        return new GaugesScreen(fit, models.size(), models.thread(), models.pads(), models.springs(), pull);
    }

    private RestockScreen restock(Consumer<String> pull, Runnable settings) {
        return new RestockScreen(
                models.restock(),
                models.suppliers(),
                pull,
                new SaveAs(new SaveDialog()::file, workshop.name(), workshop.books()::today),
                settings);
    }

    private DiagnoseModel wrong(JobsModel jobs, Way way) {
        return new DiagnoseModel(work, new DiagnoseAsked(workshop), (job, tasks) -> {
            jobs.plan(job, tasks);
            way.go(ScreenName.JOBS);
        });
    }

    /** The way from one screen to another; the shell stands at its end, and is made last. */
    private static final class Way {
        @org.jspecify.annotations.Nullable
        private Shell shell;

        void go(ScreenName name) {
            if (shell != null) {
                shell.go(name);
            }
        }
    }
}
