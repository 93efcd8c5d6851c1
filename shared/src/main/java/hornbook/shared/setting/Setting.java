package hornbook.shared.setting;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import hornbook.shared.store.View;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The settings that the program reads, in the order in which they are shown. */
public enum Setting {
    NAME(Form.TEXT, "What the shop is called: it stands on the window and on what is printed.", "Hornbook"),
    HOURLY_RATE(Form.MONEY, "Money for an hour of work. Without it an estimate gives minutes only.", "none"),
    MINIMUM_CHARGE(Form.MONEY, "The smallest charge: it covers taking in, test and write-up.", "0"),
    MATERIALS_HANDLING(Form.SHARE, "Added to the cost of materials, as a share: 0.15 is fifteen in a hundred.", "0"),
    SERVICE_LEVEL(
            Form.LEVEL,
            "Chance that a thing does not run out between order and arrival. Higher means more on the shelf.",
            "0.95"),
    REVIEW_DAYS(Form.DAYS, "Days from one look at the order list to the next.", "7"),
    ORDER_COST(
            Form.MONEY,
            "What one order costs beside the goods: postage, and the time to write and unpack it. With it the size of an"
                    + " order is reckoned from its cost; without it three months' use is bought.",
            "none"),
    HOLDING_SHARE(
            Form.SHARE,
            "What keeping goods for a year costs, as a share of their price: money tied up, room, spoilage.",
            "0.25"),
    SMALLEST_ORDER(
            Form.BY_SUPPLIER, "The smallest order a supplier takes, in money, by supplier: sup-v-marlbeck=40.", "none"),
    PAD_TIE(Form.UP_OR_DOWN, "Where a cup lies just between two half sizes: the larger pad or the smaller.", "up"),
    AS_OF(Form.DAY, "The day that counts as today. Only a demonstration shop stands still; leave it out.", "today");

    private final Form form;
    private final String meaning;
    private final String usual;

    Setting(Form form, String meaning, String usual) {
        this.form = form;
        this.meaning = meaning;
        this.usual = usual;
    }

    /** As it is written in commands and in the file of settings. */
    public String written() {
        return name().toLowerCase(Locale.ROOT);
    }

    public String meaning() {
        return meaning;
    }

    /** What holds where it is not set, in a word. */
    public String usual() {
        return usual;
    }

    /** What may be written, in a few words. */
    public String form() {
        return form.words();
    }

    /** @throws BadInput where there is none of that name */
    public static Setting named(String name) {
        String asked = name.strip().toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
        return Arrays.stream(values())
                .filter(setting -> setting.written().equals(asked))
                .findFirst()
                .orElseThrow(() -> new BadInput("there is no setting “" + name + "”: there are "
                        + Arrays.stream(values()).map(Setting::written).collect(Collectors.joining(", "))));
    }

    /**
     * What a person wrote, as its JSON value.
     *
     * @throws BadInput saying what may be written
     */
    String json(String typed) {
        return form.json(typed.strip()).orElseThrow(() -> refused(typed.strip()));
    }

    private BadInput refused(String value) {
        return new BadInput("setting " + written() + " is “" + value + "”: write " + form.words());
    }

    /** The value as a person writes it; empty where it is not set. @throws BadInput where what stands there is none */
    Optional<String> said(View view) {
        return view.setting(written()).map(this::said);
    }

    private String said(String json) {
        return form.said(json).orElseThrow(() -> refused(json));
    }

    /** The value as a person writes it; empty where it is not set. @throws BadInput where what stands there is none */
    public Optional<String> text(Books books) {
        return books.setting(written()).map(this::said);
    }

    /** The number; empty where it is not set. @throws BadInput where what stands there is none */
    public Optional<BigDecimal> number(Books books) {
        return text(books).map(BigDecimal::new);
    }

    /** The number; empty where it is not set. @throws BadInput where what stands there is none */
    public Optional<BigDecimal> number(View view) {
        return said(view).map(BigDecimal::new);
    }

    /** The number, or what is usual where it is not set. @throws BadInput where what stands there is none */
    public BigDecimal numberOrUsual(View view) {
        return number(view).orElseGet(() -> new BigDecimal(usual));
    }

    /** Money by supplier; none where it is not set. @throws BadInput where what stands there is none */
    public Map<String, BigDecimal> bySupplier(Books books) {
        return text(books).map(Form::money).orElse(Map.of());
    }

    /**
     * The JSON of money by supplier with one supplier's in place of what stood there.
     *
     * @param money 0 leaves the supplier out
     * @throws BadInput where that is no money
     */
    public String with(Books books, String supplier, BigDecimal money) {
        Map<String, BigDecimal> all = new LinkedHashMap<>(bySupplier(books));
        all.put(supplier, money);
        if (money.signum() == 0) {
            all.remove(supplier);
        }
        return all.isEmpty()
                ? "null"
                : json(all.entrySet().stream()
                        .map(one -> one.getKey() + "=" + one.getValue().toPlainString())
                        .collect(Collectors.joining(" ")));
    }
}
