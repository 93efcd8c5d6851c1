package hornbook.viewer;

import hornbook.shared.gauge.GaugeQuestion;
import hornbook.shared.gauge.SizeForms;
import hornbook.shared.shop.Consent;
import hornbook.shared.store.Change;
import hornbook.viewer.bench.Bench;
import hornbook.viewer.bench.BenchBook;
import hornbook.viewer.bench.BenchModel;
import hornbook.viewer.bench.BenchScreen;
import hornbook.viewer.card.Card;
import hornbook.viewer.card.Cards;
import hornbook.viewer.clock.ClockModel;
import hornbook.viewer.clock.ClockStrip;
import hornbook.viewer.clock.TaskChoice;
import hornbook.viewer.deed.DeedModel;
import hornbook.viewer.deed.DeedStrip;
import hornbook.viewer.diagnose.DiagnoseAsked;
import hornbook.viewer.diagnose.DiagnoseModel;
import hornbook.viewer.drawers.DeskModel;
import hornbook.viewer.drawers.DrawersModel;
import hornbook.viewer.drawers.DrawersScreen;
import hornbook.viewer.drawers.LabelPrint;
import hornbook.viewer.exchange.ExchangeModel;
import hornbook.viewer.exchange.ExchangeScreen;
import hornbook.viewer.find.FindModel;
import hornbook.viewer.find.FindScreen;
import hornbook.viewer.find.Puller;
import hornbook.viewer.gauges.FitFrom;
import hornbook.viewer.gauges.FitModel;
import hornbook.viewer.gauges.GaugesScreen;
import hornbook.viewer.gauges.PadsModel;
import hornbook.viewer.gauges.PieceKinds;
import hornbook.viewer.gauges.SizeModel;
import hornbook.viewer.gauges.SpringModel;
import hornbook.viewer.gauges.ThreadModel;
import hornbook.viewer.gauges.Threads;
import hornbook.viewer.hand.Described;
import hornbook.viewer.hand.HandModel;
import hornbook.viewer.hand.Hands;
import hornbook.viewer.hand.Pull;
import hornbook.viewer.hand.SortingOut;
import hornbook.viewer.honesty.HonestyModel;
import hornbook.viewer.hornmap.Entering;
import hornbook.viewer.hornmap.HornMapModel;
import hornbook.viewer.hornmap.HornMapScreen;
import hornbook.viewer.hornmap.HornsToMap;
import hornbook.viewer.jobs.JobsFromShop;
import hornbook.viewer.jobs.JobsModel;
import hornbook.viewer.jobs.JobsScreen;
import hornbook.viewer.knowledge.KnowledgeModel;
import hornbook.viewer.knowledge.KnowledgeScreen;
import hornbook.viewer.restock.RestockModel;
import hornbook.viewer.restock.RestockScreen;
import hornbook.viewer.restock.SaveAs;
import hornbook.viewer.setting.SettingModel;
import hornbook.viewer.setting.SettingPane;
import hornbook.viewer.supply.SuppliersModel;
import hornbook.viewer.tools.ToolsModel;
import hornbook.viewer.window.Screen;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.input.KeyCode;

/** Makes the screens of an opened shop and hands each the one service it asks. */
final class Screens {
    /** What the clock's strip tells of. */
    private static final Set<String> CLOCK_KINDS = Set.of("clock", "timer", "job", "horn", "task-time");

    private final Workshop workshop;
    private final Work work;

    Screens(Workshop workshop, Work work) {
        this.workshop = workshop;
        this.work = work;
    }

    Shell shell() {
        HandModel hand = new HandModel(work, hands());
        DrawersModel drawers = new DrawersModel(work, workshop.furniture(), pull(), hand);
        FindModel find = new FindModel(work, question -> workshop.search().find(question), cards(), drawers::light);
        BenchModel bench = bench();
        Way way = new Way();
        Puller pulling = (drawer, lot, then) -> {
            drawers.open(drawer, lot, then);
            way.go(ScreenName.DRAWERS);
        };
        Consumer<String> pull = drawer -> pulling.pull(drawer, "", "");
        HornMapModel map = hornMap();
        ClockModel clock = clock();
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
        FitModel fit = fit();
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
                new JobsScreen(jobs, ofJobs.album(), wrong(jobs, way), new HonestyModel(work, workshop::honesty), pull);
        atJobs.onFit(job -> fits.accept("job", job));
        KnowledgeScreen known = new KnowledgeScreen(new KnowledgeModel(work, workshop::entryBook, cards()), pull, lay);
        known.onFit(card -> fits.accept(card.kind(), card.id()));
        List<Screen> screens = List.of(
                atBench,
                finding,
                new DrawersScreen(drawers, hand, desk(), tools(), () -> way.go(ScreenName.IN_OUT)),
                new HornMapScreen(map),
                atJobs,
                gauges,
                restock(pull, () -> way.go(ScreenName.IN_OUT)),
                known,
                exchange());
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

    private FitModel fit() {
        return new FitModel(
                work,
                question -> workshop.fit().answer(question),
                new PieceKinds(workshop::catalogue)::all,
                new FitFrom(workshop.stock(), workshop.jobs(), workshop::catalogue));
    }

    private GaugesScreen gauges(FitModel fit, Consumer<String> pull) {
        return new GaugesScreen(
                fit,
                new SizeModel(work, text -> new SizeForms(workshop.sizes()).answer(GaugeQuestion.of(text))),
                new ThreadModel(work, () -> new Threads(workshop.sizes())),
                new PadsModel(work, reserve -> workshop.pads().forJobs(List.of(), reserve)),
                new SpringModel(
                        work,
                        question -> workshop.springs().answer(question),
                        () -> workshop.sizes().reader()),
                pull);
    }

    private DiagnoseModel wrong(JobsModel jobs, Way way) {
        return new DiagnoseModel(work, new DiagnoseAsked(workshop), (job, tasks) -> {
            jobs.plan(job, tasks);
            way.go(ScreenName.JOBS);
        });
    }

    private BenchModel bench() {
        return new BenchModel(
                work,
                new Bench(
                        workshop::catalogue,
                        workshop::identify,
                        workshop::brief,
                        workshop.jobs(),
                        this::agreed,
                        workshop::hornMaps),
                new BenchBook(
                        workshop.books(),
                        workshop::confirm,
                        workshop::catalogue,
                        workshop.intake(),
                        workshop.jobBook()));
    }

    /** A yes written down on the job lets looks that leave a mark be offered. */
    private boolean agreed(String job) {
        return !workshop.books().where(Consent.class, "job", job).isEmpty();
    }

    private Hands hands() {
        Described described = new Described(
                title -> workshop.names().thing(title).orElse(""),
                () -> workshop.sizes().reader());
        return new Hands(
                workshop.stockBook(),
                workshop.drawerBook(),
                described,
                new SortingOut(workshop.bagBook(), workshop::alike, described),
                () -> workshop.worker(null));
    }

    private DeskModel desk() {
        return new DeskModel(
                work,
                workshop.cabinetBook(),
                workshop.placeBook(),
                new LabelPrint(workshop.stock(), Path.of(System.getProperty("user.home", "."))));
    }

    private ExchangeScreen exchange() {
        ExchangeModel lists = new ExchangeModel(
                work, new ExchangeModel.Ways(workshop::importingSheets, workshop::importing, workshop::exporting));
        return new ExchangeScreen(lists, new SettingPane(new SettingModel(work, workshop.settings())));
    }

    private ToolsModel tools() {
        return new ToolsModel(work, workshop.tools(), workshop.toolBook());
    }

    private Pull pull() {
        return new Pull(workshop.stock(), workshop.openJobs());
    }

    /** Told of every deed, whichever screen is in view: a clock may be started by a command too. */
    private ClockModel clock() {
        ClockModel clock = new ClockModel(
                work,
                workshop.jobs(),
                workshop.clocks(),
                new TaskChoice(workshop::catalogue, workshop.jobs(), workshop.usualWork()));
        workshop.books().onCommit(changes -> {
            if (changes.stream().map(Change::kind).anyMatch(CLOCK_KINDS::contains)) {
                Platform.runLater(clock::refresh);
            }
        });
        return clock;
    }

    private HornMapModel hornMap() {
        return new HornMapModel(
                work,
                new HornsToMap(workshop::catalogue, workshop::hornMaps, workshop.jobs(), workshop.pads()),
                new Entering(
                        workshop.jobBook(),
                        workshop.mapBook(),
                        workshop.pads(),
                        workshop.sizes().reader()));
    }

    private Cards cards() {
        return new Cards(workshop.stock(), workshop.furniture(), workshop.jobs(), workshop::catalogue);
    }

    private RestockScreen restock(Consumer<String> pull, Runnable settings) {
        return new RestockScreen(
                new RestockModel(
                        work, workshop.restock(), workshop::wanted, workshop.orderBook(), workshop.stockBook()),
                new SuppliersModel(work, workshop.suppliers(), workshop.supplierBook(), workshop.orderBook()),
                pull,
                new SaveAs(new SaveDialog()::file, workshop.name(), workshop.books()::today),
                settings);
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
