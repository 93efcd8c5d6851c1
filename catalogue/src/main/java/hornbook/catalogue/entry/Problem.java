package hornbook.catalogue.entry;

/**
 * Something wrong with an entry.
 *
 * @param file path of the file below `entries`, or the name it was given under
 * @param field path of the field, dots and list numbers; empty where it is the whole file
 * @param why what is wrong
 * @param whatToDo what would put it right
 * @param setAside true where the entry is not used because of it, false for a remark
 */
public record Problem(String file, String field, String why, String whatToDo, boolean setAside) {
    /** One clear line. */
    public String line() {
        return file + (field.isEmpty() ? "" : ", " + field) + ": " + why + "; " + whatToDo;
    }
}
