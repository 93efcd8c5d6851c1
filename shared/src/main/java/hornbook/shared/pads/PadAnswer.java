package hornbook.shared.pads;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;

/**
 * Which pad goes into which cup.
 *
 * @param assignments in the order of the cups asked
 * @param shortages cups left without, as lines to order
 * @param cost charge of going off the ruled size: 5 a half step
 * @param halfSteps pads a half step off their ruled size
 * @param resonators for cups whose rim was measured
 * @param resonatorsShort likewise
 * @param stranded what the shop can no longer serve once this is taken, a sentence each
 * @param remarks what to look at before trusting the answer
 */
public record PadAnswer(
        List<Assignment> assignments,
        @JsonProperty("short") List<Shortage> shortages,
        int cost,
        int halfSteps,
        List<Assignment> resonators,
        List<Shortage> resonatorsShort,
        List<String> stranded,
        List<String> remarks) {}
