/**
 * The books on disk: one SQLite file, written by one process, in deeds that can be undone.
 *
 * <p>The only package that knows SQL. Records go in and come out; after a commit the listeners given at opening hear
 * which records changed. Own entry files are written here too, so that a deed covers them. What the records mean, what
 * is computed from them, and how they are exchanged stands elsewhere.
 */
@NullMarked
package hornbook.shared.store;

import org.jspecify.annotations.NullMarked;
