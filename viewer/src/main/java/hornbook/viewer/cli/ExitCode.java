package hornbook.viewer.cli;

/** What a command's exit code says. */
public final class ExitCode {
    public static final int DONE = 0;
    public static final int NOTHING_FOUND = 1;
    /** Bad input, or a line that cannot be understood. */
    public static final int BAD_INPUT = 2;
    /** The shop is damaged, missing where it is to be read, or held by another. */
    public static final int SHOP_UNAVAILABLE = 3;
    /** The program's own fault; the log tells more. */
    public static final int OWN_FAULT = 4;

    private ExitCode() {}
}
