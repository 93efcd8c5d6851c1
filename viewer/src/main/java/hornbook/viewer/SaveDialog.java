package hornbook.viewer;

import java.io.File;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.stage.FileChooser;

/** Asks the person where a file is to go. */
final class SaveDialog {
    /** @param ending csv, pdf */
    Optional<Path> file(String name, String ending) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Save as");
        chooser.setInitialFileName(name + "." + ending);
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(ending.toUpperCase(Locale.ROOT), "*." + ending));
        return Optional.ofNullable(chooser.showSaveDialog(null)).map(File::toPath);
    }
}
