package hornbook.viewer.cli;

/** Opens the window and returns when it is closed. Given by Main, so that commands never load JavaFX. */
@FunctionalInterface
public interface WindowStart {
    /**
     * @param folders the shop to open and where the window's settings are
     * @param shutAtOnce close it again after its first frame
     * @return the exit code
     */
    int open(Folders folders, boolean shutAtOnce);
}
