package hornbook.shared.pads;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.measure.StandardSizes;
import hornbook.shared.shop.Count;
import hornbook.shared.shop.Lot;
import hornbook.shared.supply.Verdicts;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What may be taken from: common practice of the trade, from the project's own trade notes. */
class TraysTest {
    private static final String SIZE = "size=33.5 mm;thickness=4.0 mm";

    @ParameterizedTest
    @CsvSource({
        "5, '', '', false, 5",
        "5, reserve, '', false, 0",
        "5, reserve, '', true, 5",
        "5, keepsake, '', true, 0",
        "5, '', 'verdict: avoid', true, 0",
        "few, '', '', false, 1",
        "some, '', '', false, 6",
        "plenty, '', '', false, 21",
        "-2, '', '', false, 0"
    })
    void whatMayBeTaken(String count, String set, String note, boolean asked, int there) {
        Lot lot = Lots.pad("lot-1", SIZE, Count.read(count).orElseThrow(), set, note);
        List<Tray> trays = new Trays(new Millimetres(StandardSizes.load().reader()), new Verdicts(List.of()), asked)
                .of(Goods.PADS, List.of(lot));
        assertThat(trays.stream().mapToInt(tray -> tray.stock()[67]).sum()).isEqualTo(there);
    }
}
