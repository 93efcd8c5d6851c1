package hornbook.viewer.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Jobs: one subcommand a thing that is done to them. */
@Command(name = "job", header = "Takes in, clocks, notes and closes jobs.", footer = "hornbook job show j-0164")
final class JobCommand {
    private JobCommand() {}

    static CommandLine line(Frame frame) {
        return Verbs.of(
                new JobCommand(),
                new JobShow(frame),
                new JobList(frame),
                new JobTakeIn(frame),
                new JobPlan(frame),
                new JobStart(frame),
                new JobStop(frame),
                new JobTold(frame),
                new JobCount(frame),
                new JobFind(frame),
                new JobKey(frame),
                new JobPad(frame),
                new JobPart(frame),
                new JobConsent(frame),
                new JobPhoto(frame),
                new JobTimer(frame),
                new JobReady(frame),
                new JobWhere(frame),
                new JobTookDown(frame),
                new JobMet(frame),
                new JobAgree(frame),
                new JobClose(frame),
                new JobTeach(frame),
                new JobSheet(frame),
                new JobHandBack(frame),
                new JobFollowUp(frame));
    }
}
