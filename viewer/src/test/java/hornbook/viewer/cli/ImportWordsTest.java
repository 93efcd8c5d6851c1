package hornbook.viewer.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A person's list by command: what was refused is written as a list that can be corrected and comes back in. */
class ImportWordsTest {
    @TempDir
    Path folder;

    private CalledCli run(int code, String... words) {
        CalledCli called =
                new CalledCli(Map.of("HORNBOOK_SHOP", folder.resolve("shop").toString()), "Linux", folder);
        assertThat(called.run(words)).as(String.join(" ", words) + called.err).isEqualTo(code);
        return called;
    }

    @Test
    void refusedRowsAreWrittenCorrectedAndTaken() throws Exception {
        Files.writeString(
                folder.resolve("list.csv"), "My parts,,\nBin,Description,Qty\n,,\nB-1,rod,3\n\nB-2,screw,~20\n");
        CalledCli first = run(1, "import", "list.csv", "--as", "lots", "--rows-to-fix", "fix.csv");
        assertThat(first.out.toString()).contains("row 4 (line 6), count").contains("2 rows read, 1 taken, 1 refused");
        assertThat(first.err.toString()).contains("fix.csv");
        Path fix = folder.resolve("fix.csv");
        Files.writeString(fix, Files.readString(fix).replace("~20", "plenty"));
        run(0, "import", "fix.csv", "--as", "lots", "--rows-to-fix", "none.csv");
        assertThat(folder.resolve("none.csv")).doesNotExist();
        assertThat(run(0, "drawer", "B r1c2").out.toString()).contains("plenty").contains("screw");
    }

    /** Names stay in the shop unless they are asked for. */
    @Test
    void customersLeaveOnlyWhenAskedFor() throws Exception {
        Files.writeString(folder.resolve("horns.csv"), "No,Horn,Customer\n7,alto,Quill Planted\n");
        run(0, "import", "horns.csv", "--as", "horns");
        run(0, "export", "--to", "plain");
        run(0, "export", "--to", "whole", "--with-customers");
        assertThat(all("plain")).doesNotContain("Quill Planted");
        assertThat(all("whole")).contains("Quill Planted");
    }

    private String all(String export) throws Exception {
        StringBuilder text = new StringBuilder();
        try (var files = Files.list(folder.resolve(export))) {
            for (Path file : (Iterable<Path>) files.filter(Files::isRegularFile)::iterator) {
                text.append(Files.readString(file));
            }
        }
        return text.toString();
    }
}
