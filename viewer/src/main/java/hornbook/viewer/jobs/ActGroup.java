package hornbook.viewer.jobs;

/** Under which word an act is found; each stands in one place, whatever comes next. */
enum ActGroup {
    WORK("At work"),
    NOTE("Write down"),
    ASK("Find out"),
    OWNER("With the owner");

    private final String words;

    ActGroup(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }
}
