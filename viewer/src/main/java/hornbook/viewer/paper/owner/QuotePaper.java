package hornbook.viewer.paper.owner;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Stage;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.Price;
import hornbook.viewer.paper.Grid;
import hornbook.viewer.paper.Pages;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.Spoken;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/** Prints a quote: what will be done and not, how long and how much, where work stops, what needs a yes. */
public final class QuotePaper {
    private static final List<Double> SHARES = List.of(0.62, 0.12, 0.13, 0.13);
    /** Fewer jobs make a guess (common practice). */
    private static final int ENOUGH_JOBS = 3;

    private final Catalogue catalogue;
    private final PaperSize paper;
    private final String shop;
    private final LocalDate day;

    public QuotePaper(Catalogue catalogue, PaperSize paper, String shop, LocalDate day) {
        this.catalogue = catalogue;
        this.paper = paper;
        this.shop = shop;
        this.day = day;
    }

    /** @throws hornbook.shared.shop.BadInput where the file cannot be written */
    public Printed print(Quote quote, Path file) {
        Form form = new Form()
                .title("Quote" + (quote.number().isEmpty() ? "" : " " + quote.number()))
                .say(shop + ", " + day)
                .named("Horn", quote.horn())
                .named("For", Objects.requireNonNullElse(quote.owner(), ""))
                .named("In the owner's words", quote.complaint());
        work(form, quote);
        price(form, quote);
        consent(form, quote);
        form.careful().signatures("Owner", "For " + shop);
        return new Pages(paper, "Quote, " + shop + ", " + day).print(List.of(form.pieces()), file);
    }

    private static void work(Form form, Quote quote) {
        form.heading("What will be done")
                .piece(Grid.head(List.of("", "how many", "usual", "up to"), SHARES, Form.POINTS));
        for (EstimateAnswer.Line line : quote.time().lines()) {
            form.piece(Grid.row(
                    List.of(
                            line.title(),
                            line.count() > 1 ? String.valueOf(line.count()) : "",
                            Spoken.minutes((int) line.p50Min()),
                            Spoken.minutes((int) line.p80Min())),
                    SHARES,
                    Form.POINTS));
        }
        form.heading("What will not be done").points(quote.notDone());
        if (quote.notDone().isEmpty()) {
            form.blanks(2);
        }
        if (!quote.mayCome().isEmpty()) {
            form.heading("What may come up and change price or consent").say(String.join("; ", quote.mayCome()) + ".");
        }
    }

    private static void price(Form form, Quote quote) {
        EstimateAnswer time = quote.time();
        form.heading("How long, how much")
                .say("Usually " + Spoken.minutes((int) time.p50Min()) + " of work, in four of five cases under "
                        + Spoken.minutes((int) time.p80Min()) + ". " + from(time.fromJobs()));
        time.remarks().forEach(form::say);
        Price price = quote.price();
        if (price == null) {
            form.say("Price, and the sum at which work stops:").blanks(2);
        } else {
            form.say("From " + price.usual().toPlainString() + " to "
                            + price.upTo().toPlainString() + materials(price)
                            + (price.minimum() ? " The smallest charge applies." : ""))
                    .strong("Work stops at " + price.stopLimit().toPlainString()
                            + ": the horn is then left safe and you are asked before anything more is done.");
        }
        form.named("Promised", quote.promised() == null ? "" : quote.promised() + ", if nothing new is found");
    }

    private static String materials(Price price) {
        return price.materials().signum() == 0
                ? ", materials not counted."
                : ", " + price.materials().toPlainString() + " of it materials.";
    }

    private static String from(EstimateAnswer.FromJobs jobs) {
        int near = Math.max(jobs.model(), jobs.make());
        return near < ENOUGH_JOBS
                ? "A guess from like horns: " + jobs.all() + " jobs, fewer than " + ENOUGH_JOBS + " of this make."
                : "From " + jobs.all() + " jobs, " + jobs.make() + " of this make and " + jobs.model()
                        + " of this model.";
    }

    private void consent(Form form, Quote quote) {
        form.heading("What cannot be undone or leaves a mark");
        if (!quote.agreed().isEmpty()) {
            form.say("Already agreed:").points(quote.agreed());
        }
        List<Stage> asks = quote.time().lines().stream()
                .map(line -> catalogue.tasks().get(line.task()))
                .filter(Objects::nonNull)
                .map(Task::stage)
                .distinct()
                .map(catalogue.stages()::get)
                .filter(Objects::nonNull)
                .filter(stage -> stage.marks() != null && stage.marks().contains("consent"))
                .sorted(Comparator.comparingInt(Stage::order))
                .toList();
        asks.forEach(stage -> form.boxes(List.of("yes", "no"), "  " + stage.title() + ": " + asked(stage)));
        form.boxes(List.of("yes", "no"), "  something else:").blanks(1);
        form.heading("Old parts").boxes(List.of("given back", "shown, then kept by the shop"), "");
        form.say("Original resonators, necks and screws stay with the horn.");
    }

    private static String asked(Stage stage) {
        return Objects.requireNonNullElse(stage.marks(), "")
                .replaceFirst("(?i)^after consent only: ", "")
                .toLowerCase(Locale.ROOT);
    }
}
