package hornbook.shared.supply;

import hornbook.shared.shop.BadInput;
import java.util.Arrays;
import java.util.stream.Collectors;

/** Days from order to arrival, as a person writes them down with a supplier. */
public final class LeadDays {
    /** More is a slip of the pen: nobody waits longer than a year. */
    private static final int MOST = 366;

    private LeadDays() {}

    /**
     * As it stands in the books: whole numbers with a space between, or nothing.
     *
     * @throws BadInput where something else is among them
     */
    public static String read(String said) {
        return Arrays.stream(said.strip().split("[ ,;]+"))
                .filter(word -> !word.isEmpty())
                .map(LeadDays::one)
                .collect(Collectors.joining(" "));
    }

    private static String one(String word) {
        boolean days = word.matches("\\d{1,3}") && Integer.parseInt(word) <= MOST;
        if (!days) {
            throw new BadInput("“" + word + "” is no number of days from order to arrival: write whole days from 0 to "
                    + MOST + ", as 10, or those of several deliveries as 8 9 12");
        }
        return String.valueOf(Integer.parseInt(word));
    }
}
