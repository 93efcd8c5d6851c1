package hornbook.viewer.paper.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.Entry;
import hornbook.indexer.brief.BriefAnswer;
import hornbook.indexer.brief.MayNot;
import hornbook.indexer.brief.PastJob;
import hornbook.indexer.brief.QuirkLine;
import hornbook.indexer.brief.ThreadLine;
import hornbook.viewer.paper.Headline;
import hornbook.viewer.paper.Item;
import hornbook.viewer.paper.Item.Mark;
import hornbook.viewer.paper.Piece;
import hornbook.viewer.paper.Prose;
import hornbook.viewer.paper.Spoken;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** A brief as pieces of a page, in the order it is read: stops, stages, what to fetch, and the rest. */
final class BriefPieces {
    private final Catalogue catalogue;
    private final BriefDetail detail;
    private final QuirkItems quirks;
    private final List<Piece> pieces = new ArrayList<>();

    BriefPieces(Catalogue catalogue, BriefDetail detail) {
        this.catalogue = catalogue;
        this.detail = detail;
        this.quirks = new QuirkItems(catalogue, detail);
    }

    List<Piece> of(BriefAnswer brief) {
        pieces.clear();
        quirks(brief.quirks());
        new FetchItems(detail).of(brief.fetch()).forEach(this::add);
        threads(brief.threads());
        takingDown(brief);
        new KeyRows(catalogue, detail).of(brief).forEach(this::add);
        jobs(brief.jobs());
        mayNot(brief.mayNot());
        new CautionItems(catalogue, detail).of(brief.cautions()).forEach(this::add);
        return List.copyOf(pieces);
    }

    /** What this step leaves out of that brief, in words. */
    List<String> leftOut(BriefAnswer brief) {
        List<String> out = new ArrayList<>();
        int handling = new CautionItems(catalogue, detail).leftOut(brief.cautions());
        if (handling > 0) {
            out.add("how to handle " + handling + " tools and supplies");
        }
        if (!detail.keyByKey() && !brief.map().isEmpty()) {
            out.add("rods and springs key by key");
        }
        if (brief.jobs().size() > detail.jobs()) {
            out.add("jobs before these " + detail.jobs());
        }
        if (!detail.bites()) {
            out.add("what possible quirks do");
        }
        if (!detail.fetchNotes()) {
            out.add("notes on what to fetch");
        }
        return out;
    }

    private void add(Piece piece) {
        pieces.add(piece);
    }

    private void head(String text) {
        add(new Headline(text, detail.points() + 2));
    }

    private void item(Prose prose, Mark mark) {
        add(Item.of(prose, mark, detail.points()));
    }

    private void quirks(List<QuirkLine> all) {
        Map<String, List<QuirkLine>> byStage = new LinkedHashMap<>();
        List<QuirkLine> stops = new ArrayList<>();
        all.forEach(quirk -> (quirk.caution() == CautionLevel.STOP
                        ? stops
                        : byStage.computeIfAbsent(quirk.stage(), _ -> new ArrayList<>()))
                .add(quirk));
        if (!stops.isEmpty()) {
            head("STOP: these ruin the horn or hurt somebody");
            stops.forEach(quirk -> add(quirks.stop(quirk)));
        }
        if (!byStage.isEmpty() && !detail.stageHeadlines()) {
            head("Stage by stage");
        }
        byStage.forEach((stage, there) -> {
            if (detail.stageHeadlines()) {
                head(title(stage));
            }
            if (detail.possibleInFull()) {
                there.forEach(quirk -> add(quirks.other(quirk)));
            } else {
                add(quirks.running(there));
            }
        });
    }

    private void threads(List<ThreadLine> threads) {
        if (threads.isEmpty()) {
            return;
        }
        head("Threads to expect");
        for (ThreadLine thread : threads) {
            item(
                    new Prose()
                            .plain(thread.use().replace('-', ' ') + ":")
                            .bold(thread.designation())
                            .plain("(" + Spoken.inHundred(thread.probability()) + ").")
                            .plain(wrong(thread)),
                    Mark.POINT);
        }
    }

    private static String wrong(ThreadLine thread) {
        return thread.lookAlikes().isEmpty()
                ? ""
                : "Not in it: "
                        + thread.lookAlikes().stream()
                                .map(alike -> alike.screw() + " ("
                                        + alike.bindsAfterTurns()
                                                .map(turns -> "binds after "
                                                        + turns.toString().replace(".0", "") + " turns")
                                                .orElse("runs home, feels only loose or tight")
                                        + ")")
                                .collect(Collectors.joining(", "))
                        + ".";
    }

    private void takingDown(BriefAnswer brief) {
        if (brief.takingDown().isEmpty()) {
            return;
        }
        String of = brief.takingDownOf();
        head("Taking down" + (of == null ? "" : ", as it went on " + title(of)));
        brief.takingDown()
                .forEach(step -> item(
                        new Prose()
                                .tick()
                                .bold(step.step() + ". " + step.piece() + ":")
                                .plain(step.how())
                                .plain(step.reason() == null ? "" : "(" + step.reason() + ")"),
                        Mark.NONE));
    }

    private void jobs(List<PastJob> jobs) {
        if (jobs.isEmpty()) {
            return;
        }
        head("How the last ones went");
        jobs.stream().limit(detail.jobs()).forEach(job -> item(PastItems.of(job, title(job.model())), Mark.POINT));
    }

    private void mayNot(List<MayNot> forbidden) {
        if (forbidden.isEmpty()) {
            return;
        }
        head("May not be used on it");
        Map<String, Prose> running = new LinkedHashMap<>();
        for (MayNot not : forbidden) {
            String on = (not.possible() ? "if " : "on ") + value(not.on());
            if (detail.airy()) {
                item(words(new Prose(), not, " " + on), Mark.POINT);
            } else {
                words(
                        running.computeIfAbsent(on, key -> new Prose().bold(key.toUpperCase(Locale.ROOT) + ":")),
                        not,
                        "");
            }
        }
        running.values().forEach(prose -> item(prose, Mark.POINT));
    }

    private static Prose words(Prose prose, MayNot not, String on) {
        return prose.bold(readable(not.title()) + on + ":")
                .plain(not.why() + (not.instead() == null ? "." : "; instead: " + not.instead() + "."));
    }

    private static String readable(String title) {
        return title.startsWith("process-")
                ? title.substring("process-".length()).replace('-', ' ')
                : title;
    }

    private static String value(String traitAndValue) {
        return traitAndValue.substring(traitAndValue.indexOf('=') + 1).replace('-', ' ');
    }

    private String title(String id) {
        return catalogue.entry(id).map(Entry::title).orElse(id);
    }
}
