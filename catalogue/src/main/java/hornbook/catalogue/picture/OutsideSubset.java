package hornbook.catalogue.picture;

/** A picture file that leaves the subset of SVG that pictures keep to. */
public final class OutsideSubset extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /**
     * One clear line.
     *
     * @param file name of the picture
     * @param line in the file, from 1; 0 where it is the whole file
     * @param why what is wrong
     * @param whatToDo what would put it right
     */
    OutsideSubset(String file, int line, String why, String whatToDo) {
        super(file + (line > 0 ? ", line " + line : "") + ": " + why + "; " + whatToDo);
    }
}
