package hornbook.shared.exchange;

import java.util.Optional;

/** What a name on a person's list means in the knowledge there is; the catalogue knows. */
public interface Names {
    /** Nothing is known: every name is taken as text. */
    Names NONE = new Names() {
        @Override
        public Optional<String> make(String written) {
            return Optional.empty();
        }

        @Override
        public Optional<String> model(String make, String written, String instrument) {
            return Optional.empty();
        }

        @Override
        public Optional<String> task(String written) {
            return Optional.empty();
        }

        @Override
        public Optional<String> thing(String title) {
            return Optional.empty();
        }
    };

    /** Id of the make of that name. */
    Optional<String> make(String written);

    /** Id of the model of that name; make and instrument may be empty. */
    Optional<String> model(String make, String written, String instrument);

    /** Id of the task of that name. */
    Optional<String> task(String written);

    /** Id of the kind of part or supply that a title speaks of. */
    Optional<String> thing(String title);
}
