package hornbook.viewer.cli;

import hornbook.catalogue.called.Called;
import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Task;
import hornbook.catalogue.estimate.EstimateQuestion.TaskCount;
import hornbook.shared.shop.BadInput;
import java.util.List;

/** Tasks as typed: {@code task-pad-fit:24}, {@code pads fitted:24}, or without a count for one. */
final class TaskNamed {
    private TaskNamed() {}

    static List<TaskCount> all(List<String> typed, Catalogue catalogue) {
        Called<Task> known = Called.tasks(catalogue);
        return typed.stream().map(text -> one(text, known)).toList();
    }

    private static TaskCount one(String typed, Called<Task> known) {
        int colon = typed.lastIndexOf(':');
        String task = colon < 0 ? typed : typed.substring(0, colon);
        try {
            int count =
                    colon < 0 ? 1 : Integer.parseInt(typed.substring(colon + 1).strip());
            return new TaskCount(known.find(task).id(), count);
        } catch (NumberFormatException e) {
            throw new BadInput("“" + typed + "” is not a task with a count: write it as task-pad-fit:24");
        }
    }
}
