package hornbook.catalogue.entry;

import hornbook.shared.shop.BadInput;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** All entries at one moment: the shipped ones and the shop's own. Immutable; open it again after a change. */
public final class Catalogue {
    private final Map<Kind, Map<String, Entry>> byKind;
    private final Map<String, Entry> byId;
    private final Set<String> own;
    private final List<Problem> problems;
    private final String digest;

    Catalogue(Collection<? extends Entry> entries, Set<String> own, List<Problem> problems, String digest) {
        Map<Kind, Map<String, Entry>> kinds = new LinkedHashMap<>();
        Map<String, Entry> ids = new LinkedHashMap<>();
        for (Kind kind : Kind.values()) {
            kinds.put(kind, new LinkedHashMap<>());
        }
        for (Entry entry : entries) {
            kinds.getOrDefault(entry.entryKind(), Map.of()).put(entry.id(), entry);
            ids.put(entry.id(), entry);
        }
        kinds.replaceAll((kind, map) -> Ordered.copy(map));
        this.byKind = Ordered.copy(kinds);
        this.byId = Ordered.copy(ids);
        this.own = Set.copyOf(own);
        this.problems = List.copyOf(problems);
        this.digest = digest;
    }

    /** The shipped entries alone. */
    public static Catalogue shipped() {
        return new Shelf().open(Optional.empty());
    }

    /**
     * The shipped entries and those of a shop; an own entry takes the place of a shipped one of its id. Own
     * files that cannot be used are set aside and named by {@link #problems()}; none of them stops the rest.
     *
     * @param entries the shop's folder of entries, one folder a kind; it may be missing
     */
    public static Catalogue open(Path entries) {
        return new Shelf().open(Optional.of(entries));
    }

    /** The entry of that id. */
    public Optional<Entry> entry(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /** What a person calls what bears that id; the id itself where no entry does. */
    public String title(String id) {
        return entry(id).map(Entry::title).orElse(id);
    }

    /** The ids of all entries. */
    public Set<String> ids() {
        return byId.keySet();
    }

    /**
     * The entry of a kind that a person named by its id.
     *
     * @throws BadInput where there is none, with the nearest one or how to look it up
     */
    public <E extends Entry> E named(Class<E> type, String id) {
        Map<String, E> known = all(type);
        E entry = known.get(id);
        if (entry == null) {
            String word = Kind.of(type).word();
            throw new BadInput("“" + id + "” is no " + word + " that is known: "
                    + Nearest.of(id, known.keySet())
                            .map(near -> "did you mean " + near + "?")
                            .orElse("look it up with “hornbook find --kind " + word + "”"));
        }
        return entry;
    }

    /** All entries, kind by kind. */
    public Collection<Entry> all() {
        return byId.values();
    }

    /** The entries of a kind by id, in order. */
    public <E extends Entry> Map<String, E> all(Class<E> type) {
        @SuppressWarnings("unchecked")
        Map<String, E> entries = (Map<String, E>) all(Kind.of(type));
        return entries;
    }

    /** The entries of a kind by id, in order. */
    public Map<String, ? extends Entry> all(Kind kind) {
        return byKind.getOrDefault(kind, Map.of());
    }

    /** Whether the entry of that id is the shop's own. */
    public boolean isOwn(String id) {
        return own.contains(id);
    }

    /** The entries that name that one, in the order of their kinds. */
    public List<Entry> naming(String id) {
        return byId.values().stream()
                .filter(entry ->
                        LinkList.of(entry).stream().anyMatch(link -> link.id().equals(id)))
                .toList();
    }

    /** Own files that were set aside, and remarks about those that were not. */
    public List<Problem> problems() {
        return problems;
    }

    /** SHA-256, hex, over path and content of all files read, shipped and own. */
    public String digest() {
        return digest;
    }

    /** The same entries with these of the shop's own added, or put in the place of those of their id. */
    public Catalogue with(Collection<? extends Entry> entries) {
        Map<String, Entry> all = new LinkedHashMap<>(byId);
        Set<String> owned = new HashSet<>(own);
        for (Entry entry : entries) {
            all.put(entry.id(), entry);
            owned.add(entry.id());
        }
        return new Catalogue(all.values(), owned, problems, digest);
    }

    /** The same entries with more problems told. */
    Catalogue telling(List<Problem> more) {
        List<Problem> all = new ArrayList<>(problems);
        all.addAll(more);
        return new Catalogue(byId.values(), own, all, digest);
    }

    /** Traits by id, in the order of looking a horn over. */
    public Map<String, Trait> traits() {
        return all(Trait.class);
    }

    /** Makes by id. */
    public Map<String, Make> makes() {
        return all(Make.class);
    }

    /** Sellers by id. */
    public Map<String, Seller> sellers() {
        return all(Seller.class);
    }

    /** Models by id. */
    public Map<String, Model> models() {
        return all(Model.class);
    }

    /** Quirks by id. */
    public Map<String, Quirk> quirks() {
        return all(Quirk.class);
    }

    /** Faults by id. */
    public Map<String, Fault> faults() {
        return all(Fault.class);
    }

    /** Operations by id. */
    public Map<String, Operation> operations() {
        return all(Operation.class);
    }

    /** Tasks by id. */
    public Map<String, Task> tasks() {
        return all(Task.class);
    }

    /** Stages by id, in the order of a job. */
    public Map<String, Stage> stages() {
        return all(Stage.class);
    }

    /** Cups by id, from the top of the tube down. */
    public Map<String, Cup> cups() {
        return all(Cup.class);
    }

    /** The kind of part, tool or supply of that id. */
    public Optional<Thing> thing(String id) {
        return entry(id).filter(Thing.class::isInstance).map(Thing.class::cast);
    }

    /** How pieces of a kind are asked for and worked, where its entry says so. */
    public Optional<Fitting> fitting(String id) {
        return entry(id).flatMap(entry -> switch (entry) {
            case Part part -> Optional.ofNullable(part.fit());
            case Supply supply -> Optional.ofNullable(supply.fit());
            default -> Optional.empty();
        });
    }
}
