package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Condition;
import hornbook.catalogue.entry.Conditions;
import hornbook.catalogue.entry.Model;
import java.util.List;
import java.util.Map;

/** The chance that a condition holds for a horn of an entry, traits independent once the entry is given. */
final class Applies {
    private final List<Variable> variables;
    private final Holds holds;

    /** Whether the condition holds, each variable standing at a case. */
    private interface Holds {
        boolean at(int[] cells, Standing standing, int entry);
    }

    Applies(Condition condition, Map<String, Evidence> evidence) {
        VariableFinder finder = new VariableFinder(evidence);
        Conditions.leaves(condition).forEach(finder::note);
        this.variables = finder.variables();
        this.holds = compile(condition, finder.turnsOn());
    }

    List<Variable> variables() {
        return variables;
    }

    /** Chances of the cases of every variable, for a horn of an entry, all answers given. */
    double[][] cells(Standing standing, int entry) {
        double[][] cells = new double[variables.size()][];
        for (int v = 0; v < cells.length; v++) {
            Variable variable = variables.get(v);
            cells[v] = variable.chances(entry, standing.looks(variable.trait()), standing.except());
        }
        return cells;
    }

    /** Chance that it holds. */
    double chance(Standing standing, int entry, double[][] cells) {
        double[] sum = new double[1];
        new Sum(standing, entry, -1, cells, sum).from(0, 1);
        return sum[0];
    }

    /** Chance that it holds, with one variable in each of its cases. */
    double[] given(Standing standing, int entry, double[][] cells, int held) {
        double[] sums = new double[variables.get(held).cells()];
        new Sum(standing, entry, held, cells, sums).from(0, 1);
        return sums;
    }

    private final class Sum {
        private final Standing standing;
        private final int entry;
        private final int held;
        private final double[][] cells;
        private final double[] into;
        private final int[] at;

        Sum(Standing standing, int entry, int held, double[][] cells, double[] into) {
            this.standing = standing;
            this.entry = entry;
            this.held = held;
            this.cells = cells;
            this.into = into;
            this.at = new int[cells.length];
        }

        void from(int variable, double weight) {
            if (variable == at.length) {
                if (holds.at(at, standing, entry)) {
                    into[held < 0 ? 0 : at[held]] += weight;
                }
                return;
            }
            for (int c = 0; c < cells[variable].length; c++) {
                double own = variable == held ? 1 : cells[variable][c];
                if (own > 0) {
                    at[variable] = c;
                    from(variable + 1, weight * own);
                }
            }
        }
    }

    private Holds compile(Condition part, Map<Condition, Integer> turnsOn) {
        return switch (part) {
            case Condition.And and -> {
                List<Holds> all =
                        and.parts().stream().map(p -> compile(p, turnsOn)).toList();
                yield (cells, s, e) -> all.stream().allMatch(h -> h.at(cells, s, e));
            }
            case Condition.Or or -> {
                List<Holds> any =
                        or.parts().stream().map(p -> compile(p, turnsOn)).toList();
                yield (cells, s, e) -> any.stream().anyMatch(h -> h.at(cells, s, e));
            }
            case Condition.Always _ -> (_, _, _) -> true;
            case Condition.Of(var id) ->
                (_, s, e) -> e < s.unlisted() && of(s.models().get(e), id);
            case Condition.Is _, Condition.Between _ -> leaf(part, turnsOn);
        };
    }

    private Holds leaf(Condition leaf, Map<Condition, Integer> turnsOn) {
        Integer at = turnsOn.get(leaf);
        if (at == null) {
            throw new IllegalStateException("nothing stands for " + leaf);
        }
        int variable = at;
        boolean[] yes = new boolean[variables.get(variable).cells()];
        for (int c = 0; c < yes.length; c++) {
            yes[c] = variables.get(variable).holds(leaf, c);
        }
        return (cells, _, _) -> yes[cells[variable]];
    }

    private static boolean of(Model model, String id) {
        return model.make().equals(id) || model.id().equals(id) || model.id().startsWith(id + "-");
    }
}
