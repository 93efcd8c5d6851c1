/**
 * The shop's books in and out as plain files that any spreadsheet opens: one CSV file a kind, one JSON file of settings.
 *
 * <p>The unit is the row: good rows are taken in one deed, each bad one is refused by file, row and field. What stands
 * in a file of knowledge the catalogue reads ({@link hornbook.shared.exchange.KnowledgeFiles}); here it is passed on.
 */
@NullMarked
package hornbook.shared.exchange;

import org.jspecify.annotations.NullMarked;
