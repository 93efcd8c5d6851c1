package hornbook.shared.shop;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * One column: a component's name in snake case and its type.
 *
 * @param optional may the cell be empty, whatever the type
 */
public record Column(String name, Class<?> type, boolean optional, Method reader) {

    static Column of(RecordComponent part) {
        boolean optional = part.getAnnotatedType().isAnnotationPresent(Nullable.class);
        return new Column(snake(part.getName()), part.getType(), optional, part.getAccessor());
    }

    private static String snake(String camel) {
        return camel.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    /** Does the database keep it as a whole number? */
    public boolean whole() {
        return type == int.class || type == Integer.class;
    }

    String written(ShopRecord value) {
        Object part;
        try {
            part = reader.invoke(value);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
        return switch (part) {
            case null -> "";
            case Boolean yes -> yes ? "yes" : "";
            case Enum<?> word when !(part instanceof Count) -> word(word);
            case Count count -> count.written();
            case BigDecimal number -> number.toPlainString();
            case List<?> list -> list.stream().map(String::valueOf).collect(Collectors.joining(";"));
            default -> part.toString();
        };
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    @Nullable
    Object read(String cell) {
        if (cell.isEmpty() && optional) {
            return null;
        }
        if (type == String.class) {
            return cell;
        } else if (whole()) {
            return whole(cell);
        } else if (type == LocalDate.class) {
            return date(cell);
        } else if (type == LocalDateTime.class) {
            return moment(cell);
        } else if (type == BigDecimal.class) {
            return decimal(cell);
        } else if (type == List.class) {
            return cell.isEmpty() ? List.of() : List.of(cell.split(";"));
        } else if (type == boolean.class) {
            return yes(cell);
        } else if (type == Count.class) {
            return Count.read(cell).orElseThrow(() -> bad(cell, "a whole number, or few, some or plenty"));
        }
        return word(cell);
    }

    private Integer whole(String cell) {
        try {
            return Integer.valueOf(cell);
        } catch (NumberFormatException e) {
            throw bad(cell, "a whole number");
        }
    }

    private LocalDate date(String cell) {
        try {
            return LocalDate.parse(cell);
        } catch (DateTimeException e) {
            throw bad(cell, "a day as 2026-09-30");
        }
    }

    private LocalDateTime moment(String cell) {
        try {
            return LocalDateTime.parse(cell);
        } catch (DateTimeException e) {
            throw bad(cell, "a day and time as 2026-09-30T14:05");
        }
    }

    private BigDecimal decimal(String cell) {
        try {
            BigDecimal number = new BigDecimal(cell);
            if (Math.abs((long) number.scale()) > 12 || number.precision() > 24) {
                throw bad(cell, "a number of usual size, as 2.5");
            }
            return number;
        } catch (NumberFormatException e) {
            throw bad(cell, "a number as 2.5");
        }
    }

    private Boolean yes(String cell) {
        return switch (cell) {
            case "yes" -> true;
            case "", "no" -> false;
            default -> throw bad(cell, "yes, or nothing");
        };
    }

    private Object word(String cell) {
        Object[] words = type.getEnumConstants();
        return Arrays.stream(words)
                .filter(w -> word((Enum<?>) w).equals(cell))
                .findFirst()
                .orElseThrow(() -> bad(
                        cell,
                        "one of "
                                + Arrays.stream(words)
                                        .map(w -> word((Enum<?>) w))
                                        .collect(Collectors.joining(", "))));
    }

    private BadCell bad(String cell, String wanted) {
        return new BadCell(name, cell.isEmpty() ? "is empty: write " + wanted : "“" + cell + "” is not " + wanted);
    }
}
