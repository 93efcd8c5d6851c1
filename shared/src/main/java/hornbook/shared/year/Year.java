package hornbook.shared.year;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.TaskTime;
import hornbook.shared.store.Books;
import hornbook.shared.store.View;
import hornbook.shared.year.YearAnswer.MonthLine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Reckons a year of the books together. */
public final class Year {
    private static final int LAST = 9999;

    private final Books books;

    public Year(Books books) {
        this.books = books;
    }

    /** The year that today is in. */
    public YearAnswer answer() {
        return answer(books.today().getYear());
    }

    /**
     * One year, up to today where it is not over. A year that the books know nothing of has an empty answer.
     *
     * @throws BadInput for a number that is no year
     */
    public YearAnswer answer(int year) {
        if (year < 1 || year > LAST) {
            throw new BadInput(year + " is no year: write it as 2026");
        }
        return books.reading(view -> of(year, view));
    }

    private static YearAnswer of(int year, View view) {
        LocalDate end = LocalDate.of(year, 12, 31);
        LocalDate upTo = end.isAfter(view.today()) ? view.today() : end;
        Period in = new Period(LocalDate.of(year, 1, 1), upTo);
        List<Job> jobs = view.all(Job.class);
        Hours hours = Hours.of(view, jobs, in);
        Stores stores = Stores.of(view, in);
        Promises promises = new Promises(jobs, in, hours.all());
        List<Job> came = jobs.stream().filter(job -> in.holds(job.tookIn())).toList();
        List<Job> done = jobs.stream().filter(in::doneIn).toList();
        return new YearAnswer(
                year,
                upTo,
                came.size(),
                done.size(),
                (int) came.stream()
                        .filter(j -> j.status() == JobStatus.DECLINED)
                        .count(),
                hours.minutes(),
                months(in, came, done, hours, stores),
                hours.kinds(done),
                hours.tasks(),
                stores.used(),
                stores.usedCost(),
                stores.spent(),
                promises.late(),
                promises.promised(),
                promises.overrun(),
                promises.quoted(),
                stores.suppliers(view),
                remarks(in, stores));
    }

    private static List<MonthLine> months(Period in, List<Job> came, List<Job> done, Hours hours, Stores stores) {
        List<MonthLine> months = new ArrayList<>();
        int last = in.to().isBefore(in.from()) ? 0 : in.to().getMonthValue();
        for (int month = 1; month <= last; month++) {
            int m = month;
            Predicate<LocalDate> here = day -> day.getMonthValue() == m;
            months.add(new MonthLine(
                    month,
                    (int) came.stream().filter(job -> here.test(job.tookIn())).count(),
                    (int) done.stream()
                            .filter(job -> job.done() != null && here.test(job.done()))
                            .count(),
                    hours.of().stream()
                            .filter(time -> here.test(time.date()))
                            .mapToInt(TaskTime::minutes)
                            .sum(),
                    stores.pieces(here),
                    stores.spent(here)));
        }
        return months;
    }

    private static List<String> remarks(Period in, Stores stores) {
        List<String> remarks = new ArrayList<>();
        if (in.to().getDayOfYear() < in.to().lengthOfYear()) {
            remarks.add("the year is not over: reckoned up to " + in.to());
        }
        int unpriced = stores.unpriced();
        if (unpriced > 0) {
            remarks.add(unpriced + " of " + stores.pieces(day -> true)
                    + " pieces used have no price in the books (salvaged, or there before the first count): their cost"
                    + " is left out");
        }
        return remarks;
    }
}
