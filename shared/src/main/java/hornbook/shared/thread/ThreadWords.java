package hornbook.shared.thread;

import java.util.Optional;

/**
 * A thread question in the words of a person: each option as typed, empty if not given.
 *
 * @param diameter over the crests of a screw
 * @param hole through the crests of a hole; one of the two
 * @param pitch a length
 * @param tpi threads per inch by gauge
 * @param turns how many turns lie in {@code over}
 * @param form degrees
 * @param percent of full thread
 */
public record ThreadWords(
        Optional<String> diameter,
        Optional<String> hole,
        Optional<String> pitch,
        Optional<String> tpi,
        Optional<String> turns,
        Optional<String> over,
        Optional<String> form,
        Optional<String> percent,
        Optional<String> wall,
        Optional<String> through) {}
