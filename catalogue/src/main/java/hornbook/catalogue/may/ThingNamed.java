package hornbook.catalogue.may;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Entry;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Operation;
import hornbook.catalogue.entry.Thing;
import hornbook.catalogue.entry.UseOn;
import hornbook.shared.shop.BadInput;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Finds what is meant by an id or a name. */
final class ThingNamed {
    private final Catalogue catalogue;
    private final Map<String, String> ids = new LinkedHashMap<>();

    ThingNamed(Catalogue catalogue) {
        this.catalogue = catalogue;
        for (Entry entry : catalogue.all()) {
            if (entry instanceof Thing || entry instanceof Operation) {
                names(entry).forEach(name -> ids.putIfAbsent(key(name), entry.id()));
            }
        }
        for (UseOn use : catalogue.all(UseOn.class).values()) {
            ids.putIfAbsent(key(use.use()), use.use());
            ids.putIfAbsent(key(title(use.use())), use.use());
        }
    }

    private static List<String> names(Entry entry) {
        List<String> names = new ArrayList<>(List.of(entry.id(), entry.title()));
        if (entry instanceof Thing thing) {
            names.addAll(thing.otherNames());
        }
        return names;
    }

    private static String key(String name) {
        return name.trim().toLowerCase(Locale.ROOT);
    }

    /** @throws BadInput with the nearest known name */
    String id(String typed) {
        String id = ids.get(key(typed));
        if (id == null) {
            throw new BadInput("“" + typed + "” is no supply, tool or operation known here: "
                    + Nearest.of(key(typed), ids.keySet())
                            .map(n -> "perhaps " + n + " is meant")
                            .orElse("“hornbook find " + typed + "” may show what it is called"));
        }
        return id;
    }

    /** Its name; a process is named by its own word. */
    String title(String id) {
        return catalogue
                .entry(id)
                .map(Entry::title)
                .orElseGet(() -> id.replaceFirst("^process-", "").replace('-', ' '));
    }
}
