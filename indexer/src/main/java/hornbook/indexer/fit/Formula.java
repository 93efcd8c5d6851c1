package hornbook.indexer.fit;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;

/** Arithmetic over names: + - * /, ceil, floor, abs. What depends on an unknown name is not a number. */
sealed interface Formula {
    /** Differences under this are none: a tenth of a nanometre in mm. */
    double NOTHING = 1e-7;

    double value(Names names);

    /** Adds the names it uses. */
    void names(Set<String> into);

    /** Adds what is rounded to whole numbers in it. */
    default void jumps(List<Formula> into) {}

    default Set<String> names() {
        Set<String> all = new TreeSet<>();
        names(all);
        return all;
    }

    /** A number as written. */
    record Constant(double number) implements Formula {
        @Override
        public double value(Names names) {
            return number;
        }

        @Override
        public void names(Set<String> into) {}
    }

    /** A name. */
    record Named(String name) implements Formula {
        @Override
        public double value(Names names) {
            return names.value(name);
        }

        @Override
        public void names(Set<String> into) {
            into.add(name);
        }
    }

    /** Two sides joined. */
    record Joined(Formula left, DoubleBinaryOperator how, Formula right) implements Formula {
        @Override
        public double value(Names names) {
            return how.applyAsDouble(left.value(names), right.value(names));
        }

        @Override
        public void names(Set<String> into) {
            left.names(into);
            right.names(into);
        }

        @Override
        public void jumps(List<Formula> into) {
            left.jumps(into);
            right.jumps(into);
        }
    }

    /**
     * A function of one value.
     *
     * @param whole whether it rounds to a whole number: then it jumps where what it is of is one
     */
    record Applied(DoubleUnaryOperator how, Formula to, boolean whole) implements Formula {
        @Override
        public double value(Names names) {
            return how.applyAsDouble(to.value(names));
        }

        @Override
        public void names(Set<String> into) {
            to.names(into);
        }

        @Override
        public void jumps(List<Formula> into) {
            if (whole) {
                into.add(to);
            } else {
                to.jumps(into);
            }
        }
    }

    /** Up to the next whole number, but not for a rounding error: 0.3/0.1 is 3. */
    static double ceil(double value) {
        return Math.ceil(value - NOTHING);
    }

    static double floor(double value) {
        return Math.floor(value + NOTHING);
    }
}
