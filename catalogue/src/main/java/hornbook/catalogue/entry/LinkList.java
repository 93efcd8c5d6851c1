package hornbook.catalogue.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** Gathers what an entry names. */
final class LinkList {
    /** Words of the trade and designations of standards stand beside ids in the meaning of a word. */
    private static final Pattern LOOKS_LIKE_AN_ID =
            Pattern.compile("(?:q|f|k|m|s|tool|sup|part|op|task|stage|finding|caution|practice)-[a-z0-9.-]+");

    private final List<Link> links = new ArrayList<>();

    static List<Link> of(Entry entry) {
        LinkList list = new LinkList();
        switch (entry) {
            case Quirk quirk -> list.quirk(quirk);
            case Fault fault -> list.fault(fault);
            case Model model -> list.model(model);
            case Seller seller -> list.seller(seller);
            case Trait trait -> list.trait(trait);
            case UseOn use -> list.useOn(use);
            case Word word -> list.word(word);
            default -> list.plain(entry);
        }
        return list.links;
    }

    private void plain(Entry entry) {
        switch (entry) {
            case Tool tool -> each("serves", tool.serves());
            case Part part -> fitting(part.fit());
            case Supply supply -> {
                each("hazards", supply.hazards());
                fitting(supply.fit());
            }
            case Operation operation -> {
                each("applies_to", operation.appliesTo());
                each("tools", operation.tools());
            }
            case Task task -> {
                one("stage", task.stage());
                each("usual_with", task.usualWith());
                each("faults", task.faults());
            }
            case SpringChoice spring -> each("cups", spring.cups());
            case Practice practice -> each("stages", practice.stages());
            case Instrument instrument -> value("member", "family-member", instrument.member());
            default -> {}
        }
    }

    private void fitting(@Nullable Fitting fit) {
        if (fit != null) {
            each("fit.never", fit.never());
            fit.blanks().forEach((id, blank) -> {
                one("fit.blanks." + id, id);
                each("fit.blanks." + id + ".through", blank.through());
            });
        }
    }

    private void quirk(Quirk quirk) {
        condition("when", quirk.when());
        one("stage", quirk.stage());
        each("reminded_at", quirk.remindedAt());
        each("tools", quirk.tools().stream().map(Wanted::id).toList());
        each("parts", quirk.parts().stream().map(Wanted::id).toList());
        each("supplies", quirk.supplies().stream().map(Wanted::id).toList());
    }

    private void fault(Fault fault) {
        each("quirks", fault.quirks());
        for (int i = 0; i < fault.causes().size(); i++) {
            String other = fault.causes().get(i).fault();
            if (other != null) {
                one("causes." + (i + 1) + ".fault", other);
            }
        }
    }

    private void model(Model model) {
        one("make", model.make());
        model.instruments().forEach(i -> value("instruments", "family-member", i));
        model.traits().forEach((trait, said) -> {
            one("traits." + trait, trait);
            if (said instanceof Shares(var shares)) {
                shares.keySet().forEach(v -> value("traits." + trait, trait, v));
            }
        });
        model.traitsMany()
                .forEach((trait, chances) -> chances.keySet().forEach(v -> value("traits_many." + trait, trait, v)));
        each("absent", model.absent());
        model.padSet().keySet().forEach(cup -> one("pad_set." + cup, cup));
        model.keyHeights().keySet().forEach(cup -> one("key_heights." + cup, cup));
        each("quirks_known", model.quirksKnown());
        for (int i = 0; i < model.map().size(); i++) {
            String cup = model.map().get(i).cup();
            if (cup != null) {
                one("map." + (i + 1) + ".cup", cup);
            }
        }
    }

    private void seller(Seller seller) {
        for (int i = 0; i < seller.madeBy().size(); i++) {
            String of = seller.madeBy().get(i).of();
            if (!of.equals(MadeBy.UNLISTED)) {
                one("made_by." + (i + 1) + ".of", of);
            }
        }
    }

    private void trait(Trait trait) {
        trait.mistakes().forEach(m -> {
            value("mistakes", trait.id(), m.truth());
            value("mistakes", trait.id(), m.seen());
        });
        if (trait.absentWhen() != null) {
            condition("absent_when", trait.absentWhen());
        }
    }

    private void useOn(UseOn use) {
        if (!use.use().startsWith("process-")) {
            one("use", use.use());
        }
        use.values().forEach(v -> value("values", use.trait(), v));
        if (use.see() != null) {
            one("see", use.see());
        }
    }

    private void word(Word word) {
        for (int i = 0; i < word.meanings().size(); i++) {
            String same = word.meanings().get(i).same();
            int equals = same.indexOf('=');
            if (equals > 0) {
                value("meanings." + (i + 1) + ".same", same.substring(0, equals), same.substring(equals + 1));
            } else if (LOOKS_LIKE_AN_ID.matcher(same).matches()) {
                one("meanings." + (i + 1) + ".same", same);
            }
        }
    }

    private void condition(String field, Condition condition) {
        Conditions.leaves(condition).forEach(leaf -> {
            switch (leaf) {
                case Condition.Is(var trait, var value) -> value(field, trait, value);
                case Condition.Between between -> one(field, between.trait());
                case Condition.Of(var id) -> one(field, id);
                default -> {}
            }
        });
    }

    private void each(String field, List<String> ids) {
        for (int i = 0; i < ids.size(); i++) {
            one(field + "." + (i + 1), ids.get(i));
        }
    }

    private void one(String field, String id) {
        links.add(new Link(field, id));
    }

    private void value(String field, String trait, String value) {
        links.add(new Link(field, trait, value));
    }
}
