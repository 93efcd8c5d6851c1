package hornbook.catalogue.called;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Cup;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Fault;
import hornbook.catalogue.entry.MeasureTaken;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Quirk;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.Word;
import hornbook.shared.shop.BadInput;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * One sort of entries by what people call them.
 *
 * <pre>{@code
 * Task task = Called.tasks(catalogue).find("pads out");
 * }</pre>
 *
 * @param <E> the sort
 */
public final class Called<E extends Entry> {
    private static final int MOST_NAMED = 5;
    private static final Pattern SORT = Pattern.compile("^(cup|f|finding|m|part|q|sup|task)-");

    private final String sort;
    private final Map<String, E> byId = new LinkedHashMap<>();
    private final Map<String, E> byName = new LinkedHashMap<>();

    private Called(String sort, Stream<? extends E> all, Collection<Word> words) {
        this.sort = sort;
        all.forEach(entry -> byId.put(entry.id(), entry));
        byId.values()
                .forEach(entry ->
                        Stream.of(entry.id(), bare(entry), entry.title()).forEach(name -> known(name, entry)));
        byId.values().forEach(entry -> otherNames(entry).forEach(name -> known(name, entry)));
        words.forEach(this::word);
    }

    /** Models of horns. */
    public static Called<Model> models(Catalogue catalogue) {
        return of("model", Model.class, catalogue);
    }

    /** What the clock runs on. */
    public static Called<Task> tasks(Catalogue catalogue) {
        return of("task", Task.class, catalogue);
    }

    /** The cups of a horn. */
    public static Called<Cup> cups(Catalogue catalogue) {
        return of("cup", Cup.class, catalogue);
    }

    /** Kinds of part and supply. */
    public static Called<Thing> stock(Catalogue catalogue) {
        Stream<Thing> things = Stream.concat(
                catalogue.all(Part.class).values().stream(), catalogue.all(Supply.class).values().stream());
        return new Called<>(
                "kind of part or supply", things, catalogue.all(Word.class).values());
    }

    /** What can be seen, measured or wrong on a horn: traits, findings, faults, quirks. */
    public static Called<Entry> onHorns(Catalogue catalogue) {
        Stream<Entry> all = Stream.of(MeasureTaken.class, Trait.class, Fault.class, Quirk.class)
                .flatMap(type -> catalogue.all(type).values().stream());
        return new Called<>(
                "finding, trait, fault or quirk", all, catalogue.all(Word.class).values());
    }

    private static <E extends Entry> Called<E> of(String sort, Class<E> type, Catalogue catalogue) {
        return new Called<>(
                sort,
                catalogue.all(type).values().stream(),
                catalogue.all(Word.class).values());
    }

    private void known(String name, E entry) {
        byName.putIfAbsent(SpokenName.plain(name), entry);
    }

    /** The id without the letters that say which sort it is. */
    private static String bare(Entry entry) {
        return SORT.matcher(entry.id()).replaceFirst("");
    }

    private static List<String> otherNames(Entry entry) {
        return entry instanceof Thing thing ? thing.otherNames() : List.of();
    }

    /** Of what a word may mean the first of this sort counts. */
    private void word(Word word) {
        word.meanings().stream()
                .map(meaning -> byId.get(meaning.same()))
                .filter(Objects::nonNull)
                .findFirst()
                .ifPresent(entry -> known(word.title(), entry));
    }

    /** The one of exactly that name, if any is. */
    public Optional<E> known(String typed) {
        return Optional.ofNullable(byName.get(SpokenName.plain(typed)));
    }

    /**
     * The one that is meant.
     *
     * @throws BadInput with those that may be meant, or the nearest known
     */
    public E find(String typed) {
        E named = byName.get(SpokenName.plain(typed));
        if (named != null) {
            return named;
        }
        List<E> begun = byId.values().stream()
                .filter(entry ->
                        new SpokenName(typed).begins(entry.title() + " " + String.join(" ", otherNames(entry))))
                .toList();
        if (begun.size() == 1) {
            return begun.getFirst();
        }
        throw new BadInput("“" + typed + "” " + (begun.isEmpty() ? unknown(typed) : several(begun)));
    }

    private String unknown(String typed) {
        return "is no " + sort + " known here: "
                + Nearest.of(SpokenName.plain(typed), byName.keySet())
                        .flatMap(near -> Optional.ofNullable(byName.get(near)))
                        .map(near -> "perhaps " + shown(near) + " is meant")
                        .orElse("“hornbook find " + typed + "” may show what it is called");
    }

    private String several(List<E> begun) {
        String more = begun.size() > MOST_NAMED ? " …" : "";
        return "may be any of " + begun.size() + ": "
                + SpokenName.oneOf(
                        begun.stream().limit(MOST_NAMED).map(Called::shown).toList()) + more;
    }

    private static String shown(Entry entry) {
        return entry.title() + " (" + entry.id() + ")";
    }
}
