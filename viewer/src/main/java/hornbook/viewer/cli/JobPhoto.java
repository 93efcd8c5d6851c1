package hornbook.viewer.cli;

import hornbook.shared.job.JobCard;
import hornbook.shared.photo.Photos;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** A picture is kept. */
@Command(
        name = "photo",
        header = "Keeps a photo of the job, without what the camera wrote of place and time.",
        footer = "hornbook job photo j-0237 bench.png --word \"sleeve, torn slots\"")
final class JobPhoto extends OnJob {
    @Parameters(index = "1", paramLabel = "FILE", description = "JPEG or PNG.")
    Path file = Path.of("");

    @Option(names = "--word", paramLabel = "WORDS", description = "What to see on it.")
    String word = "";

    @Option(names = "--on", paramLabel = "DATE", converter = Day.class, description = "The day it was taken.")
    @Nullable
    LocalDate day;

    JobPhoto(Frame frame) {
        super(frame);
    }

    @Override
    Deed done(Workshop workshop) {
        JobCard on = workshop.jobs()
                .job(job)
                .orElseThrow(() -> new BadInput("there is no job " + job + ": look it up with “hornbook find”"));
        workshop.photos().add(frame.around().here().resolve(file), new Photos.About(job, on.horn(), day, word));
        return workshop.books().deeds(1).getFirst();
    }
}
