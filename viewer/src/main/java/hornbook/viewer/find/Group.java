package hornbook.viewer.find;

import hornbook.indexer.search.Hit;

/** Groups for the eye. A hit that lies somewhere is looked for with the hands first. */
enum Group {
    HORNS("Makes and models"),
    TROUBLE("Quirks and faults"),
    DRAWERS("Drawers"),
    JOBS("Jobs"),
    REFERENCE("Reference");

    private final String title;

    Group(String title) {
        this.title = title;
    }

    String title() {
        return title;
    }

    static Group of(Hit hit) {
        return switch (hit.kind()) {
            case "make", "model", "seller" -> HORNS;
            case "quirk", "fault" -> TROUBLE;
            case "job", "horn" -> JOBS;
            case "lot", "place", "cabinet" -> DRAWERS;
            default -> hit.drawer() != null ? DRAWERS : REFERENCE;
        };
    }
}
