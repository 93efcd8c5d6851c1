/**
 * The question: how is this shop set?
 *
 * <p>Here belong the settings there are, what each means, what is usual where it is not set, and how what a person writes
 * becomes its value. Not here: what a setting is used for, which is the business of who reads it. Commands and the window
 * ask {@link SettingBook}.
 */
@NullMarked
package hornbook.shared.setting;

import org.jspecify.annotations.NullMarked;
