package hornbook.viewer.paper;

/** Pages that were written. */
public record Printed(String file, int pages) {}
