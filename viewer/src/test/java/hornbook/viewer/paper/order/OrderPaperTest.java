package hornbook.viewer.paper.order;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.shared.restock.OrderList;
import hornbook.shared.restock.RestockAnswer;
import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.paper.PaperSize;
import hornbook.viewer.paper.Printed;
import hornbook.viewer.workshop.Workshop;
import java.nio.file.Path;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The order list of the demonstration shop: its own description says what is empty on 30 September. */
class OrderPaperTest {
    @TempDir
    static Path folder;

    @Test
    void eachSupplierHasAPageOfItsOwnAndTheReasonsStayInTheShop() throws Exception {
        try (Workshop shop = DemoShop.in(folder.resolve("shop"))) {
            RestockAnswer answer = shop.restock().ask(shop.wanted());
            List<OrderList> orders = shop.restock().orders(answer);
            Path file = folder.resolve("order.pdf");
            Printed printed =
                    new OrderPaper(PaperSize.A4, shop.name(), shop.books().today()).print(answer, orders, file);
            assertThat(printed.pages()).isGreaterThan(orders.size());
            for (int i = 0; i < orders.size(); i++) {
                String page = packed(file, i + 1);
                assertThat(page).contains(packed("Order to " + orders.get(i).name()));
                orders.get(i)
                        .lines()
                        .forEach(line -> assertThat(page)
                                .contains(packed(line.order() + line.what()))
                                .doesNotContain(packed("wanted by")));
            }
            String last = packed(file, orders.size() + 1);
            assertThat(last).contains(packed("used 25 times in 84 months"), packed("find another source first"));
        }
    }

    private static String packed(Path pdf, int page) throws Exception {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper text = new PDFTextStripper();
            text.setStartPage(page);
            text.setEndPage(page);
            return packed(text.getText(document));
        }
    }

    private static String packed(String text) {
        return text.replaceAll("\\s+", "");
    }
}
