package hornbook.shared.restock;

/**
 * Order s, S: once what is free and on order is no more than {@code point}, as many whole packs as {@code upTo} holds. As
 * that lies a pack or more above the point, one pack at least comes and what is then free and on order is above the point;
 * rounding up instead would buy two packs where one lasts for years.
 *
 * @param free on hand less known demand
 * @param byCost is the size of the order what costs least to order and to keep?
 * @param used was it ever used? What never was is ordered only for those who want it
 */
record Need(int free, int onOrder, int point, int upTo, int pack, boolean used, boolean byCost) {
    static Need of(int free, int onOrder, int point, OrderSize size, int pack, boolean used) {
        return new Need(
                free,
                onOrder,
                point,
                used ? point + Math.max(pack, size.pieces()) : 0,
                pack,
                used,
                used && size.byCost() && size.pieces() > pack);
    }

    boolean due() {
        int coming = free + onOrder;
        return used ? coming <= point : coming < 0;
    }

    /** Pieces to order, whole packs; 0 where nothing is due. */
    int order() {
        if (!due()) {
            return 0;
        }
        int lacking = upTo - free - onOrder;
        return used ? lacking / pack * pack : Math.ceilDiv(lacking, pack) * pack;
    }
}
