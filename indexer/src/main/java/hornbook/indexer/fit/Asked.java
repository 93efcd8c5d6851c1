package hornbook.indexer.fit;

import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Thing;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A question understood.
 *
 * @param wants by dimension or derived size
 * @param facts what belongs to the horn
 * @param own the piece in hand; empty where there is none
 * @param shown what was understood, for people
 */
record Asked(
        Thing kind,
        Crafts crafts,
        Map<String, Want> wants,
        Map<String, Value> facts,
        Map<String, Value> own,
        Optional<Model> model,
        boolean reserve,
        int count,
        List<String> shown) {}
