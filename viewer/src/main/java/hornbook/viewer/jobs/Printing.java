package hornbook.viewer.jobs;

import hornbook.catalogue.estimate.EstimateAnswer;
import hornbook.catalogue.estimate.Price;
import hornbook.catalogue.estimate.Rates;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import hornbook.viewer.paper.owner.HandBack;
import hornbook.viewer.sheet.OwnerSheets;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** The sheets that go to the owner: the quote before the work, the hand-back sheet after it. */
public final class Printing implements Acts {
    private static final Field OWNER = Field.choice(
            "owner",
            "The owner's code on it",
            List.of(new Choice("no", "no"), new Choice("yes", "yes, the code, never a name")));

    private final Books books;
    private final OwnerSheets sheets;
    private final Function<String, Optional<Path>> where;

    /** @param where asks into which file a sheet of that name goes; empty where the person thought better of it */
    public Printing(Books books, OwnerSheets sheets, Function<String, Optional<Path>> where) {
        this.books = books;
        this.sheets = sheets;
        this.where = where;
    }

    @Override
    public Map<Act, Begin> begun() {
        return Map.of(Act.QUOTE_SHEET, this::quote, Act.BACK_SHEET, Begin.onJob(this::back));
    }

    private Step quote(JobsView view) {
        Expected expected = view.expected();
        EstimateAnswer time = expected == null ? null : expected.answer();
        if (time == null) {
            return new Step.Goes(model -> model.remark("First list the work (E): a quote says what will be done."));
        }
        return Begin.onJob(page -> quote(page, time)).on(view);
    }

    private Step quote(JobPage page, EstimateAnswer time) {
        String rate = Rates.of(books, null, null, null)
                .map(rates -> rates.hour().toPlainString())
                .orElse("");
        Ask ask = new Ask(
                "The quote sheet: what is done and not, from and up to how much, where work stops, what needs a yes",
                "Print it as PDF",
                Field.text("not", "What will not be done; several with ; between", ""),
                Field.number("rate", "Money for an hour; empty leaves the price blank", rate),
                Field.number("materials", "Materials, money as bought", ""),
                OWNER);
        return new Step.Asks(ask, answers -> {
            Price price = price(time, answers);
            return model -> where.apply("quote-" + page.card().id())
                    .ifPresent(file -> model.print(() -> sheets.quote(
                            Optional.of(page.card()),
                            page.card().model(),
                            time,
                            price,
                            several(answers.text("not")),
                            answers.text("owner").equals("yes"),
                            file)));
        });
    }

    private @Nullable Price price(EstimateAnswer time, Answers answers) {
        BigDecimal hour = money(answers, "rate", "money for an hour");
        BigDecimal materials = money(answers, "materials", "materials");
        return hour == null
                ? null
                : Rates.of(books, hour, null, null)
                        .map(rates -> Price.of(time, rates, materials == null ? BigDecimal.ZERO : materials))
                        .orElseThrow();
    }

    private Step back(JobPage page) {
        Ask ask = new Ask(
                "The hand-back sheet: what was done and not, what went in, marks agreed, old parts, settling in",
                "Print it as PDF",
                Field.text("not", "What was not done; several with ; between", ""),
                Field.text("left", "Known faults that stay; several with ; between", ""),
                Field.number("billed", "To pay, money", ""),
                OWNER);
        return new Step.Asks(ask, answers -> {
            HandBack told = new HandBack(
                    null,
                    several(answers.text("not")),
                    several(answers.text("left")),
                    money(answers, "billed", "what is to pay"));
            return model -> where.apply("hand-back-" + page.card().id())
                    .ifPresent(file -> model.print(() -> sheets.handBack(
                            page.card(), told, answers.text("owner").equals("yes"), file)));
        });
    }

    private static List<String> several(String written) {
        return Arrays.stream(written.split(";"))
                .map(String::strip)
                .filter(one -> !one.isEmpty())
                .toList();
    }

    private static @Nullable BigDecimal money(Answers answers, String field, String what) {
        String written = answers.text(field).replace(',', '.');
        if (written.isEmpty()) {
            return null;
        }
        if (!written.matches("\\d{1,7}(\\.\\d+)?")) {
            throw new BadInput(what + ": “" + answers.text(field) + "” is no money: write it as 42 or 42.50");
        }
        return new BigDecimal(written);
    }
}
