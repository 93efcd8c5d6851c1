package hornbook.shared.photo;

import hornbook.shared.shop.BadInput;

/**
 * A picture without what it said beside itself.
 *
 * @param ending {@code jpg} or {@code png}
 */
record Picture(byte[] content, String ending) {

    /**
     * Strips a picture of everything but what is needed to show it. Stripping it again changes nothing.
     *
     * @throws BadInput where it is neither JPEG nor PNG, or is damaged
     */
    static Picture stripped(byte[] given) {
        try {
            if (Jpeg.is(given)) {
                return new Picture(new Jpeg(given).stripped(), "jpg");
            }
            if (Png.is(given)) {
                return new Picture(new Png(given).stripped(), "png");
            }
        } catch (Damaged e) {
            throw new BadInput("is a damaged picture, as " + e.why() + ": take another copy of it");
        }
        throw new BadInput("is no picture of a kind that can be kept: save it as JPEG or PNG");
    }

    /** A picture that breaks its own rules. */
    static final class Damaged extends Exception {
        private static final long serialVersionUID = 1;

        Damaged(String why) {
            super(why);
        }

        String why() {
            return String.valueOf(getMessage());
        }
    }
}
