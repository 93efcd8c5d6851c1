package hornbook.shared.exchange;

import hornbook.shared.shop.Job;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.View;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Hours worked, task by task. */
final class HourRows implements SheetRows {
    private record Worked(String job, String task, LocalDate date, int minutes, String who) {}

    private final Set<Worked> before;
    private final SheetDates dates;
    private final Names names;
    private final List<String> remarks;

    HourRows(View view, SheetDates dates, Names names, List<String> remarks) {
        this.before = view.all(TaskTime.class).stream()
                .map(time -> new Worked(time.job(), time.task(), time.date(), time.minutes(), time.who()))
                .collect(Collectors.toSet());
        this.dates = dates;
        this.names = names;
        this.remarks = remarks;
    }

    @Override
    public void take(Writing writing, Cells cells) {
        String job = cells.needed("job");
        if (writing.find(Job.class, job).isEmpty()) {
            throw new CellRefused(
                    "job", "“" + job + "” is no job of this shop: import the jobs first, or correct the number");
        }
        String task = cells.needed("task");
        int minutes = SheetNumbers.minutes(cells.needed("hours"));
        LocalDate date = Objects.requireNonNull(dates.read(cells.needed("date")));
        Optional<String> known = names.task(task);
        if (known.isEmpty()) {
            remarks.add("“" + task + "” is no task known here and was taken as text");
        }
        if (before.contains(new Worked(job, known.orElse(task), date, minutes, cells.cell("who")))) {
            throw new CellRefused(
                    "hours", "stand in the books already, the same minutes that day: leave the row out, or correct it");
        }
        writing.put(new TaskTime(
                writing.nextId(TaskTime.class), job, known.orElse(task), 1, "1/1", date, minutes, cells.cell("who")));
    }
}
