package hornbook.viewer.paper;

/** Figures as a person says them. */
public final class Spoken {
    private static final int HOUR = 60;

    private Spoken() {}

    public static String inHundred(double chance) {
        return Math.round(100 * chance) + " in 100";
    }

    public static String minutes(int minutes) {
        return minutes < HOUR ? minutes + " min" : minutes / HOUR + " h " + minutes % HOUR + " min";
    }
}
