package hornbook.viewer.window;

import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/**
 * The keyboard of the whole window: Ctrl+K or / to the search box, Alt and a digit to the screens, Esc back, Ctrl+Z to
 * take back, Ctrl with plus, minus and 0 for the size of type; and the reader of label codes, which types like one.
 */
final class Keys {
    private static final double A_STEP = 1.1;

    private final Scene scene;
    private final Shell shell;
    private final Dress dress;
    private final Scan scan = new Scan();

    Keys(Scene scene, Shell shell, Dress dress) {
        this.scene = scene;
        this.shell = shell;
        this.dress = dress;
    }

    void install() {
        on(KeyCode.K, shell.search()::focus);
        shell.deeds().forEach(this::on);
        for (ScreenName name : ScreenName.values()) {
            KeyCode digit = KeyCode.getKeyCode(Integer.toString(name.digit()));
            scene.getAccelerators().put(new KeyCodeCombination(digit, KeyCombination.ALT_DOWN), () -> shell.go(name));
        }
        on(KeyCode.PLUS, () -> zoom(A_STEP));
        on(KeyCode.EQUALS, () -> zoom(A_STEP));
        on(KeyCode.ADD, () -> zoom(A_STEP));
        on(KeyCode.MINUS, () -> zoom(1 / A_STEP));
        on(KeyCode.SUBTRACT, () -> zoom(1 / A_STEP));
        on(KeyCode.DIGIT0, () -> dress.change(dress.settings().unzoomed()));
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::scanned);
        scene.addEventFilter(KeyEvent.KEY_TYPED, this::scanning);
        scene.addEventFilter(KeyEvent.KEY_PRESSED, this::takingBack);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        scene.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
    }

    private void on(KeyCode key, Runnable act) {
        scene.getAccelerators().put(new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN), act);
    }

    private void zoom(double factor) {
        dress.change(dress.settings().zoomed(factor));
    }

    private void scanning(KeyEvent key) {
        if (key.getCharacter().length() != 1
                || Character.isISOControl(key.getCharacter().charAt(0))) {
            return;
        }
        boolean before = scan.reading(now());
        if (scan.typed(key.getCharacter().charAt(0), now())) {
            key.consume();
            if (!before) {
                takeOutName();
            }
        }
    }

    /** What the reader wrote into a field before it was known to be one. */
    private void takeOutName() {
        if (scene.getFocusOwner() instanceof TextInputControl field) {
            int end = field.getCaretPosition();
            int start = end - Scan.NAME.length();
            if (start >= 0 && field.getText(start, end).equals(Scan.NAME)) {
                field.deleteText(start, end);
            }
        }
    }

    private void scanned(KeyEvent key) {
        if (!scan.reading(now())) {
            return;
        }
        key.consume();
        switch (key.getCode()) {
            case ENTER, TAB -> scan.ended(now()).ifPresent(shell::scanned);
            case ESCAPE -> scan.ended(now());
            default -> {}
        }
    }

    private static long now() {
        return System.currentTimeMillis();
    }

    /** Inside a text it takes back what was typed there, as everywhere. */
    private void takingBack(KeyEvent key) {
        boolean writing = scene.getFocusOwner() instanceof TextInputControl field && field.isUndoable();
        if (key.getCode() == KeyCode.Z && key.isShortcutDown() && !key.isShiftDown() && !writing) {
            shell.takeBack();
            key.consume();
        }
    }

    private void pressed(KeyEvent key) {
        if (key.getCode() == KeyCode.ESCAPE) {
            shell.back();
            key.consume();
        }
    }

    /** By the sign, not the key: a slash is elsewhere on other keyboards. Inside a text it stays a slash. */
    private void typed(KeyEvent key) {
        boolean writing = scene.getFocusOwner() instanceof TextInputControl field
                && !(shell.search().has(field) && field.getText().isEmpty());
        if ("/".equals(key.getCharacter()) && !writing) {
            shell.search().focus();
            key.consume();
        }
    }
}
