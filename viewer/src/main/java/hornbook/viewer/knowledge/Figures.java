package hornbook.viewer.knowledge;

import java.math.BigDecimal;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/** Numbers as they are typed. */
final class Figures {
    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private Figures() {}

    /** The number that was typed, with a point or a comma; the words as they stand where they are none. */
    static JsonNode read(String typed) {
        try {
            BigDecimal number = new BigDecimal(typed.strip().replace(',', '.'));
            boolean whole = number.stripTrailingZeros().scale() <= 0 && number.precision() - number.scale() < 16;
            return whole ? NODES.numberNode(number.longValueExact()) : NODES.numberNode(number.doubleValue());
        } catch (NumberFormatException none) {
            return NODES.stringNode(typed);
        }
    }

    /** As it is written in a field. */
    static String written(JsonNode node) {
        return node.isNumber() ? node.decimalValue().stripTrailingZeros().toPlainString() : node.asString("");
    }
}
