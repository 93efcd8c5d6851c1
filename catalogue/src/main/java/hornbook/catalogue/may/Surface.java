package hornbook.catalogue.may;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.Nearest;
import hornbook.catalogue.entry.Trait;
import hornbook.catalogue.entry.TraitValue;
import hornbook.shared.shop.BadInput;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the thing would be used on: by trait the values it can have, all of them where it was not looked at. */
record Surface(Map<String, List<String>> can, List<String> assumed) {
    private static final String NOT_SEEN = "unknown";
    private static final String FINISH = "body-finish";
    private static final String LACQUER = "lacquer-type";

    /** @throws BadInput with the nearest known name */
    static Surface of(Map<String, String> on, Catalogue catalogue) {
        Map<String, List<String>> can = new LinkedHashMap<>();
        List<String> assumed = new java.util.ArrayList<>();
        on.forEach((id, value) -> {
            Trait trait = trait(id, catalogue);
            boolean unseen = value.equals(NOT_SEEN) || value.equals("?");
            can.put(id, unseen ? ids(trait) : values(trait, value));
            if (unseen) {
                assumed.add(id);
            }
        });
        lacquered(can, assumed, catalogue);
        return new Surface(can, assumed);
    }

    /** Under a finish that is lacquer its sort counts, and is the worst of them until it is known. */
    private static void lacquered(Map<String, List<String>> can, List<String> assumed, Catalogue catalogue) {
        boolean lacquer = can.getOrDefault(FINISH, List.of()).stream().anyMatch(v -> v.endsWith("lacquer"));
        Trait sort = catalogue.traits().get(LACQUER);
        if (lacquer && sort != null && !can.containsKey(LACQUER)) {
            can.put(LACQUER, ids(sort).stream().filter(v -> !v.equals("none")).toList());
            assumed.add(LACQUER);
        }
    }

    private static List<String> ids(Trait trait) {
        return trait.values().stream().map(TraitValue::id).toList();
    }

    private static Trait trait(String id, Catalogue catalogue) {
        Trait trait = catalogue.traits().get(id);
        if (trait == null) {
            throw new BadInput("trait “" + id + "” is not known: "
                    + Nearest.of(id, catalogue.traits().keySet())
                            .map(n -> "perhaps " + n + " is meant")
                            .orElse("“hornbook find --kind trait” lists them"));
        }
        return trait;
    }

    private static List<String> values(Trait trait, String value) {
        List<String> named = Arrays.stream(value.split("\\|"))
                .map(String::trim)
                .filter(v -> !v.isEmpty())
                .toList();
        for (String one : named) {
            if (trait.value(one).isEmpty()) {
                throw new BadInput(trait.id() + " has no value “" + one + "”: "
                        + Nearest.of(one, ids(trait))
                                .map(n -> "perhaps " + n + " is meant")
                                .orElse("write one of " + String.join(", ", ids(trait))));
            }
        }
        if (named.isEmpty()) {
            throw new BadInput(trait.id() + ": a value is missing: write one of " + String.join(", ", ids(trait)));
        }
        return named;
    }
}
