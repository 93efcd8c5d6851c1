package hornbook.viewer.knowledge;

import hornbook.catalogue.entry.Provenance.Basis;
import hornbook.viewer.widget.Words;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** Asks where it is known from, and how sure it is. */
final class OriginPane extends VBox {
    private static final List<String> SURE = List.of("sure", "likely", "a guess");

    private final EditModel model;
    private final Map<Basis, ToggleButton> bases = new EnumMap<>(Basis.class);
    private final ToggleButton asBefore = new ToggleButton("As before");
    private final Label before = Words.text("", "field-about");
    private final Label asks = Words.text("", "field-about");
    private final TextField detail = new TextField();
    private final TextField sureness = new TextField();

    OriginPane(EditModel model) {
        this.model = model;
        getStyleClass().add("origin");
        getChildren()
                .addAll(
                        Words.text("Where do you know this from?", "heading"),
                        bases(),
                        before,
                        asks,
                        detail,
                        new Offers(detail, (typed, found) -> {
                            if (model.view().origin().basis() == Basis.THIS_SHOP) {
                                model.offerJobs(typed, found);
                            } else {
                                found.accept(List.of());
                            }
                        }),
                        Words.text("How sure is it?", "heading"),
                        sures(),
                        sureness);
        detail.setId("origin-detail");
        sureness.setId("origin-sureness");
        sureness.setAccessibleText("How sure is it?");
        detail.textProperty()
                .addListener((of, was, now) -> tell(model.view().origin().detail(now)));
        sureness.textProperty()
                .addListener((of, was, now) -> tell(model.view().origin().sureness(now)));
    }

    private void tell(Origin told) {
        if (!told.equals(model.view().origin())) {
            model.tell(told);
        }
    }

    private FlowPane bases() {
        FlowPane flow = new FlowPane();
        flow.getStyleClass().add("toggles");
        ToggleGroup one = new ToggleGroup();
        if (model.mayStand()) {
            asBefore.setId("origin-as-before");
            asBefore.setToggleGroup(one);
            asBefore.setOnAction(
                    pressed -> model.tell(Origin.before(model.view().origin().sureness())));
            flow.getChildren().add(asBefore);
        }
        for (Basis basis : List.of(Basis.THIS_SHOP, Basis.COMMON_PRACTICE, Basis.PUBLISHED, Basis.MEMORY)) {
            ToggleButton button = new ToggleButton(words(basis));
            button.setId(
                    "origin-" + basis.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-'));
            button.setToggleGroup(one);
            button.setOnAction(pressed -> model.tell(model.view().origin().basis(basis)));
            bases.put(basis, button);
            flow.getChildren().add(button);
        }
        return flow;
    }

    private FlowPane sures() {
        FlowPane flow = new FlowPane();
        flow.getStyleClass().add("toggles");
        SURE.forEach(words -> {
            Button button = new Button(words);
            button.setOnAction(pressed -> sureness.setText(words));
            flow.getChildren().add(button);
        });
        return flow;
    }

    void show(EditView view) {
        Origin origin = view.origin();
        asBefore.setSelected(origin.asBefore());
        bases.forEach((each, button) -> button.setSelected(each == origin.basis()));
        before.setText(origin.asBefore() ? model.sourceBefore() : "");
        visible(before, origin.asBefore());
        Basis basis = origin.basis();
        boolean more = basis != null;
        asks.setText(basis == null ? "" : asked(basis));
        visible(asks, more);
        visible(detail, more);
        detail.setAccessibleText(asks.getText());
        set(detail, origin.detail());
        set(sureness, origin.sureness());
    }

    private static void set(TextField field, String words) {
        if (!field.getText().equals(words)) {
            field.setText(words);
        }
    }

    private static void visible(javafx.scene.Node node, boolean shown) {
        node.setVisible(shown);
        node.setManaged(shown);
    }

    private static String words(Basis basis) {
        return switch (basis) {
            case THIS_SHOP -> "This shop";
            case COMMON_PRACTICE -> "Common practice";
            case PUBLISHED -> "Published";
            case MEMORY -> "From memory";
        };
    }

    private static String asked(Basis basis) {
        return switch (basis) {
            case THIS_SHOP -> "Which job? Its number, or a word of it.";
            case PUBLISHED -> "Which standard, book or table?";
            case COMMON_PRACTICE, MEMORY -> "Anything to add? May stay blank.";
        };
    }
}
