package hornbook.viewer.bench;

/** The parts of a brief, one shown at a time. */
enum BriefPart {
    BITES("Bites"),
    FETCH("Fetch"),
    BUILD("Build"),
    BEFORE("Before");

    private final String title;

    BriefPart(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }
}
