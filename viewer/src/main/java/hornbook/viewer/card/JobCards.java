package hornbook.viewer.card;

import hornbook.shared.job.HornCard;
import hornbook.shared.job.JobCard;
import hornbook.shared.job.Jobs;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Cards of jobs and horns: how it went, and what there was to find. */
final class JobCards {
    private final Jobs jobs;
    private final UnaryOperator<String> titles;

    /** @param titles what a person calls an entry */
    JobCards(Jobs jobs, UnaryOperator<String> titles) {
        this.titles = titles;
        this.jobs = jobs;
    }

    Optional<Card> job(String id) {
        return jobs.job(id).map(this::card);
    }

    private Card card(JobCard job) {
        String went = job.went() == null ? job.status() : "went " + job.went();
        Blocks blocks = new Blocks()
                .text("How it went", went + (job.wentNote().isBlank() ? "" : ": " + job.wentNote()))
                .text("Complaint", job.complaint())
                .text("Took in", dates(job))
                .text("Time", time(job))
                .links("Horn", List.of(new Block.Link("horn", job.horn(), horn(job), job.serial())))
                .links("Quirks met", links("quirk", job.quirksMet()))
                .text(
                        "Tasks",
                        lines(job.tasks().stream()
                                .map(t -> t.minutes() + " min  " + titles.apply(t.task()) + times(t.count()))))
                .text("Findings", lines(job.findings().stream().map(this::finding)))
                .links(
                        "Parts that went in",
                        job.parts().stream()
                                .map(p -> new Block.Link("lot", p.lot(), p.title(), p.qty() + " for " + p.whatFor()))
                                .toList())
                .text("Pads", lines(job.pads().stream().map(p -> titles.apply(p.cup()) + "  " + p.sizeMm() + " mm")))
                .text("", job.note());
        return new Card("job", job.id(), horn(job) + ", " + job.kind(), blocks.list());
    }

    private String horn(JobCard job) {
        String sold = job.soldAs() == null || job.soldAs().isBlank() ? "" : " sold as " + job.soldAs();
        return titles.apply(job.model()) + sold;
    }

    private static String dates(JobCard job) {
        return job.tookIn()
                + (job.promised() == null ? "" : ", promised " + job.promised())
                + (job.done() == null ? "" : ", done " + job.done());
    }

    private static String time(JobCard job) {
        String quoted = job.quotedMin() == null ? "" : " of " + job.quotedMin() + " quoted";
        return job.minutes() == 0 ? "" : job.minutes() + " minutes" + quoted;
    }

    private static String times(int count) {
        return count > 1 ? " \u00d7 " + count : "";
    }

    private String finding(JobCard.FindingLine f) {
        return Stream.of(titles.apply(f.what()), f.where(), f.value(), f.unit(), f.asFoundOrLeft(), f.note())
                .filter(part -> !part.isBlank())
                .collect(Collectors.joining("  "));
    }

    private static String lines(Stream<String> lines) {
        return lines.collect(Collectors.joining("\n"));
    }

    Optional<Card> horn(String id) {
        return jobs.horn(id).map(this::card);
    }

    private Card card(HornCard horn) {
        Blocks blocks = new Blocks()
                .links("Model", links("model", List.of(horn.model())))
                .text("Serial", horn.serial())
                .text("Sold as", horn.soldAs())
                .text("Year", horn.yearAbout() == null ? "" : "about " + horn.yearAbout())
                .text("Identified by", horn.identifiedBy() + ", " + horn.sureness())
                .text("", horn.note())
                .links("Its jobs", horn.jobs().stream().map(JobCards::past).toList());
        return new Card("horn", horn.id(), titles.apply(horn.model()) + " " + horn.serial(), blocks.list());
    }

    private static Block.Link past(HornCard.PastJob job) {
        String went = job.went() == null ? job.status() : "went " + job.went();
        return new Block.Link("job", job.id(), job.tookIn() + " " + job.kind() + ", " + went, job.complaint());
    }

    private List<Block.Link> links(String kind, List<String> ids) {
        return ids.stream()
                .filter(id -> !id.isBlank())
                .map(id -> new Block.Link(kind, id, titles.apply(id), ""))
                .toList();
    }
}
