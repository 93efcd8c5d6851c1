package hornbook.shared.pads;

import hornbook.shared.measure.PadSize;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.setting.Setting;
import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Lot;
import hornbook.shared.shop.Supplier;
import hornbook.shared.store.Books;
import hornbook.shared.supply.Verdicts;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Answers which pad goes into which cup: the most cups served first, then the least charge, then the nearest sizes; half
 * a millimetre off the ruled size at most, one batch a stack, never a keepsake.
 */
public final class Pads {
    /** Charge of a half step off the ruled size. */
    public static final int HALF_STEP = 5;

    private final Books books;
    private final Millimetres sizes;

    public Pads(Books books, SizeReader sizes) {
        this.books = books;
        this.sizes = new Millimetres(sizes);
    }

    /**
     * For cups given, whatever the open jobs want.
     *
     * @param reserve may what is set aside be taken too?
     */
    public PadAnswer forCups(List<Cup> cups, boolean reserve) {
        return answer(cups, cup -> true, reserve, List.of());
    }

    /**
     * For the measured cups of open jobs where nothing is fitted yet. All such jobs are served from one tray, so all are
     * reckoned together; the answer holds those asked.
     *
     * @param jobs none asks for all
     * @throws BadInput where a job is not one of them
     */
    public PadAnswer forJobs(Collection<String> jobs, boolean reserve) {
        MeasuredCups measured = new MeasuredCups(books, sizes);
        Set<String> waiting = measured.jobs();
        for (String job : jobs) {
            if (!waiting.contains(job)) {
                throw new BadInput("job " + job + " has no measured cup that waits for a pad: "
                        + (waiting.isEmpty()
                                ? "measure the cups first (finding-cup-id)"
                                : "these have: " + String.join(", ", waiting)));
            }
        }
        List<String> remarks = new ArrayList<>(measured.remarks());
        Set<String> others = waiting.stream()
                .filter(job -> !jobs.isEmpty() && !jobs.contains(job))
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
        if (!others.isEmpty()) {
            remarks.add("reckoned together with " + String.join(", ", others) + ", which take from the same tray");
        }
        return answer(measured.cups(), cup -> jobs.isEmpty() || jobs.contains(cup.job()), reserve, remarks);
    }

    private PadAnswer answer(List<Cup> cups, Predicate<Cup> asked, boolean reserve, List<String> before) {
        List<Lot> lots = books.all(Lot.class);
        Trays trays = new Trays(sizes, new Verdicts(books.all(Supplier.class)), reserve);
        PadSize.Tie tie = tie();
        Plan pads = Plan.of(Goods.PADS, cups, tie, trays.of(Goods.PADS, lots));
        Plan resonators = Plan.of(Goods.RESONATORS, cups, tie, trays.of(Goods.RESONATORS, lots));
        Orders orders = new Orders(books);
        List<Assignment> served = pads.assignments(asked);
        int halfSteps = served.stream().mapToInt(a -> Math.abs(a.halfSteps())).sum();
        return new PadAnswer(
                served,
                pads.shortages(asked, orders),
                HALF_STEP * halfSteps,
                halfSteps,
                resonators.assignments(asked),
                resonators.shortages(asked, orders),
                both(pads.stranded(), resonators.stranded()),
                both(before, both(pads.remarks(), resonators.remarks())));
    }

    private static List<String> both(List<String> first, List<String> second) {
        List<String> all = new ArrayList<>(first);
        all.addAll(second);
        return List.copyOf(all);
    }

    private PadSize.Tie tie() {
        return Setting.PAD_TIE.text(books).filter("down"::equals).isPresent() ? PadSize.Tie.DOWN : PadSize.Tie.UP;
    }
}
