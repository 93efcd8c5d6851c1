package hornbook.viewer.supply;

import hornbook.shared.shop.BadInput;
import hornbook.shared.supply.SupplierCard;
import hornbook.shared.supply.SupplierSaid;
import hornbook.shared.supply.Verdict;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** What is asked about suppliers, and what the answers say. */
final class SupplierQuestions {
    static final Ask NEW = new Ask("A supplier that is new here", fields("", "", "", "", ""), "Note it", null);

    private SupplierQuestions() {}

    static Ask change(SupplierCard now) {
        String smallest = now.smallestOrder() == null ? "" : now.smallestOrder().toPlainString();
        return new Ask(
                "What is known of " + now.name(),
                fields(now.name(), now.place(), days(now), now.packs(), smallest),
                "Note it",
                null);
    }

    static Ask verdict(SupplierCard now) {
        List<Choice> verdicts = Arrays.stream(Verdict.values())
                .map(verdict -> new Choice(verdict.name(), verdict.written()))
                .toList();
        return new Ask(
                "Whether to buy from " + now.name() + " again",
                "Note it",
                Field.choice("verdict", "Buy again", verdicts),
                Field.text("why", "Why: what a test or use showed", now.why()));
    }

    private static List<Field> fields(String name, String place, String days, String packs, String smallest) {
        return List.of(
                Field.text("name", "What it is called", name),
                Field.text("place", "Where it is", place),
                Field.number("days", "Days from order to arrival, as 10", days),
                Field.text("packs", "In what packs it sells", packs),
                Field.number("smallest", "Smallest order, money", smallest));
    }

    private static String days(SupplierCard now) {
        return now.days().stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    /** @throws BadInput where the smallest order is no money */
    static SupplierSaid said(Answers answers) {
        return new SupplierSaid(
                answers.text("name"),
                answers.text("place"),
                answers.text("days"),
                answers.text("packs"),
                money(answers.text("smallest")));
    }

    /** As {@link #said}; days left as they stood were seen, not said. */
    static SupplierSaid changed(Answers answers, SupplierCard was) {
        SupplierSaid said = said(answers);
        boolean asTheyStood = answers.text("days").equals(days(was));
        return new SupplierSaid(
                said.name(), said.place(), asTheyStood ? null : said.days(), said.packs(), said.smallestOrder());
    }

    private static BigDecimal money(String typed) {
        try {
            return typed.isEmpty() ? BigDecimal.ZERO : new BigDecimal(typed.replace(',', '.'));
        } catch (NumberFormatException e) {
            throw new BadInput("“" + typed + "” is no money: write it as 25 or 25.50, or leave it empty");
        }
    }
}
