package hornbook.viewer.year;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.estimate.HonestyAnswer;
import hornbook.shared.year.YearAnswer;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.year.YearPaper;
import hornbook.viewer.paper.year.YearSheet;
import java.nio.file.Path;
import java.util.function.Supplier;

/** A year on paper and as a table, written as the command does it. */
public record YearFiles(String shop, Supplier<Catalogue> catalogue) {
    /** A way to write it down; gives what to say then. */
    interface Way {
        String write(YearAnswer books, HonestyAnswer estimates, Path file);
    }

    String pdf(YearAnswer books, HonestyAnswer estimates, Path file) {
        YearPaper.Printed printed =
                new YearPaper(catalogue.get(), PaperSize.usual()).print(shop, books, estimates, file);
        return "Printed: " + printed.file() + ", " + printed.pages() + (printed.pages() == 1 ? " page." : " pages.");
    }

    String csv(YearAnswer books, HonestyAnswer estimates, Path file) {
        YearSheet.write(books, estimates, file);
        return "Written: " + file + ".";
    }

    /** What a thing or task is called. */
    String title(String id) {
        return catalogue.get().title(id);
    }
}
