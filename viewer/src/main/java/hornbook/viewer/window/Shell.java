package hornbook.viewer.window;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;

/** The frame round the screens, and the way from one to another. */
public final class Shell extends BorderPane {
    private final Map<ScreenName, Screen> screens = new EnumMap<>(ScreenName.class);
    private final Visits visits = new Visits(this::bringIntoView);
    private final SearchBox search = new SearchBox();
    private final Map<KeyCode, Runnable> deeds = new EnumMap<>(KeyCode.class);
    private final TopBar top;
    private final Rail rail;
    private final VBox foot = new VBox();
    private final InView inView = new InView();
    private Consumer<String> reader = code -> {};
    private Runnable takingBack = () -> {};

    /**
     * @param title whose shop it is
     * @param all the screens there are; the first is shown
     */
    public Shell(String title, List<Screen> all) {
        getStyleClass().add("shell");
        all.forEach(screen -> screens.put(screen.name(), screen));
        rail = new Rail(List.copyOf(screens.keySet()), this::go);
        top = new TopBar(title, search);
        // The screens come first: where nobody asked for the keyboard it is theirs.
        setCenter(inView);
        setTop(top);
        setLeft(rail);
        setBottom(foot);
        new KeyboardKeeper(inView, () -> visits.now().map(this::screen).ifPresent(this::giveKeyboard));
        all.stream()
                .filter(Searching.class::isInstance)
                .map(Searching.class::cast)
                .findFirst()
                .ifPresent(this::searchWith);
        if (!all.isEmpty()) {
            go(all.getFirst().name());
        }
    }

    private void searchWith(Searching screen) {
        search.guides(screen);
        search.onTyped(text -> {
            if (!text.isBlank()) {
                go(screen.name());
            }
            screen.typed(text);
        });
    }

    /** Shows a screen, if there is one of that name. */
    public void go(ScreenName name) {
        if (screens.containsKey(name)) {
            visits.go(name);
        }
    }

    /** One step back: inside the screen, then the text in the box, then to the screen before. */
    void back() {
        boolean within = visits.now().map(this::screen).map(Screen::back).orElse(false);
        if (within) {
            return;
        }
        if (!search.text().isEmpty()) {
            search.clear();
            search.focus();
        } else {
            visits.back();
        }
    }

    SearchBox search() {
        return search;
    }

    TopBar topBar() {
        return top;
    }

    /** Tells the screen in view that the shop changed; the others ask again when they are shown. */
    public void changed(Set<String> kinds) {
        visits.now().map(this::screen).ifPresent(screen -> screen.changed(kinds));
    }

    /** Says something below everything that holds as long as the window is open. */
    public void say(String words) {
        Label strip = new Label(words);
        strip.getStyleClass().add("strip");
        strip.setMaxWidth(Double.MAX_VALUE);
        foot(strip);
    }

    /** Puts something below every screen. */
    public void foot(Node node) {
        foot.getChildren().add(node);
    }

    /** Who is told the code of a label that was read, from whatever screen. */
    public void onScan(Consumer<String> told) {
        reader = told;
    }

    void scanned(String code) {
        reader.accept(code);
    }

    /** Who takes back what was done last. */
    public void onTakeBack(Runnable takeBack) {
        takingBack = takeBack;
    }

    void takeBack() {
        takingBack.run();
    }

    /** What Ctrl and a key does from whatever screen; to be told before the window shows the shell. */
    public void onControl(KeyCode key, Runnable act) {
        deeds.put(key, act);
    }

    Map<KeyCode, Runnable> deeds() {
        return deeds;
    }

    private Screen screen(ScreenName name) {
        return Objects.requireNonNull(screens.get(name));
    }

    private void bringIntoView(ScreenName name) {
        Screen screen = screen(name);
        inView.show(screen.node());
        rail.mark(name);
        screen.shown();
        boolean typing = search.hasKeyboard() && screen instanceof Searching;
        if (!typing) {
            giveKeyboard(screen);
        }
    }

    /** What answers the box has its keyboard there. */
    private void giveKeyboard(Screen screen) {
        if (screen instanceof Searching) {
            search.focus();
        } else {
            // What the screen gives it to may not be there yet: then the screen itself has it.
            screen.node().requestFocus();
            screen.takeKeyboard();
        }
    }
}
