package hornbook.indexer.fit;

import hornbook.indexer.fit.Comparison.Relation;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads formulas and checks as entries write them: {@code amt <= 0.20 and (od-to)/2 >= 0.45}. */
final class FormulaReader {
    private static final Pattern TOKEN = Pattern.compile("\\s*(\\d+(?:\\.\\d+)?|[a-z_]+|<=|>=|==|!=|[-+*/()<>])");

    private final String text;
    private final List<String> tokens = new ArrayList<>();
    private int at;

    private FormulaReader(String text) {
        this.text = text;
        Matcher token = TOKEN.matcher(text);
        int end = 0;
        while (end < text.length() && token.find(end) && token.start() == end) {
            tokens.add(token.group(1));
            end = token.end();
        }
        if (!text.substring(end).isBlank()) {
            throw wrong();
        }
    }

    /**
     * @throws BadInput where the text is no formula
     */
    static Formula formula(String text) {
        FormulaReader reader = new FormulaReader(text);
        Formula formula = reader.sum();
        reader.end();
        return formula;
    }

    /**
     * @throws BadInput where the text is no check
     */
    static Check check(String text) {
        FormulaReader reader = new FormulaReader(text);
        List<Comparison> all = new ArrayList<>();
        do {
            all.add(reader.comparison());
        } while (reader.take("and"));
        reader.end();
        return new Check(all);
    }

    private Comparison comparison() {
        int begin = at;
        Formula left = sum();
        Relation relation = relation(next());
        Formula right = sum();
        return new Comparison(left, relation, right, String.join(" ", tokens.subList(begin, at)));
    }

    private Relation relation(String sign) {
        return switch (sign) {
            case "<=" -> Relation.AT_MOST;
            case ">=" -> Relation.AT_LEAST;
            case "<" -> Relation.UNDER;
            case ">" -> Relation.OVER;
            case "==" -> Relation.EQUAL;
            case "!=" -> Relation.UNEQUAL;
            default -> throw wrong();
        };
    }

    private Formula sum() {
        Formula sum = product();
        while (true) {
            if (take("+")) {
                sum = new Formula.Joined(sum, Double::sum, product());
            } else if (take("-")) {
                sum = new Formula.Joined(sum, (a, b) -> a - b, product());
            } else {
                return sum;
            }
        }
    }

    private Formula product() {
        Formula product = single();
        while (true) {
            if (take("*")) {
                product = new Formula.Joined(product, (a, b) -> a * b, single());
            } else if (take("/")) {
                product = new Formula.Joined(product, (a, b) -> a / b, single());
            } else {
                return product;
            }
        }
    }

    private Formula single() {
        String token = next();
        return switch (token) {
            case "(" -> inBrackets();
            case "-" -> new Formula.Applied(a -> -a, single(), false);
            case "ceil" -> new Formula.Applied(Formula::ceil, open(), true);
            case "floor" -> new Formula.Applied(Formula::floor, open(), true);
            case "abs" -> new Formula.Applied(Math::abs, open(), false);
            default -> {
                if (Character.isDigit(token.charAt(0))) {
                    yield new Formula.Constant(Double.parseDouble(token));
                }
                if (!Character.isLetter(token.charAt(0)) || token.equals("and")) {
                    throw wrong();
                }
                yield new Formula.Named(token);
            }
        };
    }

    private Formula open() {
        if (!take("(")) {
            throw wrong();
        }
        return inBrackets();
    }

    private Formula inBrackets() {
        Formula inside = sum();
        if (!take(")")) {
            throw wrong();
        }
        return inside;
    }

    private boolean take(String token) {
        boolean there = at < tokens.size() && tokens.get(at).equals(token);
        at += there ? 1 : 0;
        return there;
    }

    private String next() {
        if (at >= tokens.size()) {
            throw wrong();
        }
        return tokens.get(at++);
    }

    private void end() {
        if (at < tokens.size()) {
            throw wrong();
        }
    }

    private BadInput wrong() {
        return new BadInput("“" + text + "” is no formula: write it like amt <= 0.2 and to >= 3, with + - * / ceil()");
    }
}
