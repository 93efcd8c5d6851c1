package hornbook.shared.store;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Kind;
import hornbook.shared.shop.Movement;
import hornbook.shared.shop.MovementKind;
import hornbook.shared.shop.ShopRecord;
import hornbook.shared.store.Writing.Stored;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Takes a deed back by restoring what its feed lines kept; a ledger line is answered by its opposite. */
final class Undo {
    private final Query query;
    private final Deed deed;

    Undo(Query query, Deed deed) {
        this.query = query;
        this.deed = deed;
    }

    private record Line(String kind, String id, @Nullable String before) {}

    void into(Writing writing, LocalDate today) {
        refuseIfBuiltUpon();
        List<Line> lines = query.rows(
                "select kind, id, before from feed where deed = ? order by seq desc",
                r -> new Line(r.getString(1), r.getString(2), r.getString(3)),
                deed.number());
        for (Line line : lines) {
            switch (line.kind()) {
                case "setting" -> setting(writing, line);
                case "entry" -> writing.entry(line.id(), line.before());
                case "movement" -> opposite(writing, line.id(), today);
                default -> restore(writing, Table.of(Kind.named(line.kind()).type()), line);
            }
        }
    }

    private void refuseIfBuiltUpon() {
        List<Deed> later = query.rows(
                "select d.number, d.title, d.day, d.undo_of, d.undone_by from deed d where d.number = ("
                        + "select min(f.deed) from feed f join feed mine on mine.kind = f.kind and mine.id = f.id "
                        + "join deed e on e.number = f.deed where mine.deed = ? and f.deed > ? "
                        + "and e.undone_by is null and e.undo_of is null)",
                Deeds::read,
                deed.number(),
                deed.number());
        if (!later.isEmpty()) {
            throw new BadInput("“" + deed.title() + "” cannot be undone: “"
                    + later.getFirst().title() + "” (deed " + later.getFirst().number()
                    + ") came after it on the same record; undo that first");
        }
    }

    /** A setting that was not there is set to nothing, which reads as not there. */
    private static void setting(Writing writing, Line line) {
        writing.setting(line.id(), line.before() == null ? "null" : line.before());
    }

    private <T extends ShopRecord> void restore(Writing writing, Table<T> table, Line line) {
        Stored now = writing.stored(table, line.id());
        if (now == null) {
            throw new IllegalStateException("feed names " + line + ", which is not stored");
        }
        Stored back = line.before() == null ? new Stored(now.cells(), true) : Stored.of(line.before());
        writing.store(table, line.id(), back.cells(), back.retired());
        writing.note(line.kind(), line.id(), now.json());
    }

    private static void opposite(Writing writing, String id, LocalDate today) {
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
}
