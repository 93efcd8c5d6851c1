package hornbook.indexer.card;

import hornbook.catalogue.entry.SerialRange;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** A card being filled in. */
public final class Draft {
    /** A card is itself more than anything else is. */
    private static final float SELF = 8;

    private final String kind;
    private final String id;
    private final String title;
    private final Map<Field, List<String>> texts = new EnumMap<>(Field.class);
    private final Map<String, Float> concepts = new LinkedHashMap<>();
    private final List<String> sizes = new ArrayList<>();
    private final Map<String, Float> links = new LinkedHashMap<>();
    private final List<SerialRange> runs = new ArrayList<>();
    private float standing = 1;
    private Shown shown = Shown.NOTHING;

    Draft(String kind, String id, String title) {
        this.kind = kind;
        this.id = id;
        this.title = title;
        say(Field.TITLE, title);
        concept(id, SELF);
    }

    Draft say(Field field, @Nullable String text) {
        if (text != null && !text.isBlank()) {
            texts.computeIfAbsent(field, f -> new ArrayList<>()).add(text);
        }
        return this;
    }

    /** Takes away what a field says and says something else in another. */
    Draft instead(Field gone, Field field, String text) {
        texts.remove(gone);
        return say(field, text);
    }

    Draft say(Field field, Collection<String> all) {
        all.forEach(text -> say(field, text));
        return this;
    }

    Draft concept(@Nullable String concept, float weight) {
        if (concept != null && !concept.isEmpty()) {
            concepts.merge(concept, weight, Float::sum);
        }
        return this;
    }

    Draft size(@Nullable String written) {
        if (written != null && !written.isBlank()) {
            sizes.add(written);
        }
        return this;
    }

    /** Names another card, and stands beside it. */
    Draft link(@Nullable String to, float share) {
        if (to != null && !to.equals(id)) {
            concept(to, share * 3);
        }
        return this;
    }

    Draft beside(Map<String, Float> all) {
        links.putAll(all);
        return this;
    }

    Map<Field, List<String>> texts() {
        return texts;
    }

    String id() {
        return id;
    }

    Draft runs(Collection<SerialRange> all) {
        runs.addAll(all);
        return this;
    }

    Draft standing(float value) {
        standing = value;
        return this;
    }

    Draft shown(Shown value) {
        shown = value;
        return this;
    }

    Card card() {
        return new Card(kind, id, title, texts, concepts, sizes, links, runs, standing, shown);
    }
}
