package hornbook.viewer.cli;

import hornbook.catalogue.entry.MadeBy;
import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.catalogue.estimate.Price;
import hornbook.catalogue.estimate.Rates;
import hornbook.shared.job.JobCard;
import hornbook.shared.shop.BadInput;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.sheet.OwnerSheets;
import hornbook.viewer.workshop.Workshop;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;

/** From minutes to a price, and both on paper: options of estimate. */
final class QuoteOptions {
    @Option(names = "--job", paramLabel = "JOB", description = "The job it is for: its horn, complaint and consents.")
    @Nullable
    String job;

    @Option(names = "--quote", paramLabel = "FILE", description = "Print a quote sheet as a PDF.")
    @Nullable
    Path quote;

    @Option(names = "--paper", paramLabel = "a4|letter", defaultValue = "a4", description = "The sheet; else a4.")
    String paper = "";

    @Option(names = "--rate", paramLabel = "MONEY", description = "An hour; else the setting hourly_rate.")
    @Nullable
    BigDecimal rate;

    @Option(names = "--minimum", paramLabel = "MONEY", description = "The smallest charge; else minimum_charge.")
    @Nullable
    BigDecimal minimum;

    @Option(names = "--materials", paramLabel = "MONEY", defaultValue = "0", description = "Materials, as bought.")
    BigDecimal materials = BigDecimal.ZERO;

    @Option(
            names = "--handling",
            paramLabel = "SHARE",
            description = "Added to materials, as 0.15; else the setting materials_handling.")
    @Nullable
    BigDecimal handling;

    @Option(names = "--not", paramLabel = "WORDS", description = "What will not be done; may be given again.")
    List<String> notDone = List.of();

    @Option(names = "--with-owner", description = "Print the owner's code; never a name.")
    boolean withOwner;

    /** What is planned on the job, and these; a count given here goes before the planned one. */
    List<TaskCount> asked(Workshop workshop, List<TaskCount> named) {
        Map<String, TaskCount> all = new LinkedHashMap<>();
        card(workshop)
                .ifPresent(on -> on.planned().forEach(p -> all.put(p.task(), new TaskCount(p.task(), p.count()))));
        named.forEach(task -> all.put(task.task(), task));
        if (job != null && all.isEmpty()) {
            throw new BadInput("no work is planned on " + job + " yet: plan it with “hornbook job plan " + job
                    + " task-pad-fit:24”, or name it here with --task");
        }
        return List.copyOf(all.values());
    }

    /** The job's model, where a job was named whose horn is placed. */
    Optional<String> model(Workshop workshop) {
        return card(workshop).map(JobCard::model).filter(model -> !model.equals(MadeBy.UNLISTED));
    }

    /** The instrument of the job's horn, where a job was named. */
    Optional<String> instrument(Workshop workshop) {
        return card(workshop).map(JobCard::instrument);
    }

    Optional<Price> price(Workshop workshop, EstimateAnswer time) {
        return Rates.of(workshop.books(), rate, minimum, handling).map(rates -> Price.of(time, rates, materials));
    }

    /** Prints it where that was asked for. */
    Optional<Printed> print(Frame frame, Workshop workshop, EstimateAnswer time, @Nullable String model) {
        Path file = quote;
        if (file == null) {
            return Optional.empty();
        }
        return Optional.of(new OwnerSheets(workshop, PaperSize.named(paper))
                .quote(
                        card(workshop),
                        model,
                        time,
                        price(workshop, time).orElse(null),
                        notDone,
                        withOwner,
                        frame.around().here().resolve(file).normalize()));
    }

    private Optional<JobCard> card(Workshop workshop) {
        if (job == null) {
            return Optional.empty();
        }
        Optional<JobCard> card = workshop.jobs().job(job);
        if (card.isEmpty()) {
            throw new BadInput("there is no job " + job + ": look it up with “hornbook job list”");
        }
        return card;
    }
}
