package hornbook.viewer.cli;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The folders in use when nobody names others.
 *
 * @param shop the shop
 * @param demo the demonstration shop
 * @param settings how the window looks
 * @param log the file that keeps what went wrong
 */
public record Folders(Path shop, Path demo, Path settings, Path log) {

    /** As the platform has it: the XDG base directories, %APPDATA%, or ~/Library. HORNBOOK_SHOP names another shop. */
    public static Folders of(Surroundings around) {
        Folders usual = around.isWindows() ? windows(around) : around.isMac() ? mac(around) : xdg(around);
        return around.variable("HORNBOOK_SHOP")
                .map(named -> usual.withShop(around.here().resolve(named).normalize()))
                .orElse(usual);
    }

    Folders withShop(Path other) {
        return new Folders(other, demo, settings, log);
    }

    private static Folders windows(Surroundings around) {
        Path roaming = base(around, "APPDATA", "AppData/Roaming").resolve("Hornbook");
        Path local = base(around, "LOCALAPPDATA", "AppData/Local").resolve("Hornbook");
        return under(roaming, roaming, local);
    }

    private static Folders mac(Surroundings around) {
        Path library = around.home().resolve("Library");
        Path support = library.resolve("Application Support/Hornbook");
        return under(support, support, library.resolve("Logs/Hornbook"));
    }

    private static Folders xdg(Surroundings around) {
        return under(
                base(around, "XDG_DATA_HOME", ".local/share").resolve("hornbook"),
                base(around, "XDG_CONFIG_HOME", ".config").resolve("hornbook"),
                base(around, "XDG_STATE_HOME", ".local/state").resolve("hornbook"));
    }

    private static Folders under(Path data, Path settings, Path state) {
        return new Folders(data.resolve("shop"), data.resolve("demo"), settings, state.resolve("hornbook.log"));
    }

    /** A relative path in these variables is to be ignored (XDG Base Directory Specification 0.8). */
    private static Path base(Surroundings around, String variable, String usual) {
        Optional<Path> named = around.variable(variable).map(Path::of).filter(Path::isAbsolute);
        return named.orElse(around.home().resolve(usual));
    }
}
