package hornbook.viewer.work;

import java.util.function.Consumer;

/**
 * Who is told what becomes of work, on the thread that shows. After a cancel nobody is told anything.
 *
 * @param answered takes the answer
 * @param failed takes what was thrown instead
 * @param reached takes how far it is
 */
public record Ends<A>(Consumer<A> answered, Consumer<Throwable> failed, Consumer<Reached> reached) {
    public Ends(Consumer<A> answered, Consumer<Throwable> failed) {
        this(answered, failed, reached -> {});
    }
}
