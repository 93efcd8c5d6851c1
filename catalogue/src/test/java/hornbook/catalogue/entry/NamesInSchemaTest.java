package hornbook.catalogue.entry;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.catalogue.edit.Field;
import hornbook.catalogue.edit.Forms;
import hornbook.catalogue.edit.Shape;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Wherever a shipped entry names another, its schema says so: otherwise a form could not offer what may be named. */
class NamesInSchemaTest {
    private static final Catalogue SHIPPED = Catalogue.shipped();

    @Test
    void everyFieldThatNamesAnEntrySaysOfWhichKind() {
        Set<String> silent = new LinkedHashSet<>();
        int looked = 0;
        for (Entry entry : SHIPPED.all()) {
            List<Field> form = Forms.of(entry.entryKind());
            for (Link link : LinkList.of(entry)) {
                looked++;
                List<String> names = names(form, link);
                Kind named = SHIPPED.entry(link.id()).map(Entry::entryKind).orElse(Kind.TRAIT);
                boolean said = link.value().isEmpty()
                        ? names.contains(named.word()) || names.contains("condition") || names.contains("any")
                        : names.stream()
                                .anyMatch(n -> n.startsWith("value") || n.equals("condition") || n.equals("any"));
                if (!said) {
                    silent.add(entry.entryKind().word() + " " + link.field().replaceAll("[0-9]+", "n") + " names a "
                            + named.word() + " and the schema says " + names);
                }
            }
            if (looked > 4000) {
                break;
            }
        }
        assertThat(looked).isGreaterThan(1500);
        assertThat(silent).isEmpty();
    }

    private static List<String> names(List<Field> form, Link link) {
        List<String> steps = List.of(link.field().split("\\.", 2));
        Optional<Field> field =
                form.stream().filter(f -> f.name().equals(steps.getFirst())).findFirst();
        return field.map(f -> gathered(f.shape())).orElse(List.of());
    }

    private static List<String> gathered(Shape shape) {
        List<String> names = new ArrayList<>();
        switch (shape) {
            case Shape.Text text -> names.addAll(text.names());
            case Shape.ListOf list -> names.addAll(gathered(list.each()));
            case Shape.ByName byName -> {
                names.addAll(byName.names());
                names.addAll(gathered(byName.each()));
            }
            case Shape.Group group -> group.fields().forEach(f -> names.addAll(gathered(f.shape())));
            default -> {}
        }
        return names;
    }
}
