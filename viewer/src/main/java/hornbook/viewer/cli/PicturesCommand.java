package hornbook.viewer.cli;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.shop.Counted;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.plate.ContactSheet;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Prints all drawings. Needs no shop: what is drawn is shipped. */
@Command(
        name = "pictures",
        header = "Prints every drawing of what to look at on a horn, with its words, as a PDF.",
        footer = "hornbook pictures --pdf pictures.pdf")
final class PicturesCommand implements Callable<Integer> {
    @Option(names = "--pdf", paramLabel = "FILE", required = true, description = "The file to write.")
    Path pdf = Path.of("");

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4", description = "The sheet; else a4.")
    String paper = "";

    private final Frame frame;

    PicturesCommand(Frame frame) {
        this.frame = frame;
    }

    @Override
    public Integer call() {
        ContactSheet.Printed printed = new ContactSheet(Catalogue.shipped(), PaperSize.named(paper))
                .print(frame.around().here().resolve(pdf).normalize());
        return frame.answer(
                printed,
                out -> out.println(
                        printed.file() + "  " + Counted.of(printed.pictures().size(), "drawing") + " on "
                                + Counted.of(printed.pages(), "page")));
    }
}
