package hornbook.viewer.restock;

import hornbook.shared.restock.OrderList;
import hornbook.shared.restock.RestockAnswer;
import java.nio.file.Path;
import java.util.List;

/** A way to write order lists into a file. */
public interface Saving {
    /** @throws hornbook.shared.shop.BadInput where the file cannot be written */
    void save(RestockAnswer answer, List<OrderList> orders, Path file);
}
