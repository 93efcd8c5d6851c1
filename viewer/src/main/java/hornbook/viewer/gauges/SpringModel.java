package hornbook.viewer.gauges;

import hornbook.catalogue.spring.SpringAnswer;
import hornbook.catalogue.spring.SpringQuestion;
import hornbook.shared.measure.SizeReader;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** Which spring, from a measured old one, without a widget. */
public final class SpringModel {
    private final Function<SpringQuestion, SpringAnswer> springs;
    private final Supplier<SizeReader> sizes;
    private final Latest asking;
    private Consumer<SpringView> listener = view -> {};
    private SpringView view = SpringView.NOTHING;

    /** Both are asked beside the window. */
    public SpringModel(Work work, Function<SpringQuestion, SpringAnswer> springs, Supplier<SizeReader> sizes) {
        this.springs = springs;
        this.sizes = sizes;
        this.asking = work.latest();
    }

    SpringView view() {
        return view;
    }

    void onChange(Consumer<SpringView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** A field has changed. */
    void change(UnaryOperator<SpringAsked> field) {
        SpringAsked asked = field.apply(view.asked());
        if (asked.blank()) {
            asking.cancel();
            show(new SpringView(asked, null, null));
            return;
        }
        view = new SpringView(asked, view.answer(), view.trouble());
        asking.ask(
                progress -> springs.apply(asked.question(sizes.get())),
                new Ends<>(
                        answer -> show(new SpringView(asked, answer, null)),
                        thrown -> show(
                                new SpringView(asked, null, Refusal.inFields(String.valueOf(thrown.getMessage()))))));
    }

    private void show(SpringView now) {
        view = now;
        listener.accept(now);
    }
}
