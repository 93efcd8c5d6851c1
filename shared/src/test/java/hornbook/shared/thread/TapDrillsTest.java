package hornbook.shared.thread;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import hornbook.shared.measure.Thread;
import hornbook.shared.thread.ThreadAnswer.TapDrill;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Machinery's Handbook percentages; metric drills ISO 2306, cross-checked in the trade notes. */
class TapDrillsTest {

    /** Every drill of the handbook's rows is offered, with its percentage, when that percentage is asked for. */
    @Test
    void offersTheHandbookDrill() throws IOException {
        for (NamedCsvRecord row : rows()) {
            Thread thread = Ask.SIZES.reader().thread(row.getField("thread")).orThrow();
            double percent = Double.parseDouble(row.getField("percent_of_0.75H_double_depth"));
            List<TapDrill> offered = TapDrills.of(thread, percent, Ask.SIZES.drills(), 4);
            if (percent < TapDrills.LEAST || percent > TapDrills.MOST) {
                continue;
            }
            String name = row.getField("drill") + (row.getField("drill").contains("/") ? "\" drill" : " drill");
            assertThat(offered)
                    .as(row.getField("thread"))
                    .anySatisfy(drill -> assertThat(drill.drill()).isEqualTo(name))
                    .filteredOn(drill -> drill.drill().equals(name))
                    .allSatisfy(drill -> assertThat(drill.percent()).isCloseTo(percent, within(0.011)));
        }
    }

    private static List<NamedCsvRecord> rows() throws IOException {
        try (CsvReader<NamedCsvRecord> csv = CsvReader.builder()
                .ofNamedCsvRecord(new InputStreamReader(
                        Thread.class.getResourceAsStream("tapdrills.csv"), StandardCharsets.UTF_8))) {
            return csv.stream().toList();
        }
    }
}
