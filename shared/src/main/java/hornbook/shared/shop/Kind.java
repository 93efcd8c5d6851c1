package hornbook.shared.shop;

import java.util.List;
import java.util.stream.Stream;

/**
 * A kind of record: its name, the file it is exchanged in, and its columns, which are the record's components.
 *
 * @param name one word, as {@code find} names it
 * @param idPrefix how ids of this kind begin, empty where the id is made of other columns
 * @param key the columns that name a record
 * @param always is the file written even when there is nothing in it
 */
public record Kind<T extends ShopRecord>(
        String name,
        Class<T> type,
        String file,
        String idPrefix,
        List<String> key,
        boolean always,
        Columns<T> columns) {

    /** Every kind, in the order in which one can refer to another. */
    public static final List<Kind<? extends ShopRecord>> ALL = List.of(
            of("cabinet", Cabinet.class, "cabinets.csv", "c-"),
            of("drawer", Drawer.class, "drawers.csv", "d-"),
            of("place", Place.class, "places.csv", "pl-"),
            of("supplier", Supplier.class, "suppliers.csv", "sup-v-"),
            of("horn", Horn.class, "horns.csv", "h-"),
            of("job", Job.class, "jobs.csv", "j-"),
            of("lot", Lot.class, "lots.csv", "lot-"),
            of("tool", ShopTool.class, "shop_tools.csv", "tool-"),
            of("member", ToolMember.class, "tool_members.csv", "", "set", "kind", "member"),
            of("order", OpenOrder.class, "orders_open.csv", "o-", "order_ref"),
            of("movement", Movement.class, "movements.csv", "v-"),
            of("task-time", TaskTime.class, "job_tasks.csv", "t-"),
            of("finding", Finding.class, "findings.csv", "f-"),
            of("part-used", PartUsed.class, "parts_used.csv", "u-"),
            of("pad-used", PadUsed.class, "pads_used.csv", "p-"),
            of("trial-horn", TrialHorn.class, "horns_to_identify.csv", "x-"),
            more("clock", RunningClock.class, "clocks_running.csv", "clock-"),
            more("consent", Consent.class, "consents.csv", "yes-"),
            more("timer", Timer.class, "timers.csv", "timer-"),
            more("whereabouts", Whereabouts.class, "whereabouts.csv", "at-"),
            more("map-row", MapRow.class, "horn_maps.csv", "map-"),
            more("taken-down", TakenDown.class, "taken_down.csv", "down-"),
            more("photo", Photo.class, "photos.csv", "ph-"),
            more("planned-task", PlannedTask.class, "planned_tasks.csv", "plan-"));

    /** Customers: kept, and exchanged only where that is asked for. */
    public static final Kind<Contact> CONTACT = new Kind<>(
            "contact", Contact.class, "contacts.csv", "", List.of("owner"), false, Columns.of(Contact.class));

    /** Every kind the books keep. */
    public static final List<Kind<? extends ShopRecord>> KEPT =
            Stream.concat(ALL.stream(), Stream.of(CONTACT)).toList();

    private static <T extends ShopRecord> Kind<T> of(
            String name, Class<T> type, String file, String prefix, String... key) {
        List<String> columns = key.length == 0 ? List.of("id") : List.of(key);
        return new Kind<>(name, type, file, prefix, columns, true, Columns.of(type));
    }

    private static <T extends ShopRecord> Kind<T> more(String name, Class<T> type, String file, String prefix) {
        return new Kind<>(name, type, file, prefix, List.of("id"), false, Columns.of(type));
    }

    /** The kind of a record class. */
    @SuppressWarnings("unchecked")
    public static <T extends ShopRecord> Kind<T> of(Class<T> type) {
        return (Kind<T>) KEPT.stream().filter(k -> k.type == type).findFirst().orElseThrow();
    }

    /** The kind of that name. */
    public static Kind<? extends ShopRecord> named(String name) {
        return KEPT.stream().filter(k -> k.name.equals(name)).findFirst().orElseThrow();
    }

    /** The table that holds it: the name with underscores. */
    public String table() {
        return name.replace('-', '_');
    }
}
