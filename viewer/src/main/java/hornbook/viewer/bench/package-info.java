/**
 * The screen Bench: what is this horn, what will bite, what to fetch.
 *
 * <p>{@code Bench} is the one thing asked, {@code BenchModel} what the screen knows and does, {@code BenchView} what it
 * shows at one moment; the rest draws it. Not here: how likely anything is (identify), what belongs in a brief (brief),
 * drawings themselves (picture). The window's entry point builds it; no other screen knows it.
 */
@NullMarked
package hornbook.viewer.bench;

import org.jspecify.annotations.NullMarked;
