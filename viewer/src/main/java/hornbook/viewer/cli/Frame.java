package hornbook.viewer.cli;

import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.viewer.workshop.Workshop;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.ToIntFunction;

/** What every command is given: the options all share, the folders, and how to answer. */
final class Frame {
    private final Surroundings around;
    private final CommonOptions options = new CommonOptions();

    Frame(Surroundings around) {
        this.around = around;
    }

    CommonOptions options() {
        return options;
    }

    Surroundings around() {
        return around;
    }

    /** The folders in use, the shop as named on the line where it is. */
    Folders folders() {
        Folders usual = Folders.of(around);
        Path named = options.shop;
        return named == null
                ? usual
                : usual.withShop(around.here().resolve(named).normalize());
    }

    Path shop() {
        return folders().shop();
    }

    Optional<LocalDate> asOf() {
        return Optional.ofNullable(options.asOf);
    }

    /** Prints the answer: the record as JSON where that was asked for, otherwise as text. Gives the exit code. */
    int answer(Object record, Consumer<PrintWriter> text) {
        print(record, text);
        return ExitCode.DONE;
    }

    /** As {@link #answer}, for a question that found nothing. */
    int nothing(Object record, Consumer<PrintWriter> text) {
        print(record, text);
        return ExitCode.NOTHING_FOUND;
    }

    /** Answers from an opened shop that is not changed. Never takes its lock. */
    int reading(ToIntFunction<Workshop> question) {
        try (Workshop workshop = Workshop.open(shop(), Access.READ, asOf())) {
            return question.applyAsInt(workshop);
        }
    }

    /** Does something to the shop; an empty one is made where there is none, and said to be. */
    int writing(ToIntFunction<Workshop> deed) {
        if (!Books.in(shop())) {
            say("there was no shop in " + shop() + "; an empty one is made");
        }
        try (Workshop workshop = Workshop.open(shop(), Access.WRITE, asOf())) {
            return deed.applyAsInt(workshop);
        }
    }

    /** Shows what bears that name in the shop, or says that nothing does. */
    <A> int showing(String what, String name, Function<Workshop, Optional<A>> find, BiConsumer<PrintWriter, A> text) {
        return reading(workshop -> find.apply(workshop)
                .map(found -> answer(found, out -> text.accept(out, found)))
                .orElseGet(() -> notThere(what, name)));
    }

    /** What was asked for by name is not in the shop. */
    int notThere(String what, String name) {
        say("there is no " + what + " “" + name + "”; look it up with “hornbook find " + name + "”");
        return nothing(new NotThere(what, name), out -> {});
    }

    /** The answer where nothing bears the name asked for. */
    record NotThere(String what, String notFound) {}

    /** One line to the person, apart from any answer. */
    void say(String line) {
        around.err().println(line);
        around.err().flush();
    }

    private void print(Object record, Consumer<PrintWriter> text) {
        PrintWriter out = around.out();
        if (options.json) {
            out.println(Json.mapper().writeValueAsString(record));
        } else {
            text.accept(out);
        }
        out.flush();
    }
}
