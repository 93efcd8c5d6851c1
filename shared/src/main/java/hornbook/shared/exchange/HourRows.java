package hornbook.shared.exchange;

import hornbook.shared.shop.Job;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Hours worked, task by task. */
final class HourRows implements SheetRows {
    private final SheetDates dates;
    private final Names names;
    private final List<String> remarks;

    HourRows(SheetDates dates, Names names, List<String> remarks) {
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
        writing.put(new TaskTime(
                writing.nextId(TaskTime.class), job, known.orElse(task), 1, "1/1", date, minutes, cells.cell("who")));
    }
}
