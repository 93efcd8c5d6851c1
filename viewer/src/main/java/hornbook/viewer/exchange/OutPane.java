package hornbook.viewer.exchange;

import hornbook.viewer.widget.Words;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Everything out, as files that any spreadsheet program opens. */
final class OutPane extends VBox {
    OutPane(ExchangeModel model) {
        getStyleClass().add("out");
        TextField folder = new TextField();
        folder.setId("out-folder");
        folder.setPromptText("A folder for the files");
        HBox.setHgrow(folder, Priority.ALWAYS);
        Button choose = new Button("Choose\u2026");
        choose.setOnAction(
                pressed -> ExchangeScreen.Files.folder(this).ifPresent(path -> folder.setText(path.toString())));
        CheckBox customers = new CheckBox("with customers' names and contacts");
        Button write = new Button("Write everything there");
        write.setId("write-out");
        write.setOnAction(pressed ->
                ExchangeScreen.path(folder.getText()).ifPresent(path -> model.export(path, customers.isSelected())));
        HBox line = new HBox(folder, choose);
        line.getStyleClass().add("line");
        FlowPane doing = new FlowPane(write, customers);
        doing.getStyleClass().add("line");
        getChildren()
                .addAll(
                        Words.text("Take everything out", "card-title"),
                        Words.text(
                                "CSV and JSON files with all that is in the shop. Nothing is kept back but customers, unless you"
                                        + " say so.",
                                "quiet"),
                        line,
                        doing);
    }
}
