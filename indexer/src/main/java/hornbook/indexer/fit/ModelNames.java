package hornbook.indexer.fit;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Nearest;
import hornbook.shared.shop.BadInput;
import java.util.List;

/** Models by id, or by as many words of their title as tell one from the others. */
final class ModelNames {
    private static final int MOST_NAMED = 5;

    private final Catalogue catalogue;

    ModelNames(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /**
     * @throws BadInput with those it may mean, or the nearest known
     */
    Model find(String typed) {
        List<Model> meant = catalogue.models().values().stream()
                .filter(model -> model.id().equals(typed.strip())
                        || SpokenName.plain(model.title()).equals(SpokenName.plain(typed)))
                .toList();
        if (meant.isEmpty()) {
            meant = catalogue.models().values().stream()
                    .filter(model -> new SpokenName(typed).begins(model.title()))
                    .toList();
        }
        if (meant.size() == 1) {
            return meant.getFirst();
        }
        throw new BadInput("--for “" + typed + "” " + (meant.isEmpty() ? unknown(typed) : several(meant)));
    }

    private String unknown(String typed) {
        return "is no model known here: "
                + Nearest.of(typed, catalogue.models().keySet())
                        .map(near -> "perhaps " + near + " is meant")
                        .orElse("“hornbook find " + typed + "” may show its id");
    }

    private static String several(List<Model> meant) {
        return "may be any of " + meant.size() + " models: "
                + SpokenName.oneOf(
                        meant.stream().limit(MOST_NAMED).map(Model::id).toList());
    }
}
