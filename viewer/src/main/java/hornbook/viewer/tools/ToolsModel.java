package hornbook.viewer.tools;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.MemberState;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.stock.MemberLine;
import hornbook.shared.stock.ToolBook;
import hornbook.shared.stock.Tools;
import hornbook.shared.store.Deed;
import hornbook.viewer.ask.Answers;
import hornbook.viewer.ask.Ask;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Latest;
import hornbook.viewer.work.Work;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** Knows where the tools are, and notes what becomes of members of sets, without a widget. */
public final class ToolsModel {
    private final Work work;
    private final Tools tools;
    private final ToolBook book;
    private final Latest asking;
    private Consumer<ToolsView> listener = view -> {};
    private ToolsView view = ToolsView.NOTHING;
    private Consumer<Answers> answered = answers -> {};

    public ToolsModel(Work work, Tools tools, ToolBook book) {
        this.work = work;
        this.tools = tools;
        this.book = book;
        this.asking = work.latest();
    }

    ToolsView view() {
        return view;
    }

    void onChange(Consumer<ToolsView> draw) {
        listener = draw;
        draw.accept(view);
    }

    /** Asks again where everything is. */
    public void refresh() {
        asking.ask(progress -> tools.all(), new Ends<>(all -> show(view.with(all)), this::failed));
    }

    /** Opens one. */
    public void choose(String tool) {
        show(view.choosing(tool));
    }

    /** Asks what became of a member; any of the set where it is not named. */
    void ask(String member) {
        ask(ToolQuestions.member(member), this::became);
    }

    /** Asks how far the open gauge is off. */
    void askError() {
        ask(
                ToolQuestions.ERROR,
                answers -> doing(() -> book.checked(
                        view.chosen(), answers.needed("error", "what it is off"), answers.text("against"))));
    }

    /** Asks where the open tool is from now on. */
    void askPut() {
        ask(ToolQuestions.PUT, answers -> doing(() -> book.put(view.chosen(), answers.needed("to", "where it is"))));
    }

    /** Asks what the open set has more. */
    void askMore() {
        ask(
                ToolQuestions.MORE,
                answers -> doing(() -> book.addMember(
                        view.chosen(), answers.needed("kind", "its kind"), answers.needed("member", "its size"))));
    }

    /** Asks what a tool is that is new in the shop. */
    void askNew() {
        show(view.choosing(""));
        ask(
                ToolQuestions.NEW,
                answers -> doing(() -> book.add(
                        answers.needed("title", "what it is"),
                        answers.text("serves"),
                        answers.needed("to", "where it is"))));
    }

    private void ask(Ask ask, Consumer<Answers> then) {
        answered = then;
        show(view.asking(ask));
    }

    void answer(Answers answers) {
        answered.accept(answers);
    }

    private void became(Answers answers) {
        String set = view.chosen();
        MemberState state = MemberState.valueOf(answers.text("state").toUpperCase(Locale.ROOT));
        doing(() -> state == MemberState.LENT
                ? book.lend(set, answers.needed("member", "which of the set"), answers.needed("to", "to whom"))
                : book.state(set, answers.needed("member", "which of the set"), state));
    }

    /** It is back, or whole again. */
    void good(MemberLine member) {
        String set = view.chosen();
        doing(() -> book.state(set, member.id(), MemberState.GOOD));
    }

    private void doing(Supplier<Deed> deed) {
        work.write(
                progress -> deed.get(),
                new Ends<>(
                        done -> {
                            show(view.asking(null));
                            refresh();
                        },
                        this::failed));
    }

    /** Leaves the question, or the open tool; whether there was one. */
    public boolean back() {
        if (view.ask() == null && view.chosen().isEmpty()) {
            return false;
        }
        show(view.ask() != null ? view.asking(null) : view.choosing(""));
        return true;
    }

    private void failed(Throwable thrown) {
        boolean told = thrown instanceof BadInput || thrown instanceof ShopUnavailable;
        String words = String.valueOf(thrown.getMessage());
        show(view.troubled(told ? words : "This is a fault of Hornbook's own: " + words));
    }

    private void show(ToolsView now) {
        view = now;
        listener.accept(now);
    }
}
