package hornbook.viewer.work;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.ShopUnavailable;
import java.util.function.BiFunction;
import java.util.function.Consumer;

/**
 * What a screen shows at the moment, and who draws it. What goes wrong with work is shown in words. To be used on the
 * thread that shows.
 */
public final class Shown<V> {
    private final BiFunction<V, String, V> troubled;
    private V now;
    private Consumer<V> draw = view -> {};

    /** @param troubled the view with what was refused, in words */
    public Shown(V first, BiFunction<V, String, V> troubled) {
        this.now = first;
        this.troubled = troubled;
    }

    public V now() {
        return now;
    }

    /** Draws now, and whenever there is something else to see. */
    public void onChange(Consumer<V> drawing) {
        draw = drawing;
        drawing.accept(now);
    }

    public void show(V next) {
        now = next;
        draw.accept(next);
    }

    public void trouble(String why) {
        show(troubled.apply(now, why));
    }

    /** Ends of work whose failure is shown here. */
    public <A> Ends<A> ends(Consumer<A> answered) {
        return new Ends<>(answered, this::failed);
    }

    private void failed(Throwable thrown) {
        boolean told = thrown instanceof BadInput || thrown instanceof ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        trouble(told ? words : "This is a fault of Hornbook's own: " + words);
    }
}
