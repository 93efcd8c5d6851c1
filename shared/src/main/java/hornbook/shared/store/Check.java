package hornbook.shared.store;

import hornbook.shared.shop.ShopUnavailable;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;

/**
 * Looks a whole shop over: is everything in it what was once put there? Takes no lock and changes nothing; what is
 * written meanwhile does not disturb it.
 */
public final class Check {
    /** Lines of one sort; a torn file has thousands and they all say the same. */
    static final int MOST_LINES = 20;

    private final Path folder;

    public Check(Path folder) {
        this.folder = folder;
    }

    /**
     * What was found.
     *
     * @param ok nothing is wrong
     * @param done what a repair changed
     */
    public record Report(boolean ok, List<Problem> problems, List<String> done) {
        static Report of(List<Problem> problems, List<String> done) {
            return new Report(problems.isEmpty(), List.copyOf(problems), List.copyOf(done));
        }
    }

    /** @throws ShopUnavailable where there is no shop, or one that only a newer Hornbook can read */
    public Report run() {
        return Report.of(problems(), List.of());
    }

    List<Problem> problems() {
        if (!Books.in(folder)) {
            throw new ShopUnavailable("there is no shop in " + folder + ": name its folder with --shop DIR");
        }
        List<Problem> problems = new ArrayList<>(
                inFile(folder.resolve(Opening.FILE), query -> new ContentCheck(query, folder).problems()));
        if (problems.stream().anyMatch(p -> p.toDo().equals(Damage.TO_DO))) {
            problems.add(Damage.offer(folder));
        }
        return problems;
    }

    /** The two halves read the file side by side: what SQLite looks over, and what only we can. */
    private static List<Problem> inFile(Path file, Function<Query, List<Problem>> content) {
        CompletableFuture<List<Problem>> pages = CompletableFuture.supplyAsync(() -> ask(file, FileCheck::problems));
        List<Problem> found = new ArrayList<>(ask(file, content));
        found.addAll(0, pages.join());
        return found.stream().distinct().toList();
    }

    /** The problems of a file of books that stands alone, as a copy does. */
    static List<Problem> ofCopy(Path file) {
        return inFile(file, query -> ContentCheck.alone(query).problems());
    }

    private static List<Problem> ask(Path file, Function<Query, List<Problem>> questions) {
        try (Query query = new Query(Database.toRead(file))) {
            query.run("begin");
            if (Migrations.shape(query, file) < Migrations.SHAPE) {
                return List.of(new Problem(
                        "was written by an older Hornbook",
                        file.toString(),
                        "open it once to write, then check again"));
            }
            List<Problem> found = questions.apply(query);
            query.run("rollback");
            return found;
        } catch (SQLException e) {
            return List.of(Damage.of("cannot be read", file.toString()));
        } catch (ShopUnavailable e) {
            if (String.valueOf(e.getMessage()).contains("newer Hornbook")) {
                throw e;
            }
            return List.of(Damage.of("cannot be read as a shop's books", file.toString()));
        }
    }
}
