package hornbook.shared.shop;

/** A piece of furniture with drawers in rows and columns. */
public record Cabinet(String id, String name, int rows, int columns, String where, String notes)
        implements ShopRecord {}
