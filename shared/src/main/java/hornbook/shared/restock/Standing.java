package hornbook.shared.restock;

/**
 * How an article stands.
 *
 * @param onHand pieces that count
 */
record Standing(Article article, Use use, Forecast forecast, Demand demand, Source source, Need need, int onHand) {}
