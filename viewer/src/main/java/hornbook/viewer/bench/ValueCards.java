package hornbook.viewer.bench;

import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import hornbook.catalogue.picture.Pictures;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;

/** The cards of a trait's values, as many beside one another as there is room for. */
final class ValueCards extends GridPane {
    private static final double WIDTH_IN_TYPE = 8.6;
    private static final int MOST_ACROSS = 5;
    private static final int LAST_KEY = 9;

    private final Pictures pictures;
    private final Consumer<String> press;
    private final Map<String, ValueCard> cards = new LinkedHashMap<>();
    private int across;

    ValueCards(Pictures pictures, Consumer<String> press) {
        this.pictures = pictures;
        this.press = press;
        getStyleClass().add("value-cards");
    }

    void show(Trait trait) {
        cards.clear();
        List<TraitValue> values = trait.values();
        for (int i = 0; i < values.size(); i++) {
            TraitValue value = values.get(i);
            ValueCard card = new ValueCard(
                    Phrases.name(value.id()),
                    value.description(),
                    i < LAST_KEY ? Integer.toString(i + 1) : "",
                    pictures.picture(trait.id(), value.id()),
                    () -> press.accept(value.id()));
            card.setId("value-" + value.id());
            cards.put(value.id(), card);
        }
        across = 0;
        arrange();
    }

    /** @param marks true for there, false for not there; no key where nothing was said */
    void mark(Map<String, Boolean> marks, boolean several) {
        cards.forEach((value, card) -> card.show(marks.get(value), several));
    }

    /** Presses the card of that number, if there is one. */
    void press(int number) {
        if (number >= 1 && number <= cards.size()) {
            List.copyOf(cards.values()).get(number - 1).fire();
        }
    }

    void focusFirst() {
        cards.values().stream().findFirst().ifPresent(ValueCard::requestFocus);
    }

    boolean hasFocus() {
        return cards.values().stream().anyMatch(ValueCard::isFocused);
    }

    @Override
    protected void layoutChildren() {
        arrange();
        super.layoutChildren();
    }

    private void arrange() {
        double type = cards.values().stream()
                .mapToDouble(ValueCard::typeSize)
                .findFirst()
                .orElse(1);
        int fit = (int) Math.clamp(getWidth() / (type * WIDTH_IN_TYPE), 2, MOST_ACROSS);
        if (fit == across && getChildren().size() == cards.size()) {
            return;
        }
        across = fit;
        getColumnConstraints()
                .setAll(IntStream.range(0, fit).mapToObj(column -> column(fit)).toList());
        getChildren().clear();
        int place = 0;
        for (ValueCard card : cards.values()) {
            add(card, place % fit, place / fit);
            place++;
        }
    }

    private static ColumnConstraints column(int of) {
        ColumnConstraints column = new ColumnConstraints();
        column.setPercentWidth(100.0 / of);
        column.setFillWidth(true);
        return column;
    }
}
