package hornbook.viewer.welcome;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * What the first start shows at one moment.
 *
 * @param shop where a shop of one's own will be
 * @param doing what is being done; null while the person chooses
 * @param trouble what went wrong; null where nothing did
 */
record WelcomeView(
        Path shop, @Nullable String doing, @Nullable String trouble) {

    static WelcomeView waiting(Path shop, String trouble) {
        return new WelcomeView(shop, null, trouble.isBlank() ? null : trouble);
    }

    WelcomeView busy(String what) {
        return new WelcomeView(shop, what, null);
    }
}
