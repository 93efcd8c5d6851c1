package hornbook.indexer.bench;

import hornbook.catalogue.entry.Catalogue;
import hornbook.indexer.card.Card;
import hornbook.indexer.card.ShopCards;
import hornbook.shared.store.Books;
import java.util.function.Consumer;

/** The same records for every peer: number, title, and all that stands on the card. */
record Texts(Books books) {
    record One(String id, String title, String body) {}

    void each(Consumer<One> to) {
        Catalogue catalogue = Catalogue.open(books.folder().resolve("entries"));
        new ShopCards(books, catalogue).each(card -> to.accept(one(card)));
    }

    private static One one(Card card) {
        StringBuilder body = new StringBuilder();
        card.texts()
                .values()
                .forEach(texts -> texts.forEach(text -> body.append(text).append(' ')));
        card.sizes().forEach(size -> body.append(size).append(' '));
        return new One(card.id(), card.title(), body.toString());
    }
}
