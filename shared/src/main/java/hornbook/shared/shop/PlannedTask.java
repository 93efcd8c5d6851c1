package hornbook.shared.shop;

/** Work planned on a job: what an estimate begins from. What was done is a {@link TaskTime}. */
public record PlannedTask(String id, String job, String task, int count) implements ShopRecord {
    /** @throws BadInput for fewer than one */
    public PlannedTask {
        if (count < 1) {
            throw new BadInput(count + " of " + task + " cannot be planned: name one or more");
        }
    }
}
