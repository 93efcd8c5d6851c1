package hornbook.shared.shop;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/**
 * What a photo shows; the picture itself is kept by the SHA-256 of its content.
 *
 * @param sha 64 hexadecimal digits
 * @param kept how the file ends: {@code jpg} or {@code png}
 */
public record Photo(
        String id,
        String sha,
        String kept,
        @Nullable String job,
        @Nullable String horn,
        @Nullable LocalDate taken,
        LocalDate added,
        String word)
        implements ShopRecord {}
