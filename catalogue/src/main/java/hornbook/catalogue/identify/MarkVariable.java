package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Condition;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is known only if it was seen, as a mark scraped off. */
record MarkVariable(String trait, String value) implements Variable {
    @Override
    public int cells() {
        return 2;
    }

    @Override
    public double[] chances(int entry, List<Seen> answers, @Nullable String except) {
        boolean seen = answers.stream()
                .anyMatch(a -> a instanceof Seen.OneOf one && one.values().equals(List.of(value)));
        return seen ? new double[] {0, 1} : new double[] {1, 0};
    }

    @Override
    public boolean holds(Condition leaf, int cell) {
        return cell == 1;
    }

    @Override
    public double[][] joint(int entry, List<Seen> answers, @Nullable String except) {
        return Blurred.joint(chances(entry, answers, except), 0);
    }
}
