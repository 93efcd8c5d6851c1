package hornbook.indexer.brief;

import hornbook.shared.measure.Length;
import hornbook.shared.measure.Measured;
import hornbook.shared.measure.StandardSizes;
import hornbook.shared.measure.Thread;
import hornbook.shared.thread.PitchReading;
import hornbook.shared.thread.Side;
import hornbook.shared.thread.ThreadAnswer.LookAlike;
import hornbook.shared.thread.ThreadQuestion;
import hornbook.shared.thread.WhichThread;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which screws start in a hole that is not theirs. */
final class WrongScrews {
    private static final int SHOWN = 3;
    /** The thread is known here, not measured. */
    private static final Length SURE = Length.ofMillimetres("0.005");

    private final StandardSizes sizes = StandardSizes.load();
    private final WhichThread threads = new WhichThread(sizes);
    private final Map<String, List<LookAlike>> known = new HashMap<>();

    /** Of the thread so designated; none for one that no table has. */
    List<LookAlike> into(String designation) {
        return known.computeIfAbsent(
                designation,
                name -> sizes.threads().designated(name).map(this::into).orElse(List.of()));
    }

    private List<LookAlike> into(Thread thread) {
        PitchReading pitch =
                new PitchReading.Measured(Length.ofMillimetres(thread.pitch().mm()), SURE);
        return threads
                .answer(ThreadQuestion.of(Side.SCREW, Measured.plusMinus(thread.major(), SURE), pitch))
                .lookAlikes()
                .stream()
                .filter(alike -> alike.hole().equals(thread.designation()))
                .limit(SHOWN)
                .toList();
    }
}
