package hornbook.shared.store;

import java.nio.file.Files;
import java.nio.file.Path;

/** A shop in the first shape. */
public final class OldShop {
    private OldShop() {}

    public static void make(Path folder, int cabinets) throws Exception {
        Files.createDirectories(folder);
        try (Query query = new Query(Database.toWrite(folder.resolve(Opening.FILE)))) {
            Migrations.run(query, 0, 1);
            query.run("begin immediate");
            query.run("insert into deed (number, title, day) values (1, 'furnish', '2026-01-01')");
            for (int i = 0; i < cabinets; i++) {
                query.change(
                        "insert into cabinet (id, name, \"rows\", \"columns\", \"where\", notes)"
                                + " values ('c-' || ?, 'Oak', 1, 1, '', '')",
                        i);
                query.change("insert into feed (deed, kind, id) values (1, 'cabinet', 'c-' || ?)", i);
            }
            query.run("commit");
        }
    }
}
