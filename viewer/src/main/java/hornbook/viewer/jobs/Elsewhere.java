package hornbook.viewer.jobs;

import hornbook.viewer.clock.ClockModel;
import java.util.Map;
import java.util.function.Consumer;

/** What is done on a job in another part of the window: its clock, the map of its horn. */
public final class Elsewhere implements Acts {
    private final ClockModel clock;
    private final Consumer<String> map;

    /** @param map shows the map of a horn */
    public Elsewhere(ClockModel clock, Consumer<String> map) {
        this.clock = clock;
        this.map = map;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(
                Act.CLOCK,
                Begin.onJob(page -> new Step.Goes(model -> clock(page))),
                Act.MAP,
                Begin.onJob(
                        page -> new Step.Goes(model -> map.accept(page.card().horn()))));
    }

    private void clock(JobPage page) {
        if (page.card().standing().clocks().isEmpty()) {
            clock.chooseTask(page.card().id());
        } else {
            clock.stop(page.card().id());
        }
    }
}
