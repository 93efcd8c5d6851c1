package hornbook.viewer.welcome;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What the first start shows at one moment.
 *
 * @param shop where a shop of one's own will be
 * @param doing what is being done; null while the person chooses
 * @param trouble what went wrong; null where nothing did
 * @param goOn opens the shop although rows were refused; null where that is no question
 */
record WelcomeView(
        Path shop,
        @Nullable String doing,
        @Nullable String trouble,
        @Nullable Runnable goOn) {

    static WelcomeView waiting(Path shop, String trouble) {
        return new WelcomeView(shop, null, trouble.isBlank() ? null : trouble, null);
    }

    WelcomeView busy(String what) {
        return new WelcomeView(shop, what, null, null);
    }

    WelcomeView imported(String told, Runnable open) {
        return new WelcomeView(shop, null, told, open);
    }
}
