package hornbook.viewer.tools;

import hornbook.shared.stock.MemberLine;
import hornbook.shared.stock.ToolCard;
import hornbook.viewer.ask.AskForm;
import hornbook.viewer.widget.Plate;
import hornbook.viewer.widget.Words;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One tool: where it is, how far it is off, and who has what of its set. */
final class ToolPane extends VBox {
    private final ToolsModel model;
    private final Consumer<String> pull;
    private final VBox inside = new VBox();
    private final AskForm form;

    ToolPane(ToolsModel model, Consumer<String> pull) {
        this.model = model;
        this.pull = pull;
        this.form = new AskForm(model::answer, model::back);
        getStyleClass().addAll("drawer-panel", "beside");
        inside.getStyleClass().add("inside");
        ScrollPane scroll = new ScrollPane(inside);
        scroll.setFitToWidth(true);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        getChildren().addAll(scroll, form);
    }

    void show(ToolsView view) {
        inside.getChildren().clear();
        view.open().ifPresent(this::draw);
        form.show(view.ask());
    }

    private void draw(ToolCard tool) {
        add(Words.text(tool.title(), "card-title"));
        String lies = tool.lies();
        if (lies != null) {
            add(lies(tool, lies));
        } else {
            add(Words.text("Nobody wrote down where it is.", "banner"));
        }
        text(tool.state().equals("good") ? "" : "It is " + tool.state() + ".", "banner");
        text(tool.serves().isBlank() ? "" : "Serves: " + tool.serves(), "words");
        text(error(tool), "words");
        text(Words.sentence(tool.note()), "note");
        acts(tool);
        if (!tool.members().isEmpty()) {
            members(tool);
        }
    }

    private void acts(ToolCard tool) {
        FlowPane acts = new FlowPane();
        acts.getStyleClass().add("acts");
        acts.getChildren().addAll(button("tool-put", "It is elsewhere", model::askPut));
        if (tool.members().isEmpty()) {
            acts.getChildren().add(button("tool-error", "Checked: how far it is off", model::askError));
        }
        acts.getChildren().add(button("tool-more", "One more in the set", model::askMore));
        add(acts);
    }

    private static Button button(String id, String words, Runnable act) {
        Button button = new Button(words);
        button.setId(id);
        button.setOnAction(pressed -> act.run());
        return button;
    }

    private HBox lies(ToolCard tool, String drawer) {
        Plate plate = new Plate(tool.label(), tool.where());
        HBox.setHgrow(plate, Priority.ALWAYS);
        Button show = new Button("Show it");
        show.setMinWidth(Region.USE_PREF_SIZE);
        show.setOnAction(pressed -> pull.accept(drawer));
        HBox row = new HBox(plate, show);
        row.getStyleClass().add("lies");
        return row;
    }

    private static String error(ToolCard tool) {
        if (tool.errorMm().isBlank()) {
            return "";
        }
        String checked = tool.errorChecked() == null ? "" : ", checked " + tool.errorChecked();
        return "Reads " + tool.errorMm() + " mm off" + checked + "; readings with it are put right by that.";
    }

    private void members(ToolCard tool) {
        tool.wanting().forEach(member -> add(wanting(member)));
        Button note = new Button("Lent, broken, missing\u2026");
        note.setId("member");
        note.setOnAction(pressed -> model.ask(""));
        add(note);
        String good = tool.members().stream()
                .filter(MemberLine::good)
                .collect(Collectors.groupingBy(
                        MemberLine::kind,
                        java.util.LinkedHashMap::new,
                        Collectors.mapping(MemberLine::member, Collectors.joining(", "))))
                .entrySet()
                .stream()
                .map(kind -> kind.getKey() + ": " + kind.getValue())
                .collect(Collectors.joining("\n"));
        text("Good:\n" + good, "sizes");
    }

    private HBox wanting(MemberLine member) {
        String to = member.lentTo() == null ? "" : " to " + member.lentTo();
        String since = member.since() == null ? "" : " since " + member.since();
        String note = member.note().isBlank() ? "" : "; " + member.note();
        var words =
                Words.text(member.kind() + " " + member.member() + ": " + member.state() + to + since + note, "heed");
        words.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(words, Priority.ALWAYS);
        Button back = new Button(member.state().equals("lent") ? "It is back" : "It is good");
        back.setMinWidth(Region.USE_PREF_SIZE);
        back.setAccessibleText(back.getText() + ": " + member.member());
        back.setOnAction(pressed -> model.good(member));
        return new HBox(words, back);
    }

    private void text(String words, String style) {
        if (!words.isBlank()) {
            add(Words.text(words, style));
        }
    }

    private void add(Node node) {
        inside.getChildren().add(node);
    }
}
