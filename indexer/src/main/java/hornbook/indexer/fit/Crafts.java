package hornbook.indexer.fit;

import hornbook.catalogue.entry.Blank;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Fitting;
import hornbook.catalogue.entry.Operation;
import hornbook.catalogue.entry.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads the entries of operations and of one kind into what may be done with each thing it can be made from. */
final class Crafts {
    /** An operation that changes all of a piece makes a new one. */
    private static final String ANEW = "all";

    private final Catalogue catalogue;
    private final String kind;
    private final Fitting fitting;
    private final Map<String, Craft> byItem = new HashMap<>();

    Crafts(Catalogue catalogue, String kind, Fitting fitting) {
        this.catalogue = catalogue;
        this.kind = kind;
        this.fitting = fitting;
    }

    /** Whether a thing is of the kind, or can be made into it. */
    boolean suits(String item) {
        return item.equals(kind) || fitting.blanks().containsKey(item);
    }

    Craft of(String item) {
        return byItem.computeIfAbsent(item, this::read);
    }

    private Craft read(String item) {
        Blank blank = fitting.blanks().getOrDefault(item, new Blank(List.of(), Map.of(), Map.of()));
        Map<String, Formula> zones = formulas(with(fitting.zones(), blank.zones()));
        List<Move> moves = new ArrayList<>();
        List<Move> through = new ArrayList<>();
        for (Operation operation : catalogue.operations().values()) {
            if (blank.through().contains(operation.id())) {
                through.add(move(operation, operation.changes(), 0, zones));
            } else if (!fitting.never().contains(operation.id()) && applies(operation, item)) {
                moves.addAll(moves(operation, zones));
            }
        }
        moves.sort(Comparator.comparingInt(Move::order));
        return new Craft(
                fitting,
                moves,
                through,
                with(fitting.usual(), blank.usual()),
                with(fitting.usualBlank(), blank.usual()),
                formulas(fitting.names()),
                zones,
                fitting.ends());
    }

    /** What is made anew is made of stock: a piece of the kind is not turned into itself. */
    private boolean applies(Operation operation, String item) {
        if (operation.changes().equals(ANEW) && item.equals(kind)) {
            return false;
        }
        return operation.appliesTo().contains(item) || operation.appliesTo().contains(kind);
    }

    private List<Move> moves(Operation operation, Map<String, Formula> zones) {
        String works = fitting.works().get(operation.changes());
        List<Move> moves = new ArrayList<>();
        if (works != null) {
            List<String> dimensions = Bars.apart(works);
            for (int i = 0; i < dimensions.size(); i++) {
                moves.add(move(operation, dimensions.get(i), i, zones));
            }
        }
        return moves;
    }

    /** A zone within a dimension is worked after the whole of it. */
    private static Move move(Operation operation, String dimension, int after, Map<String, Formula> zones) {
        Working working = operation.working() == null ? Working.PLAIN : operation.working();
        Formula units = FormulaReader.formula(operation.units());
        return new Move(
                operation,
                working,
                dimension,
                working.order() + 10 * after,
                FormulaReader.check(operation.check()),
                Optional.ofNullable(working.whenKnown()).map(FormulaReader::check),
                units,
                formulas(working.names()),
                Optional.ofNullable(
                        working.zone() == null ? zones.get(dimension) : FormulaReader.formula(working.zone())));
    }

    private static Map<String, Formula> formulas(Map<String, String> texts) {
        Map<String, Formula> formulas = new LinkedHashMap<>();
        texts.forEach((name, text) -> formulas.put(name, FormulaReader.formula(text)));
        return formulas;
    }

    private static Map<String, String> with(Map<String, String> general, Map<String, String> own) {
        Map<String, String> all = new LinkedHashMap<>(general);
        all.putAll(own);
        return all;
    }
}
