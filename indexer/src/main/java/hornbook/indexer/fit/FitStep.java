package hornbook.indexer.fit;

import org.jspecify.annotations.Nullable;

/**
 * One operation of a plan.
 *
 * @param operation its id
 * @param dimension what it changes
 * @param along whether that is measured along the piece, and not across it
 * @param amount by how much, mm; the number of times where it sets something that is no size
 * @param unit mm, or what is counted
 * @param from what it was, mm or a word
 * @param to what it becomes
 * @param keeps the end that stays, and the end that is cut away, in words
 * @param minutes with its setting up where it is the first of its kind
 * @param clocked whether the minutes are the shop's own
 * @param mind what has to be so, in words
 */
public record FitStep(
        String operation,
        String title,
        String dimension,
        boolean along,
        double amount,
        String unit,
        @Nullable String from,
        String to,
        @Nullable String keeps,
        double minutes,
        boolean clocked,
        @Nullable String mind) {}
