package hornbook.indexer.words;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Everyday;
import hornbook.catalogue.entry.MadeBy;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Meaning;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Seller;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.Tool;
import hornbook.catalogue.entry.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Gathers the terms of a catalogue: its words, the names of things, makes and sellers. */
public final class LexiconBuilder {
    /** What an everyday word of the same group is worth. */
    private static final float ALIKE = 0.6f;

    private static final float SHORTENED = 0.9f;
    private static final int SHORTEST = 4;
    private static final float LESS_SURE = 0.6f;
    /** A seller's name speaks of the maker behind it, but less than the maker's own name does. */
    private static final float BEHIND = 0.7f;

    private final Map<String, Map<String, Sense>> terms = new TreeMap<>();

    private LexiconBuilder() {}

    public static Lexicon of(Catalogue catalogue) {
        LexiconBuilder builder = new LexiconBuilder();
        things(catalogue).forEach(builder::thing);
        catalogue.makes().values().forEach(builder::make);
        catalogue.all(Word.class).values().forEach(builder::word);
        catalogue.sellers().values().forEach(seller -> builder.seller(seller, catalogue));
        builder.tradeWordsMeanThemselves();
        builder.skeletons();
        Everyday.each((word, group) -> builder.add(word, "nearly " + group, ALIKE, Sense.NEARLY));
        return builder.lexicon();
    }

    private static Stream<Thing> things(Catalogue catalogue) {
        return Stream.of(Part.class, Tool.class, Supply.class).flatMap(kind -> catalogue.all(kind).values().stream());
    }

    private void thing(Thing thing) {
        add(thing.title(), thing.id(), 1, "name");
        thing.otherNames().forEach(name -> add(name, thing.id(), 1, "name"));
    }

    private void make(Make make) {
        add(make.title(), make.id(), 1, "name");
        make.otherNames().forEach(name -> add(name, make.id(), 1, "name"));
        abbreviations(make);
    }

    /** Labels and slips of paper say {@code Corv.} for Corvane. */
    private void abbreviations(Make make) {
        String name = Cutter.joined(make.title());
        for (int letters = SHORTEST; letters < name.length() && name.indexOf(' ') < 0; letters++) {
            add(name.substring(0, letters), make.id(), SHORTENED, "abbreviation");
        }
    }

    private void seller(Seller seller, Catalogue catalogue) {
        add(seller.title(), seller.id(), 1, "name");
        Map<String, Double> makes = new LinkedHashMap<>();
        for (MadeBy behind : seller.madeBy()) {
            catalogue.models().values().stream()
                    .filter(model -> behind.covers(model.id()))
                    .map(Model::make)
                    .distinct()
                    .forEach(make -> makes.merge(make, behind.weight(), Double::sum));
        }
        makes.forEach((make, share) -> add(seller.title(), make, (float) (share * BEHIND), "seller"));
    }

    private void word(Word word) {
        for (Meaning meaning : word.meanings()) {
            String note = meaning.note() == null ? "" : meaning.note();
            boolean doubtful = note.contains("clash") || note.startsWith("also") || note.startsWith("weak");
            float share = (doubtful ? LESS_SURE : 1)
                    / (float) Math.sqrt(word.meanings().size());
            add(word.title(), meaning.same(), share, meaning.kind());
        }
    }

    /** {@code spit valve} is a water key; {@code water key} is then itself a term, or leads on to what it means. */
    private void tradeWordsMeanThemselves() {
        for (String term : List.copyOf(terms.keySet())) {
            for (Sense sense : List.copyOf(senses(term).values())) {
                String plain = Cutter.joined(sense.concept());
                Map<String, Sense> further = terms.get(plain);
                if (further != null && !plain.equals(term)) {
                    further.values()
                            .forEach(s -> put(term, new Sense(s.concept(), sense.share() * s.share(), sense.kind())));
                } else if (further == null && isWords(sense.concept())) {
                    put(plain, new Sense(sense.concept(), 1, "name"));
                }
            }
        }
    }

    /** {@code tampon qui colle} is also said {@code tampon colle}. */
    private void skeletons() {
        for (String term : List.copyOf(terms.keySet())) {
            String bare = StopWords.skeleton(term);
            if (!bare.equals(term) && bare.indexOf(' ') > 0 && !terms.containsKey(bare)) {
                senses(term).values().forEach(sense -> put(bare, sense));
            }
        }
    }

    private static boolean isWords(String concept) {
        return concept.chars().allMatch(c -> Character.isLetter(c) || c == ' ');
    }

    private void add(String term, String concept, float share, String kind) {
        String key = Cutter.joined(term);
        if (!key.isEmpty() && key.chars().filter(c -> c == ' ').count() < Lexicon.LONGEST) {
            put(key, new Sense(concept, share, kind));
        }
    }

    private void put(String term, Sense sense) {
        senses(term).merge(sense.concept(), sense, (a, b) -> a.share() >= b.share() ? a : b);
    }

    private Map<String, Sense> senses(String term) {
        return terms.computeIfAbsent(term, t -> new LinkedHashMap<>());
    }

    private Lexicon lexicon() {
        TreeMap<String, List<Sense>> all = new TreeMap<>();
        terms.forEach((term, senses) -> all.put(term, new ArrayList<>(senses.values())));
        return Lexicon.of(all);
    }
}
