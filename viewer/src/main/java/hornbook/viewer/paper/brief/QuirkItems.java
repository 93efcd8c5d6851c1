package hornbook.viewer.paper.brief;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.CautionLevel;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.picture.Picture;
import hornbook.catalogue.picture.Pictures;
import hornbook.indexer.brief.QuirkLine;
import hornbook.viewer.paper.Item;
import hornbook.viewer.paper.Item.Mark;
import hornbook.viewer.paper.Prose;
import hornbook.viewer.paper.Spoken;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Quirks as they are printed: a stop with its bar and the drawing of the look that settles it, others shorter. */
final class QuirkItems {
    private final Pictures pictures = new Pictures();
    private final Catalogue catalogue;
    private final BriefDetail detail;
    private final Set<String> drawn = new HashSet<>();

    QuirkItems(Catalogue catalogue, BriefDetail detail) {
        this.catalogue = catalogue;
        this.detail = detail;
    }

    Item stop(QuirkLine quirk) {
        Prose prose = new Prose()
                .bold("STOP " + quirk.title() + ".")
                .plain(stage(quirk) + ". " + chance(quirk))
                .plain(quirk.bites())
                .bold("Do:")
                .plain(quirk.whatToDo());
        look(prose, quirk);
        return new Item(prose, quirk.possible() ? Mark.STOP_POSSIBLE : Mark.STOP, detail.points(), drawing(quirk));
    }

    /** Where to look; the same look is drawn once. */
    private @Nullable Picture drawing(QuirkLine quirk) {
        return settling(quirk)
                .filter(trait -> detail.drawings() && drawn.add(trait.id()))
                .flatMap(trait -> pictures.look(trait.id()))
                .orElse(null);
    }

    /** One that is no stop. */
    Item other(QuirkLine quirk) {
        return Item.of(
                words(new Prose().plain(detail.stageHeadlines() ? "" : stage(quirk) + "."), quirk),
                Mark.POINT,
                detail.points());
    }

    /** Those of one stage in running text, each with its box. */
    Item running(List<QuirkLine> stage) {
        Prose prose = new Prose().plain(stage(stage.getFirst()) + ":");
        stage.forEach(quirk -> words(prose, quirk));
        return Item.of(prose, Mark.POINT, detail.points());
    }

    private Prose words(Prose prose, QuirkLine quirk) {
        String mark = quirk.caution() == CautionLevel.CARE ? "Care: " : "";
        prose.bold(mark + quirk.title() + ".").plain(chance(quirk));
        if (!quirk.possible() || detail.bites()) {
            prose.plain(quirk.bites());
        }
        if (!quirk.possible() || detail.possibleInFull()) {
            prose.bold("Do:").plain(quirk.whatToDo());
        }
        look(prose, quirk);
        return prose;
    }

    private static String chance(QuirkLine quirk) {
        String met = quirk.metOn() == null ? "" : "Met on this horn (" + quirk.metOn() + ").";
        return quirk.possible() ? "Possible, " + Spoken.inHundred(quirk.relevance()) + ". " + met : met;
    }

    /** In short: what stands before the colon of a longer title. */
    private String stage(QuirkLine quirk) {
        return catalogue
                .entry(quirk.stage())
                .map(Entry::title)
                .orElse(quirk.stage())
                .replaceFirst(":.*", "");
    }

    /** How to know, where it is only possible. */
    private void look(Prose prose, QuirkLine quirk) {
        if (!quirk.possible()) {
            return;
        }
        settling(quirk)
                .ifPresentOrElse(
                        trait -> prose.tick()
                                .plain("Look: " + trait.title() + ".")
                                .plain(looking(quirk, trait)),
                        () -> prose.tick().plain("To be sure:").plain(quirk.confirm()));
    }

    private static String looking(QuirkLine quirk, Trait trait) {
        return quirk.caution() == CautionLevel.STOP ? trait.look() : "";
    }

    private Optional<Trait> settling(QuirkLine quirk) {
        @Nullable String trait = quirk.settledBy();
        return trait == null
                ? Optional.empty()
                : Optional.ofNullable(catalogue.traits().get(trait));
    }
}
