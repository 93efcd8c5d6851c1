package hornbook.indexer.fit;

import java.util.List;
import java.util.Optional;

/** The tools an operation wants: which are there, and what it lacks. */
interface Rack {
    /** Everything is there and good. */
    Rack FULL = new Rack() {
        @Override
        public Optional<String> lacks(Move move, Value to, Sight sight) {
            return Optional.empty();
        }

        @Override
        public List<Double> sizes(Move move) {
            return List.of();
        }
    };

    /** What keeps the operation from being done: a tool or the member of a set that is lent, missing or broken. */
    Optional<String> lacks(Move move, Value to, Sight sight);

    /** Sizes of the good members of the set it wants, mm. */
    List<Double> sizes(Move move);
}
