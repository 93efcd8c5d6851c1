package hornbook.shared.job;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.exchange.SmallShop;
import hornbook.shared.store.Books;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobsTest {
    @TempDir
    Path folder;

    @Test
    void aPastJobTellsHowItWentAndHowLongItTook() {
        try (Books books = SmallShop.open(folder)) {
            JobCard job = new Jobs(books).job("j-0164").orElseThrow();
            assertThat(job.went()).isEqualTo("rough");
            assertThat(job.minutes()).isPositive();
            assertThat(job.findings()).isNotEmpty();
            HornCard horn = new Jobs(books).horn(job.horn()).orElseThrow();
            assertThat(horn.jobs()).extracting(HornCard.PastJob::id).contains("j-0164");
        }
    }
}
