/**
 * What horn is this, and what should be looked at next?
 *
 * <p>Flow: looks as written ({@link hornbook.catalogue.identify.SeenReader}) and the horn's own findings become a
 * {@link hornbook.catalogue.identify.Question}; each trait weighs it as {@code Evidence}; serial and mark weigh in
 * apart; the {@link hornbook.catalogue.identify.Answer} holds candidates, the next look and what does not fit. The
 * chance that a quirk bites, given all that, stands here too, since it is asked of the same posterior. Not here: what
 * to fetch and from where (brief), and what may be used on what (may). Screens, commands and brief may ask.
 */
@NullMarked
package hornbook.catalogue.identify;

import org.jspecify.annotations.NullMarked;
