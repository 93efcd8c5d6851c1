package hornbook.indexer.fit;

import hornbook.catalogue.called.Called;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Fitting;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Thing;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads a question in a person's words against the entries. */
final class FitReader {
    private final Catalogue catalogue;
    private final SizeReader reader;
    private final Threads threads;
    private final Called<Thing> kinds;
    private final Called<Model> models;

    FitReader(Catalogue catalogue, SizeReader reader, Threads threads) {
        this.catalogue = catalogue;
        this.reader = reader;
        this.threads = threads;
        this.kinds = Called.stock(catalogue);
        this.models = Called.models(catalogue);
    }

    /**
     * @param onHand lots, which know what such pieces state
     * @throws BadInput naming what cannot be read, and the nearest that could
     */
    Asked read(FitQuestion question, OnHand onHand) {
        Thing kind = kinds.find(question.kind());
        Fitting fitting = catalogue.fitting(kind.id()).orElseGet(FitReader::nothing);
        Crafts crafts = new Crafts(catalogue, kind.id(), fitting);
        DimensionNames names = new DimensionNames(kind, fitting, onHand.names(crafts));
        WantReader wanted = new WantReader(kind, fitting, reader, threads, new BareInches(onHand, crafts));
        wanted.chief(question.diameter(), fitting.diameter(), "diameter");
        wanted.chief(question.length(), fitting.length(), "length");
        wanted.chief(question.bore(), fitting.bore(), "bore");
        question.thread().ifPresent(text -> wanted.named("thread", text));
        for (String pair : question.with()) {
            Map.Entry<String, String> with = pair("--with", pair);
            wanted.named(names.find(with.getKey()), with.getValue());
        }
        wanted.implied();
        Map<String, Value> own = own(question, names, wanted);
        count(question.count());
        if (wanted.wants.isEmpty()) {
            throw new BadInput("nothing is asked of it: give --diameter, --length, --thread or --with NAME=VALUE, of "
                    + String.join(", ", names.all()));
        }
        return new Asked(
                kind,
                crafts,
                wanted.wants,
                wanted.facts,
                own,
                question.model().map(models::find),
                question.reserve(),
                question.count(),
                shown(wanted));
    }

    private static Map<String, Value> own(FitQuestion question, DimensionNames names, WantReader reads) {
        Map<String, Value> own = new LinkedHashMap<>();
        for (String pair : question.own()) {
            Map.Entry<String, String> has = pair("--own", pair);
            String name = names.find(has.getKey());
            WantReader.once(own, name, reads.value(name, has.getValue()));
        }
        return own;
    }

    private static Map.Entry<String, String> pair(String option, String text) {
        int equals = text.indexOf('=');
        if (equals < 1 || equals == text.length() - 1) {
            throw new BadInput(option + " “" + text + "” is not written as name=value, as nose=headed-tapered");
        }
        return Map.entry(
                text.substring(0, equals).strip(), text.substring(equals + 1).strip());
    }

    private static void count(int count) {
        if (count < 1) {
            throw new BadInput("--count " + count + ": at least one piece is wanted");
        }
    }

    private static List<String> shown(WantReader wanted) {
        List<String> shown = new ArrayList<>();
        wanted.wants.forEach((name, want) -> shown.add(name + " " + want.shown()));
        wanted.facts.forEach((name, value) -> shown.add(name + " " + value.shown()));
        return shown;
    }

    /** A kind of which nothing is written but its name. */
    private static Fitting nothing() {
        return new Fitting(
                null, null, null, Map.of(), Map.of(), List.of(), Map.of(), Map.of(), Map.of(), List.of(), Map.of(),
                Map.of(), Map.of(), Map.of(), Map.of(), Map.of(), null, null, null);
    }
}
