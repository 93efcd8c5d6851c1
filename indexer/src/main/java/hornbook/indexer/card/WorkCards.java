package hornbook.indexer.card;

import hornbook.catalogue.entry.Caution;
import hornbook.catalogue.entry.Meaning;
import hornbook.catalogue.entry.MeasureTaken;
import hornbook.catalogue.entry.Operation;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.entry.Word;
import java.util.stream.Collectors;

/** Cards of operations, tasks, measures, cautions and words. */
final class WorkCards {
    private static final float WORK = 0.75f;
    private static final float WORD = 0.3f;

    Draft operation(Operation operation) {
        Draft card = Card.draft("operation", operation.id(), operation.title())
                .say(Field.GIST, operation.preconditions())
                .say(Field.TEXT, operation.spoils())
                .say(Field.TEXT, operation.caution())
                .standing(WORK);
        operation.appliesTo().forEach(thing -> card.concept(thing, 0.5f));
        operation.tools().forEach(tool -> card.link(tool, 0.3f));
        return card;
    }

    Draft task(Task task) {
        Draft card = Card.draft("task", task.id(), task.title())
                .say(Field.NAME, TroubleCards.words(task.id().substring("task-".length())))
                .say(Field.TEXT, task.notes())
                .standing(WORK);
        task.faults().forEach(fault -> card.link(fault, 0.3f));
        return card;
    }

    Draft measure(MeasureTaken measure) {
        return Card.draft("finding", measure.id(), measure.title())
                .say(Field.GIST, measure.outlierMeans())
                .say(Field.TEXT, measure.how())
                .standing(WORK);
    }

    Draft caution(Caution caution) {
        return Card.draft("caution", caution.id(), caution.title())
                .say(Field.GIST, caution.classes())
                .say(Field.TEXT, caution.text())
                .say(Field.TEXT, caution.cas())
                .standing(WORK);
    }

    /** A word is found as a whole and only if it is the term typed: its words are no news of anything. */
    Draft word(Word word) {
        String meanings = word.meanings().stream().map(Meaning::same).distinct().collect(Collectors.joining(", "));
        return Card.draft("word", word.id(), word.title())
                .instead(Field.TITLE, Field.WHOLE, word.title())
                .standing(WORD)
                .shown(Shown.NOTHING.remarking("means " + meanings));
    }
}
