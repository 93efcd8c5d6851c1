package hornbook.viewer.restock;

import hornbook.shared.restock.OnTheWay;
import hornbook.shared.restock.OrderList;
import hornbook.shared.restock.RestockAnswer;
import java.util.List;

/**
 * One asking: the list, the same by supplier, and what is on its way already.
 *
 * @param orders only lines with something to order
 */
record RestockList(RestockAnswer answer, List<OrderList> orders, List<OnTheWay> coming) {
    RestockList {
        orders = List.copyOf(orders);
        coming = List.copyOf(coming);
    }
}
