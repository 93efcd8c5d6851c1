package hornbook.shared.exchange;

import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;

/** Jobs done and under way. */
final class JobRows implements SheetRows {
    private final SheetDates tookIn;
    private final SheetDates done;

    JobRows(SheetDates tookIn, SheetDates done) {
        this.tookIn = tookIn;
        this.done = done;
    }

    @Override
    public void take(Writing writing, Cells cells) {
        String horn = cells.needed("horn");
        Horn of = writing.find(Horn.class, horn)
                .orElseThrow(() -> new CellRefused(
                        "horn",
                        "“" + horn + "” is no horn of this shop: import the horns first, or correct the number"));
        LocalDate in = Objects.requireNonNull(tookIn.read(cells.needed("took_in")));
        LocalDate out = done.read(cells.cell("done"));
        if (out != null && out.isBefore(in)) {
            throw new CellRefused("done", "is " + out + ", before the horn was taken in on " + in);
        }
        String kind = cells.cell("kind").isEmpty() ? "repair" : cells.cell("kind");
        if (cells.cell("id").isEmpty()) {
            refuseStanding(writing, horn, kind, in);
        }
        String hours = cells.cell("hours");
        Integer minutes = hours.isEmpty() ? null : SheetNumbers.minutes(hours);
        writing.put(new Job(
                NewIds.of(writing, Job.class, cells.cell("id")),
                horn,
                kind,
                in,
                null,
                out,
                out == null ? JobStatus.OPEN : JobStatus.DONE,
                "",
                List.of(),
                null,
                "",
                null,
                minutes,
                of.ownerCode(),
                cells.cell("note")));
    }

    /** Without numbers a list that comes in twice would double every job on it. */
    private static void refuseStanding(Writing writing, String horn, String kind, LocalDate in) {
        writing.where(Job.class, "horn", horn).stream()
                .filter(job -> job.kind().equals(kind) && job.tookIn().equals(in))
                .findFirst()
                .ifPresent(job -> {
                    throw new CellRefused(
                            "horn",
                            "“" + horn + "” was taken in that day already, as " + job.id()
                                    + ": leave the row out, or give it a number of its own in a column id");
                });
    }
}
