package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.References.Reference;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Takes a deed back by restoring what its feed lines kept; a ledger line is answered by its opposite. */
final class Undo {
    /**
     * A later deed still stands unless it was undone, or is itself the undoing of one that came later than ours; those
     * two cancel out.
     */
    private static final String STANDS =
            " and e.undone_by is null and (e.undo_of is null or e.undo_of <= ?) order by e.number limit 1";

    private static final String DEEDS = "select e.number, e.title, e.day, e.undo_of, e.undone_by from deed e ";

    private final Query query;
    private final References references;
    private final Deed deed;
    private final LocalDate today;

    Undo(Query query, References references, Deed deed, LocalDate today) {
        this.query = query;
        this.references = references;
        this.deed = deed;
        this.today = today;
    }

    /** To undo an undoing is to do the first thing again. */
    static String title(Query query, Deed deed) {
        Deed first = deed;
        boolean takesBack = true;
        while (first.undoOf() != null) {
            first = Deeds.find(query, first.undoOf()).orElseThrow();
            takesBack = !takesBack;
        }
        return (takesBack ? "undo “" : "do again “") + first.title() + "”";
    }

    private record Line(String kind, String id, @Nullable String before) {}

    void into(Writing writing) {
        if (deed.undoneBy() != null) {
            throw new BadInput("“" + deed.title() + "” is undone already, by deed " + deed.undoneBy()
                    + ": undo that one to have it back");
        }
        List<Line> lines = query.rows(
                "select kind, id, before from feed where " + Deeds.LINES + "order by seq desc",
                r -> new Line(r.getString(1), r.getString(2), r.getString(3)),
                deed.number(),
                deed.number());
        lines.forEach(this::refuseIfBuiltUpon);
        lines.forEach(line -> takeBack(writing, line));
        undone(writing, deed, writing.deed());
    }

    private void refuseIfBuiltUpon(Line line) {
        refuse(later("select f.deed from feed f where f.kind = ? and f.id = ?", line.kind(), line.id()));
        if (line.before() == null && Kind.KEPT.stream().anyMatch(k -> k.name().equals(line.kind()))) {
            for (Reference naming : references.naming(Kind.named(line.kind()).table())) {
                String using =
                        "select f.deed from \"" + naming.table() + "\" r join feed f on f.kind = ? and f.id = r.id "
                                + "where r.\"" + naming.column() + "\" = ?"
                                + (naming.table().equals("movement") ? "" : " and r.retired = 0");
                refuse(later(using, naming.table().replace('_', '-'), line.id()));
            }
        }
    }

    private Optional<Deed> later(String deeds, String kind, String id) {
        return query.first(
                DEEDS + "where e.number > ? and e.number in (" + deeds + ")" + STANDS,
                Deeds::read,
                deed.number(),
                kind,
                id,
                deed.number());
    }

    private void refuse(Optional<Deed> later) {
        later.ifPresent(l -> {
            throw new BadInput("“" + deed.title() + "” cannot be undone: “" + l.title() + "” (deed " + l.number()
                    + ") came after it on the same record; undo that first");
        });
    }

    private void takeBack(Writing writing, Line line) {
        switch (line.kind()) {
            // A setting that was not there is set to nothing, which reads as not there.
            case "setting" -> writing.setting(line.id(), line.before() == null ? "null" : line.before());
            case "entry" -> writing.entry(line.id(), line.before());
            case "movement" -> opposite(writing, line.id());
            default -> restore(writing, Table.of(Kind.named(line.kind()).type()), line);
        }
    }

    private <T extends ShopRecord> void restore(Writing writing, Table<T> table, Line line) {
        Stored now = writing.stored(table, line.id());
        if (now == null) {
            throw new IllegalStateException("feed names " + line + ", which is not stored");
        }
        Stored back = line.before() == null ? new Stored(now.cells(), true, 0) : Stored.of(line.before());
        writing.replace(table, line.id(), now, back.cells(), back.retired());
    }

    private void opposite(Writing writing, String id) {
        Movement done = writing.find(Movement.class, id).orElseThrow();
        writing.put(new Movement(
                writing.nextId(Movement.class),
                today,
                done.lot(),
                MovementKind.CORRECTION,
                -done.qty(),
                done.job(),
                null,
                null,
                null,
                null,
                "takes back " + id));
    }

    /** A deed undone ends what it undid being undone, and so on down the chain. */
    private void undone(Writing writing, Deed back, long by) {
        writing.mark(back.number(), by);
        if (back.undoOf() != null) {
            doneAgain(writing, Deeds.find(query, back.undoOf()).orElseThrow());
        }
    }

    private void doneAgain(Writing writing, Deed again) {
        writing.mark(again.number(), null);
        if (again.undoOf() != null) {
            undone(writing, Deeds.find(query, again.undoOf()).orElseThrow(), again.number());
        }
    }
}
