package hornbook.viewer.cli;

import hornbook.indexer.fit.FitAnswer;
import hornbook.indexer.fit.FitQuestion;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Can something I have be made to fit? */
@Command(
        name = "fit",
        header = "What on hand fits, or can be made to fit: which lot, by which work, in how many minutes.",
        footer = "hornbook fit --kind part-hinge-rod --diameter 2.38 --length 118 --thread 2-56")
final class FitCommand implements Callable<Integer> {
    @Option(names = "--kind", paramLabel = "K", required = true, description = "A kind of part or supply: id or name.")
    String kind = "";

    @Option(
            names = "--diameter",
            paramLabel = "L",
            description = "Its chief round measure: 2.38, 3/32 in, 2.38±0.01 mm, 2.36..2.38 mm.")
    @Nullable
    String diameter;

    @Option(names = "--length", paramLabel = "L", description = "Its length or thickness.")
    @Nullable
    String length;

    @Option(names = "--bore", paramLabel = "L", description = "Its bore or hole.")
    @Nullable
    String bore;

    @Option(names = "--thread", paramLabel = "T", description = "Its thread: 3-48, M2.5x0.45, 6 BA.")
    @Nullable
    String thread;

    @Option(
            names = "--with",
            paramLabel = "NAME=VALUE",
            description = "Any other dimension or word: head=3.8..4.0, nose=headed-tapered, colour=black.")
    List<String> with = List.of();

    @Option(
            names = "--own",
            paramLabel = "NAME=VALUE",
            description = "A piece in hand that lies in no drawer, as measured: bore=2.84.")
    List<String> own = List.of();

    @Option(names = "--for", paramLabel = "MODEL", description = "The horn's model, id or title.")
    @Nullable
    String model;

    @Option(names = "--count", paramLabel = "N", description = "How many alike are wanted; 1 if left out.")
    int count = 1;

    @Option(names = "--reserve", description = "Offer what is set aside, too: shown first, with what is left.")
    boolean reserve;

    private final Frame frame;

    FitCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        FitQuestion question = new FitQuestion(
                kind,
                Optional.ofNullable(diameter),
                Optional.ofNullable(length),
                Optional.ofNullable(bore),
                Optional.ofNullable(thread),
                with,
                own,
                Optional.ofNullable(model),
                reserve,
                count);
        return frame.reading(workshop -> {
            FitAnswer answer = workshop.fit().answer(question);
            FitText text = new FitText(answer);
            return answer.plans().isEmpty() ? frame.nothing(answer, text::print) : frame.answer(answer, text::print);
        });
    }
}
