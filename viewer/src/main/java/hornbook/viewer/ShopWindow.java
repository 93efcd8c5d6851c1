package hornbook.viewer;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Cabinet;
import hornbook.shared.shop.ShopUnavailable;
import hornbook.shared.store.Access;
import hornbook.shared.store.Books;
import hornbook.shared.store.Change;
import hornbook.viewer.cli.Folders;
import hornbook.viewer.welcome.WelcomeModel;
import hornbook.viewer.welcome.WelcomePane;
import hornbook.viewer.window.HornbookWindow;
import hornbook.viewer.window.ScreenName;
import hornbook.viewer.window.Shell;
import hornbook.viewer.window.Toolkit;
import hornbook.viewer.work.Ends;
import hornbook.viewer.work.Work;
import hornbook.viewer.workshop.Workshop;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.Collectors;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;

/** The window from its opening to its closing: with a shop in it, or with the choice of one. */
final class ShopWindow implements AutoCloseable {
    private final Folders folders;
    private final Work work = Work.beside(Platform::runLater);

    private @Nullable Workshop workshop;
    private @Nullable Follow follow;

    ShopWindow(Folders folders) {
        this.folders = folders;
    }

    /** Shows it, and returns once it is closed. Books and index are opened while JavaFX starts. */
    void showAndWait(boolean shutAtOnce) {
        CompletableFuture<Optional<Workshop>> opening = CompletableFuture.supplyAsync(this::open);
        Toolkit.showAndWait(() -> fill(opening), shutAtOnce);
    }

    private Optional<Workshop> open() {
        if (!Books.in(folders.shop())) {
            return Optional.empty();
        }
        return Optional.of(Workshop.open(folders.shop(), Access.WRITE_IF_FREE, Optional.empty()));
    }

    private HornbookWindow fill(CompletableFuture<Optional<Workshop>> opening) {
        HornbookWindow window = new HornbookWindow("Hornbook", folders.settings());
        try {
            opening.join().ifPresentOrElse(shop -> present(shop, window), () -> welcome(window, ""));
        } catch (CompletionException thrown) {
            switch (thrown.getCause()) {
                case BadInput told -> welcome(window, told.getMessage());
                case ShopUnavailable told -> welcome(window, told.getMessage());
                case null, default -> throw thrown;
            }
        }
        return window;
    }

    private void present(Workshop opened, HornbookWindow window) {
        boolean bare = opened.books().all(Cabinet.class).isEmpty();
        present(opened, window, bare ? Optional.of(ScreenName.DRAWERS) : Optional.empty());
    }

    private void present(Workshop opened, HornbookWindow window, Optional<ScreenName> first) {
        workshop = opened;
        Shell shell = new Screens(opened, work).shell();
        if (!opened.books().writable()) {
            shell.say("Open to read only: another Hornbook writes in this shop.");
        }
        window.present(shell);
        first.ifPresent(shell::go);
        opened.books()
                .onCommit(changes -> Platform.runLater(() ->
                        shell.changed(changes.stream().map(Change::kind).collect(Collectors.toUnmodifiableSet()))));
        follow = new Follow(opened, work, shell);
        // Opens the index before the first letter is typed.
        work.read(
                progress -> opened.search(),
                new Ends<>(ready -> {}, thrown -> shell.say(String.valueOf(thrown.getMessage()))));
    }

    private void welcome(HornbookWindow window, @Nullable String trouble) {
        WelcomeModel model = new WelcomeModel(
                work,
                folders.shop(),
                folders.demo(),
                trouble == null ? "" : trouble,
                shop -> present(shop, window),
                shop -> present(shop, window, Optional.of(ScreenName.IN_OUT)));
        window.put(new WelcomePane(model));
    }

    @Override
    public void close() {
        if (follow != null) {
            follow.close();
        }
        work.close();
        if (workshop != null) {
            workshop.close();
        }
    }
}
