/**
 * The question: how did it go, and how does it stand?
 *
 * <p>Here belong the cards of a job and of a horn, and the deeds of a job from taking in to handing back. Not here: how
 * long the next one will take (estimate), what a finding means (the catalogue). The viewer asks.
 */
@NullMarked
package hornbook.shared.job;

import org.jspecify.annotations.NullMarked;
