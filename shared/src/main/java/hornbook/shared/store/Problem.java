package hornbook.shared.store;

/** Something found wrong with a shop. */
public record Problem(String what, String where, String toDo) {
    /** In one line. */
    public String line() {
        return where + ": " + what + ": " + toDo;
    }
}
