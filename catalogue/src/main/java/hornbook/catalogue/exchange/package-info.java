/**
 * The shop's own knowledge as exchange files: makes.csv, stencils.csv, models.jsonl, layout.csv, takedown.csv and
 * looks.csv, in and out.
 *
 * <p>Here belong what each file's columns mean and how a row becomes an entry. Not here: the books' files, and how
 * entries are stored. {@link hornbook.catalogue.exchange.KnowledgeSheets} is the only way in.
 */
@NullMarked
package hornbook.catalogue.exchange;

import org.jspecify.annotations.NullMarked;
