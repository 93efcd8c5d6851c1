package hornbook.shared.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Values computed or printed outside the project; each row names its source and how sure it is. */
public final class Published {
    private Published() {}

    /** The rows of a file of test values, as cells by column. */
    public static List<Map<String, String>> rows(String file) {
        CsvFile csv = CsvFile.read(Path.of("src/test/resources/published", file));
        assertThat(csv.refused()).isEmpty();
        assertThat(csv.rows()).isNotEmpty();
        return csv.rows().stream().map(Row::cells).toList();
    }
}
