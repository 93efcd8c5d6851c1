package hornbook.viewer.tools;

import hornbook.shared.shop.MemberState;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.ask.Field;
import hornbook.viewer.ask.Field.Choice;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** What is asked about tools. */
final class ToolQuestions {
    static final Ask ERROR = new Ask(
            "Checked against a known piece",
            "Write it down",
            Field.number("error", "It reads so much too much, mm (-0.01: too little)", ""),
            Field.text("against", "Against what", ""));

    static final Ask PUT = new Ask("Where is it from now on?", "It is there", to());

    static final Ask MORE = new Ask(
            "The set has one more",
            "Write it down",
            Field.text("kind", "What it is: die, tap, drill", ""),
            Field.text("member", "Its size, as M3x0.5", ""));

    static final Ask NEW = new Ask(
            "A tool that is new here",
            "Write it down",
            Field.text("title", "What it is", ""),
            Field.text("serves", "What it is for", ""),
            to());

    private ToolQuestions() {}

    private static Field to() {
        return Field.text("to", "In which drawer or place: label or number", "");
    }

    static Ask member(String member) {
        List<Choice> states = Arrays.stream(MemberState.values())
                .map(state -> state.name().toLowerCase(Locale.ROOT))
                .map(state -> new Choice(state, state.equals("good") ? "good (it is back, or whole again)" : state))
                .toList();
        return new Ask(
                "What became of it?",
                "Note it",
                Field.text("member", "Which of the set, as M3x0.5", member),
                Field.choice("state", "It is", states).holding(member.isEmpty() ? "lent" : "good"),
                Field.text("to", "Lent to whom: a code, never a name", ""));
    }
}
