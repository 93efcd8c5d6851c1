package hornbook.viewer.paper.order;

import hornbook.shared.exchange.CsvFile;
import hornbook.shared.restock.OrderList;
import hornbook.shared.shop.BadInput;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Order lists as a spreadsheet takes them. */
public final class OrderSheet {
    private OrderSheet() {}

    /** @throws BadInput where the file cannot be written */
    public static void write(List<OrderList> orders, Path file) {
        try {
            CsvFile.write(
                    file,
                    OrderList.COLUMNS,
                    orders.stream().flatMap(order -> order.rows().stream()).toList());
        } catch (IOException e) {
            throw new BadInput(file + " cannot be written: name a file in a folder that is there and may be written");
        }
    }
}
