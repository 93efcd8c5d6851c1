package hornbook.viewer;

import hornbook.viewer.demo.DemoShop;
import hornbook.viewer.window.Fx;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.window.Shell;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.event.EventDispatchChain;
import javafx.event.EventDispatcher;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * What the window's thread is held up by while somebody works in the demo shop by keys: how long each key pressed, and
 * each answer shown, keeps it, in processor time: {@code [MINUTES] [SEED]}.
 */
final class HandlersBench {
    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static final List<String> QUERIES = List.of(
            "corvane disc 19",
            "siezed pivot",
            "how did the last chantreval halyard go",
            ".108 in rod",
            "pad 31.5",
            "two-pin spaner",
            "octave slide halverick",
            "3-48 screw",
            "low Eb pad",
            "gis klappe klebt");
    private static final List<KeyCode> WALK = List.of(
            KeyCode.DOWN,
            KeyCode.DOWN,
            KeyCode.UP,
            KeyCode.TAB,
            KeyCode.TAB,
            KeyCode.DOWN,
            KeyCode.RIGHT,
            KeyCode.LEFT,
            KeyCode.TAB,
            KeyCode.DOWN,
            KeyCode.ESCAPE);
    /** Elsewhere a letter is a deed, and Enter may open the system's own dialogs. */
    private static final Set<ScreenName> WORDS = EnumSet.of(ScreenName.FIND, ScreenName.KNOWLEDGE, ScreenName.FIT);

    private record Held(double ms, String by) {}

    private final List<Held> held = new ArrayList<>();
    private final Random random;
    private String now = "";

    private HandlersBench(long seed) {
        random = new Random(seed);
    }

    public static void main(String[] line) throws Exception {
        double minutes = line.length > 0 ? Double.parseDouble(line[0]) : 10;
        new HandlersBench(line.length > 1 ? Long.parseLong(line[1]) : 1).run(minutes);
        System.exit(0);
    }

    private void run(double minutes) throws Exception {
        Fx.start();
        Path folder = Files.createTempDirectory("handlers");
        Workshop shop = DemoShop.in(folder.resolve("shop"));
        Work work = Work.beside(answer -> Platform.runLater(() -> time("answer in " + now, answer)));
        HornbookWindow[] window = new HornbookWindow[1];
        Shell shell = Fx.on(() -> {
            window[0] = new HornbookWindow("Hornbook", folder.resolve("look"));
            Shell made = new Screens(shop, work).shell();
            window[0].present(made);
            window[0].show();
            watch(window[0].stage().getScene());
            return made;
        });
        Fx.settle();
        long end = System.nanoTime() + (long) (minutes * 60e9);
        int rounds = 0;
        while (System.nanoTime() < end) {
            for (ScreenName screen : ScreenName.values()) {
                go(shell, screen);
                if (WORDS.contains(screen)) {
                    words(window[0].stage().getScene());
                }
                walk(window[0].stage().getScene());
            }
            rounds++;
            if (rounds == 1) {
                // What is done for the first time loads classes and is told apart.
                report("first round");
                held.clear();
            }
        }
        report(rounds - 1 + " further rounds");
    }

    private void go(Shell shell, ScreenName screen) {
        now = screen.title();
        Fx.run(() -> time("open " + now, () -> shell.go(screen)));
        Fx.settle();
    }

    private void words(Scene scene) throws InterruptedException {
        for (char letter : QUERIES.get(random.nextInt(QUERIES.size())).toCharArray()) {
            send(scene, KeyEvent.KEY_TYPED, KeyCode.UNDEFINED, String.valueOf(letter));
        }
        Thread.sleep(60);
        send(scene, KeyEvent.KEY_PRESSED, KeyCode.ENTER, "");
        Thread.sleep(60);
    }

    private void walk(Scene scene) throws InterruptedException {
        for (KeyCode key : WALK) {
            send(scene, KeyEvent.KEY_PRESSED, key, "");
            send(scene, KeyEvent.KEY_RELEASED, key, "");
        }
        Thread.sleep(60);
        Fx.settle();
    }

    private static void send(Scene scene, EventType<KeyEvent> type, KeyCode key, String letter) {
        Fx.run(() -> {
            Node focus = scene.getFocusOwner();
            Event.fireEvent(
                    focus == null ? scene : focus, new KeyEvent(type, letter, letter, key, false, false, false, false));
        });
    }

    private void watch(Scene scene) {
        EventDispatcher usual = scene.getEventDispatcher();
        scene.setEventDispatcher((Event event, EventDispatchChain tail) -> {
            long begin = CLOCK.getCurrentThreadCpuTime();
            Event left = usual.dispatchEvent(event, tail);
            note(
                    begin,
                    event instanceof KeyEvent key ? key.getEventType() + " " + key.getCode() + " in " + now : "other");
            return left;
        });
    }

    private void time(String by, Runnable act) {
        long begin = CLOCK.getCurrentThreadCpuTime();
        act.run();
        note(begin, by);
    }

    private void note(long begin, String by) {
        held.add(new Held((CLOCK.getCurrentThreadCpuTime() - begin) / 1e6, by));
    }

    private void report(String what) {
        List<Held> sorted =
                held.stream().sorted(Comparator.comparingDouble(Held::ms)).toList();
        System.out.printf(
                Locale.ROOT,
                "%s: %d times held; p50 %.2f, p99 %.1f, p99.9 %.1f, worst %.1f ms%n",
                what,
                sorted.size(),
                at(sorted, 0.5),
                at(sorted, 0.99),
                at(sorted, 0.999),
                sorted.getLast().ms());
        sorted.reversed().stream()
                .limit(12)
                .forEach(one -> System.out.printf(Locale.ROOT, "  %6.1f ms %s%n", one.ms(), one.by()));
    }

    private static double at(List<Held> sorted, double share) {
        return sorted.get((int) Math.min(sorted.size() - 1L, Math.round(share * sorted.size())))
                .ms();
    }
}
