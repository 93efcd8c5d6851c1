package hornbook.shared.setting;

import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.View;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Says how the shop is set, and sets it otherwise.
 *
 * <pre>{@code
 * new SettingBook(books).set("hourly_rate", "42.50");
 * }</pre>
 */
public final class SettingBook {
    private final Books books;

    public SettingBook(Books books) {
        this.books = books;
    }

    /** Every setting there is, set or not. */
    public List<SettingLine> all() {
        return books.reading(view ->
                Arrays.stream(Setting.values()).map(one -> line(one, view)).toList());
    }

    /** @throws BadInput where there is none of that name */
    public SettingLine one(String name) {
        Setting setting = Setting.named(name);
        return books.reading(view -> line(setting, view));
    }

    /** A value that somebody else's hand left there and that cannot be used must not hide the others. */
    private static SettingLine line(Setting one, View view) {
        try {
            return line(one, one.said(view).orElse(null), null);
        } catch (BadInput unusable) {
            return line(one, null, unusable.getMessage());
        }
    }

    private static SettingLine line(Setting one, @Nullable String value, @Nullable String trouble) {
        return new SettingLine(one.written(), value, one.usual(), one.meaning(), one.form(), trouble);
    }

    /**
     * Sets it.
     *
     * @param typed as a person writes it
     * @throws BadInput where there is none of that name, or that is no value for it
     */
    public Deed set(String name, String typed) {
        Setting setting = Setting.named(name);
        String json = setting.json(typed);
        return books.write(setting.written() + " set to " + typed.strip(), w -> w.setting(setting.written(), json));
    }

    /** What is usual holds again. @throws BadInput where there is none of that name */
    public Deed unset(String name) {
        Setting setting = Setting.named(name);
        return books.write(setting.written() + " no longer set", w -> w.setting(setting.written(), "null"));
    }
}
