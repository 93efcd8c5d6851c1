package hornbook.viewer;

import hornbook.shared.gauge.GaugeQuestion;
import hornbook.shared.gauge.SizeForms;
import hornbook.shared.shop.Consent;
import hornbook.shared.store.Change;
import hornbook.viewer.bench.Bench;
import hornbook.viewer.bench.BenchBook;
import hornbook.viewer.bench.BenchModel;
import hornbook.viewer.card.Cards;
import hornbook.viewer.clock.ClockModel;
import hornbook.viewer.clock.TaskChoice;
import hornbook.viewer.drawers.DeskModel;
import hornbook.viewer.drawers.DrawersModel;
import hornbook.viewer.drawers.LabelPrint;
import hornbook.viewer.exchange.ExchangeModel;
import hornbook.viewer.find.FindModel;
import hornbook.viewer.gauges.FitFrom;
import hornbook.viewer.gauges.FitModel;
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
import hornbook.viewer.hornmap.HornsToMap;
import hornbook.viewer.knowledge.KnowledgeModel;
import hornbook.viewer.restock.RestockModel;
import hornbook.viewer.setting.SettingModel;
import hornbook.viewer.supply.SuppliersModel;
import hornbook.viewer.tools.ToolsModel;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import hornbook.viewer.year.YearFiles;
import hornbook.viewer.year.YearModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import javafx.application.Platform;

/** Makes what the screens of an opened shop know and do, and hands each the one service it asks. Knows no widget. */
final class Models {
    /** What the clock's strip tells of. */
    private static final Set<String> CLOCK_KINDS = Set.of("clock", "timer", "job", "horn", "task-time");

    private final Workshop workshop;
    private final Work work;

    Models(Workshop workshop, Work work) {
        this.workshop = workshop;
        this.work = work;
    }

    SizeModel size() {
        return new SizeModel(work, text -> new SizeForms(workshop.sizes()).answer(GaugeQuestion.of(text)));
    }

    ThreadModel thread() {
        return new ThreadModel(work, () -> new Threads(workshop.sizes()));
    }

    PadsModel pads() {
        return new PadsModel(work, reserve -> workshop.pads().forJobs(List.of(), reserve));
    }

    SpringModel springs() {
        return new SpringModel(
                work,
                question -> workshop.springs().answer(question),
                () -> workshop.sizes().reader());
    }

    HandModel hand() {
        return new HandModel(work, hands());
    }

    DrawersModel drawers(HandModel hand) {
        return new DrawersModel(work, workshop.furniture(), pull(), hand);
    }

    FindModel find(DrawersModel drawers) {
        return new FindModel(work, question -> workshop.search().find(question), cards(), drawers::light);
    }

    KnowledgeModel knowledge() {
        return new KnowledgeModel(work, workshop::entryBook, cards());
    }

    HonestyModel honesty() {
        return new HonestyModel(work, workshop::honesty);
    }

    YearModel year() {
        return new YearModel(
                work,
                workshop::year,
                progress -> workshop.honesty().answer((done, total, doing) -> progress.stopIfCancelled()),
                new YearFiles(workshop.name(), workshop::catalogue),
                new SaveDialog()::file);
    }

    ExchangeModel exchange() {
        return new ExchangeModel(
                work, new ExchangeModel.Ways(workshop::importingSheets, workshop::importing, workshop::exporting));
    }

    SettingModel settings() {
        return new SettingModel(work, workshop.settings());
    }

    RestockModel restock() {
        return new RestockModel(work, workshop.restock(), workshop::wanted, workshop.orderBook(), workshop.stockBook());
    }

    SuppliersModel suppliers() {
        return new SuppliersModel(work, workshop.suppliers(), workshop.supplierBook(), workshop.orderBook());
    }

    FitModel fit() {
        return new FitModel(
                work,
                question -> workshop.fit().answer(question),
                new PieceKinds(workshop::catalogue)::all,
                new FitFrom(workshop.stock(), workshop.jobs(), workshop::catalogue));
    }

    BenchModel bench() {
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

    DeskModel desk() {
        return new DeskModel(
                work,
                workshop.cabinetBook(),
                workshop.placeBook(),
                new LabelPrint(workshop.stock(), Path.of(System.getProperty("user.home", "."))));
    }

    ToolsModel tools() {
        return new ToolsModel(work, workshop.tools(), workshop.toolBook());
    }

    private Pull pull() {
        return new Pull(workshop.stock(), workshop.openJobs());
    }

    /** Told of every deed, whichever screen is in view: a clock may be started by a command too. */
    ClockModel clock() {
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

    HornMapModel hornMap() {
        return new HornMapModel(
                work,
                new HornsToMap(workshop::catalogue, workshop::hornMaps, workshop.jobs(), workshop.pads()),
                new Entering(
                        workshop.jobBook(),
                        workshop.mapBook(),
                        workshop.pads(),
                        workshop.sizes().reader()));
    }

    Cards cards() {
        return new Cards(workshop.stock(), workshop.furniture(), workshop.jobs(), workshop::catalogue);
    }
}
