package hornbook.viewer.cli;

import hornbook.indexer.search.Answer;
import hornbook.indexer.search.Question;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.workshop.Workshop;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Does once what is done most, in a demo shop, so that the start-up cache holds the classes for it. */
@Command(
        name = "train",
        hidden = true,
        header = "Runs once through the usual work, for the start-up cache.",
        footer = "hornbook train")
final class TrainCommand implements Callable<Integer> {
    private final Frame frame;
    private final WindowStart window;

    TrainCommand(Frame frame, WindowStart window) {
        this.frame = frame;
        this.window = window;
    }

    @Override
    public Integer call() {
        try (Workshop workshop = DemoShop.in(frame.shop())) {
            workshop.stock().drawer("d-card-r5c5").ifPresent(card -> frame.answer(card, out -> {}));
            Answer answer = workshop.search().find(Question.of("corvane disc 19 mm"));
            frame.answer(answer, out -> FindCommand.print(out, answer));
        }
        return window.open(frame.folders(), true);
    }
}
