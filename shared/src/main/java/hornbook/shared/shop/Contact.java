package hornbook.shared.shop;

/**
 * Who an owner's code stands for and how to reach them. Never leaves the books unasked: in no pack, no log, no label,
 * and in no export without the customers.
 */
public record Contact(String owner, String name, String reach) implements ShopRecord {
    @Override
    public String id() {
        return owner;
    }
}
