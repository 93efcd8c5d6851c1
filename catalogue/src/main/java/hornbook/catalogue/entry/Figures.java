package hornbook.catalogue.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Figures of an entry that must agree with each other: shares that add up, spreads above nought, runs that run up. */
final class Figures {
    /** Published shares are rounded; twelve of 0.0833 make 0.9996. */
    private static final double ROUNDING = 0.005;

    private final String file;
    private final List<Problem> problems = new ArrayList<>();

    private Figures(String file) {
        this.file = file;
    }

    static List<Problem> check(Entry entry, String file) {
        Figures figures = new Figures(file);
        switch (entry) {
            case Model model -> figures.model(model);
            case Seller seller -> figures.seller(seller);
            case Fault fault -> figures.fault(fault);
            default -> {}
        }
        return figures.problems;
    }

    private void model(Model model) {
        if (!model.serialLetters().isEmpty()) {
            addUp("serial_letters", model.serialLetters());
        }
        model.traits().forEach((trait, said) -> {
            switch (said) {
                case Shares(var shares) -> addUp("traits." + trait, shares);
                case Normal(var mean, var sd)
                when sd <= 0 ->
                    wrong("traits." + trait + ".sd", "must be above 0", "give the spread from horn to horn in mm");
                case Normal _ -> {}
            }
        });
        for (int i = 0; i < model.serialRanges().size(); i++) {
            SerialRange range = model.serialRanges().get(i);
            if (range.from() > range.to()) {
                wrong("serial_ranges." + (i + 1), "runs from high to low", "change its ends round");
            }
        }
    }

    private void seller(Seller seller) {
        double sum = seller.madeBy().stream().mapToDouble(MadeBy::weight).sum();
        sum("made_by", sum);
    }

    private void fault(Fault fault) {
        double sum = fault.causes().stream().mapToDouble(Cause::share).sum();
        sum("causes", sum);
        if (fault.minutes().low() > fault.minutes().high()) {
            wrong("minutes", "run from high to low", "change them round");
        }
    }

    private void addUp(String field, Map<String, Double> shares) {
        sum(field, shares.values().stream().mapToDouble(Double::doubleValue).sum());
    }

    private void sum(String field, double sum) {
        if (Math.abs(sum - 1) > ROUNDING) {
            String shown = Double.toString(Math.round(sum * 10_000) / 10_000.0);
            wrong(field, "the shares add up to " + shown, "make them add up to 1");
        }
    }

    private void wrong(String field, String why, String whatToDo) {
        problems.add(new Problem(file, field, why, whatToDo, true));
    }
}
