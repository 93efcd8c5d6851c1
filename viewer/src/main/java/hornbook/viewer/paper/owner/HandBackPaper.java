package hornbook.viewer.paper.owner;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.JobCard.FindingLine;
import hornbook.viewer.paper.Pages;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.paper.Spoken;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Prints what goes back with a horn: what was done and not, what went in, marks agreed, old parts, settling in. */
public final class HandBackPaper {
    private static final Pattern CUP = Pattern.compile("cup-[a-z0-9-]+");

    private final Catalogue catalogue;
    private final PaperSize paper;
    private final String shop;
    private final LocalDate day;

    public HandBackPaper(Catalogue catalogue, PaperSize paper, String shop, LocalDate day) {
        this.catalogue = catalogue;
        this.paper = paper;
        this.shop = shop;
        this.day = day;
    }

    /** @throws hornbook.shared.shop.BadInput where the file cannot be written */
    public Printed print(JobCard job, HandBack told, Path file) {
        Form form = new Form()
                .title("Handed back: " + job.id())
                .say(shop + ", " + Objects.requireNonNullElse(job.done(), day))
                .named("Horn", job.horn() + ", " + title(job.model()))
                .named("For", Objects.requireNonNullElse(told.owner(), ""))
                .named("In the owner's words", job.complaint());
        done(form, job, told);
        left(form, job);
        agreed(form, job, told);
        settling(form);
        form.careful().signatures("Received", "For " + shop);
        return new Pages(paper, "Hand-back, " + shop + ", " + day).print(List.of(form.pieces()), file);
    }

    private void done(Form form, JobCard job, HandBack told) {
        form.heading("What was done")
                .points(job.tasks().stream()
                        .map(task -> title(task.task()) + (task.count() > 1 ? " × " + task.count() : ""))
                        .distinct()
                        .toList());
        form.say("Worked: " + Spoken.minutes(job.minutes())
                + (job.quotedMin() == null ? "." : ", quoted " + Spoken.minutes(job.quotedMin()) + "."));
        if (told.billed() != null) {
            form.strong("To pay: " + told.billed().toPlainString());
        }
        form.heading("What was not done").points(told.notDone());
        if (told.notDone().isEmpty()) {
            form.blanks(1);
        }
        if (!job.parts().isEmpty() || !job.pads().isEmpty()) {
            form.heading("What went in");
            form.points(job.parts().stream()
                    .map(part -> part.qty() + " " + part.title()
                            + (part.whatFor().isBlank() ? "" : ", " + named(part.whatFor())))
                    .toList());
            form.named("Pads, mm", pads(job));
        }
    }

    private String pads(JobCard job) {
        return job.pads().stream()
                .map(pad -> title(pad.cup()) + " " + pad.sizeMm().toPlainString())
                .collect(Collectors.joining("; "));
    }

    /** Numbers as found beside numbers as left: the best thing the next repairer can have. */
    private void left(Form form, JobCard job) {
        Map<String, String> readings = new LinkedHashMap<>();
        for (FindingLine line : job.findings()) {
            if (!line.unit().isBlank()) {
                String what = title(line.what()) + (line.where().isBlank() ? "" : ", " + title(line.where()));
                readings.merge(
                        what,
                        line.value() + " " + line.unit() + " as " + line.asFoundOrLeft(),
                        (before, now) -> before + ", " + now);
            }
        }
        if (!readings.isEmpty()) {
            form.heading("Measured");
            readings.forEach(form::named);
        }
    }

    private static void agreed(Form form, JobCard job, HandBack told) {
        form.heading("Marks and changes agreed");
        form.points(job.consents().stream()
                .map(yes -> yes.what() + ", agreed " + yes.day())
                .toList());
        if (job.consents().isEmpty()) {
            form.say("None written down.");
        }
        form.heading("Faults known and left").points(told.faultsLeft());
        if (told.faultsLeft().isEmpty()) {
            form.blanks(1);
        }
        form.heading("Old parts").boxes(List.of("given back", "shown, then kept by the shop", "there were none"), "");
    }

    private static void settling(Form form) {
        form.heading("Settling in")
                .say(
                        "New pads, corks and felts settle. Please come by once, four to eight weeks from now: that visit is"
                                + " in the price. Keep the horn dry, and let nothing press on its keys in the case.")
                .say("Adjustment for settling is free of charge until:")
                .blanks(1)
                .say("That does not cover knocks, damp storage or other hands.");
    }

    /** Words in which ids may stand. */
    private String named(String words) {
        return CUP.matcher(words).replaceAll(cup -> Matcher.quoteReplacement(title(cup.group())));
    }

    private String title(String id) {
        return catalogue.entry(id).map(Entry::title).orElse(id);
    }
}
