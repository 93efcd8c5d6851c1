package hornbook.catalogue.exchange;

import hornbook.catalogue.entry.Catalogue;
import hornbook.shared.exchange.KnowledgeFiles;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/** Reads and writes the files of knowledge of the exchange format. */
public final class KnowledgeSheets implements KnowledgeFiles {
    private static final List<String> NAMES = List.of(
            MakesFile.NAME, SellersFile.NAME, ModelsFile.NAME, LayoutFile.NAME, TakedownFile.NAME, LooksFile.NAME);

    private final Catalogue catalogue;

    /**
     * The files of one shop.
     *
     * @param catalogue what is known now: the entries to write out, and those that rows may add to
     */
    public KnowledgeSheets(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    @Override
    public List<String> names() {
        return NAMES;
    }

    @Override
    public Incoming read(Path folder) {
        Intake intake = new Intake(catalogue);
        new MakesFile().read(folder.resolve(MakesFile.NAME), intake);
        new SellersFile().read(folder.resolve(SellersFile.NAME), intake);
        new ModelsFile().read(folder.resolve(ModelsFile.NAME), intake);
        new LayoutFile().read(folder.resolve(LayoutFile.NAME), intake);
        new TakedownFile().read(folder.resolve(TakedownFile.NAME), intake);
        new LooksFile().read(folder.resolve(LooksFile.NAME), intake);
        return intake.incoming();
    }

    @Override
    public void write(Path folder, Map<String, List<String>> order) throws IOException {
        Sorted sorted = new Sorted(order);
        new MakesFile().write(catalogue, sorted, folder.resolve(MakesFile.NAME));
        new SellersFile().write(catalogue, sorted, folder.resolve(SellersFile.NAME));
        new ModelsFile().write(catalogue, sorted, folder.resolve(ModelsFile.NAME));
        new LayoutFile().write(catalogue, sorted, folder.resolve(LayoutFile.NAME));
        new TakedownFile().write(catalogue, sorted, folder.resolve(TakedownFile.NAME));
        new LooksFile().write(catalogue, sorted, folder.resolve(LooksFile.NAME));
    }
}
