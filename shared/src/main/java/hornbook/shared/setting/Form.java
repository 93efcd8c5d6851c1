package hornbook.shared.setting;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What kind of value a setting has: what a person writes, what stands in the file, and what is neither. */
enum Form {
    TEXT("a few words") {
        @Override
        Optional<String> value(String typed) {
            return Optional.of(typed).filter(text -> !text.isBlank());
        }
    },
    MONEY("money from 0 up, as 42 or 42.50") {
        @Override
        Optional<String> value(String typed) {
            return between(typed, BigDecimal.ZERO, BigDecimal.valueOf(1_000_000));
        }
    },
    SHARE("a share from 0 to 1, as 0.15") {
        @Override
        Optional<String> value(String typed) {
            return between(typed, BigDecimal.ZERO, BigDecimal.ONE);
        }
    },
    LEVEL("a chance from 0.5 to 0.999, as 0.95") {
        @Override
        Optional<String> value(String typed) {
            return between(typed, new BigDecimal("0.5"), new BigDecimal("0.999"));
        }
    },
    DAYS("whole days from 1 to 92") {
        @Override
        Optional<String> value(String typed) {
            return between(typed, BigDecimal.ONE, BigDecimal.valueOf(92)).filter(days -> days.matches("\\d+"));
        }
    },
    UP_OR_DOWN("up or down") {
        @Override
        Optional<String> value(String typed) {
            return Optional.of(typed.toLowerCase(java.util.Locale.ROOT)).filter(word -> word.matches("up|down"));
        }
    },
    DAY("a day as 2026-09-30") {
        @Override
        Optional<String> value(String typed) {
            try {
                return Optional.of(LocalDate.parse(typed).toString());
            } catch (DateTimeException noDay) {
                return Optional.empty();
            }
        }
    },
    BY_SUPPLIER("a supplier and money, as sup-v-marlbeck=40; several with a space between") {
        @Override
        Optional<String> value(String typed) {
            Map<String, BigDecimal> money = money(typed);
            String all = money.entrySet().stream()
                    .map(one -> one.getKey() + "=" + one.getValue().toPlainString())
                    .collect(Collectors.joining(" "));
            // What was left over after the pairs is no pair.
            boolean clean =
                    !money.isEmpty() && PAIR.matcher(typed).replaceAll("").matches("[\\s,;]*");
            return Optional.of(all).filter(text -> clean);
        }
    };

    private static final Pattern PAIR = Pattern.compile("(sup-[a-z0-9-]+)\\s*=\\s*(\\d+(?:\\.\\d+)?)(?![\\w.])");
    private static final JsonMapper JSON = new JsonMapper();

    private final String words;

    Form(String words) {
        this.words = words;
    }

    String words() {
        return words;
    }

    /** What was typed, put straight; empty where it is no such value. */
    abstract Optional<String> value(String typed);

    /** The JSON of what was typed; empty where it is no such value. */
    Optional<String> json(String typed) {
        return value(typed).map(value -> switch (this) {
            case MONEY, SHARE, LEVEL, DAYS -> value;
            case BY_SUPPLIER -> JSON.writeValueAsString(money(value));
            default -> JSON.writeValueAsString(value);
        });
    }

    /** What stands in the file, as a person writes it; a number may stand there as text. Empty where it is none. */
    Optional<String> said(String json) {
        try {
            JsonNode node = JSON.readTree(json);
            if (node.isNumber()) {
                return value(json.strip());
            }
            String text = node.isObject()
                    ? node.properties().stream()
                            .map(one -> one.getKey() + "=" + one.getValue().asString())
                            .collect(Collectors.joining(" "))
                    : node.asString();
            return value(text);
        } catch (JacksonException broken) {
            return Optional.empty();
        }
    }

    /** Money by supplier, of what a person wrote. */
    static Map<String, BigDecimal> money(String typed) {
        Map<String, BigDecimal> money = new LinkedHashMap<>();
        Matcher pairs = PAIR.matcher(typed);
        while (pairs.find()) {
            money.put(pairs.group(1), new BigDecimal(pairs.group(2)));
        }
        return money;
    }

    private static Optional<String> between(String typed, BigDecimal least, BigDecimal most) {
        try {
            BigDecimal number = new BigDecimal(typed.replace(',', '.'));
            boolean within = number.compareTo(least) >= 0 && number.compareTo(most) <= 0;
            return Optional.of(number.toPlainString()).filter(text -> within);
        } catch (NumberFormatException noNumber) {
            return Optional.empty();
        }
    }
}
