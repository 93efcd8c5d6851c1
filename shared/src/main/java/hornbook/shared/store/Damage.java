package hornbook.shared.store;

import java.nio.file.Path;

/** Content that is no longer what was put in. */
final class Damage {
    static final String TO_DO = "restore the last good backup";

    private Damage() {}

    static Problem of(String what, String where) {
        return new Problem(what, where, TO_DO);
    }

    /** Which backup that is. */
    static Problem offer(Path folder) {
        return Backup.lastGood(folder)
                .map(good -> new Problem(
                        "is the last good backup",
                        good.toString(),
                        "“hornbook restore " + good + "” puts it in place and"
                                + " keeps the shop as it is now beside it"))
                .orElse(new Problem(
                        "holds no good backup",
                        folder.resolve(Backup.FOLDER).toString(),
                        "look for a copy elsewhere; “hornbook export” saves what can still be read"));
    }
}
