package hornbook.viewer.card;

import hornbook.catalogue.entry.Caution;
import hornbook.catalogue.entry.Meaning;
import hornbook.catalogue.entry.Part;
import hornbook.catalogue.entry.Supply;
import hornbook.catalogue.entry.Tool;
import hornbook.catalogue.entry.UseOn;
import hornbook.catalogue.entry.Verdict;
import hornbook.catalogue.entry.Word;
import java.util.stream.Collectors;

/** What knowledge of things says: parts, supplies, tools, cautions, words. */
final class ThingFacts {
    private static final String DEFER =
            "Follow the safety data sheet, the local code and, where it is asked for, a licensed hand.";

    private final Blocks blocks;
    private final Titles titles;

    ThingFacts(Blocks blocks, Titles titles) {
        this.blocks = blocks;
        this.titles = titles;
    }

    void of(Part part) {
        blocks.text("Also called", part.otherNames())
                .text("Must match", part.mustMatch())
                .text("May be worked", part.mayBeWorked())
                .text("Sizes that matter", part.dimensions())
                .text("Usual range", part.typicalRange())
                .text("Material", part.material())
                .text("Worth saving", part.salvageValue())
                .text("", part.notes());
    }

    void of(Supply supply) {
        caution(supply.caution());
        blocks.text("Also called", supply.otherNames())
                .text("Sizes", supply.sizes())
                .text("Usual pack", supply.typicalPack())
                .text("Used for a job", supply.usedPerJob())
                .text("Keeps for", supply.shelfLifeMonths() == null ? "" : supply.shelfLifeMonths() + " months")
                .text("Storage", supply.storage())
                .links("Hazards", titles.links(supply.hazards()));
    }

    void of(Tool tool) {
        blocks.heed(tool.caution(), false)
                .text("Also called", tool.otherNames())
                .links("Serves", titles.links(tool.serves()))
                .text("Look", tool.look());
    }

    void of(Caution caution) {
        blocks.heed(caution.text(), true)
                .text("Signal word", caution.signalWord())
                .links("Statements", titles.links(caution.statements()))
                .text("", DEFER);
    }

    void of(UseOn use) {
        if (use.verdict() == Verdict.OK) {
            blocks.text("May be used", use.why());
        } else {
            blocks.heed(use.why(), use.verdict() == Verdict.STOP);
        }
        blocks.text("Instead", use.instead()).links("Use", titles.links(java.util.List.of(use.use())));
    }

    void of(Word word) {
        blocks.text("Means", word.meanings().stream().map(this::meaning).collect(Collectors.joining("\n")));
    }

    private String meaning(Meaning meaning) {
        return titles.of(meaning.same()) + (meaning.note() == null ? "" : " (" + meaning.note() + ")");
    }

    private void caution(@org.jspecify.annotations.Nullable String words) {
        if (words != null && !words.isBlank()) {
            blocks.heed(words, false).text("", DEFER);
        }
    }
}
