package hornbook.shared.shop;

import java.util.regex.Pattern;

/** People stand in the books as codes, so that no name leaves the shop by a list, a label or a pack. */
public final class PersonCode {
    /** Who brought the horn, where nobody gave a code. */
    public static final String OWNER = "owner";

    private static final Pattern CODE = Pattern.compile("[A-Z]{1,3}-?\\d{1,6}");

    private PersonCode() {}

    public static boolean is(String said) {
        return CODE.matcher(said).matches();
    }

    /**
     * A code, as it was said.
     *
     * @throws BadInput where it may be a name; it is not repeated, so that it stands in no log
     */
    public static String read(String said) {
        String code = said.strip();
        if (!is(code) && !code.equals(OWNER)) {
            throw new BadInput("that is no code of a person: write letters and a number, as O-041, and never a name");
        }
        return code;
    }
}
