package hornbook.indexer.card;

import hornbook.catalogue.entry.Catalogue;
import hornbook.catalogue.entry.MadeBy;
import hornbook.catalogue.entry.Make;
import hornbook.catalogue.entry.Model;
import hornbook.catalogue.entry.Seller;
import hornbook.catalogue.entry.Shares;
import hornbook.catalogue.entry.TakingDown;
import hornbook.catalogue.entry.Years;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Cards of makes, sellers and models: who made a horn, and under what names it was sold. */
final class HornCards {
    private static final float USUAL = 0.5f;

    private final Catalogue catalogue;

    HornCards(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    Draft make(Make make) {
        Draft card = Card.draft("make", make.id(), make.title())
                .say(Field.NAME, make.otherNames())
                .say(Field.TEXT, make.place())
                .say(Field.TEXT, make.notes())
                .say(Field.TEXT, years(make.years()));
        for (Seller seller : catalogue.sellers().values()) {
            double share = seller.madeBy().stream()
                    .filter(behind -> makes(behind, make.id()))
                    .mapToDouble(MadeBy::weight)
                    .sum();
            sold(card, seller, share);
        }
        return card;
    }

    private boolean makes(MadeBy behind, String make) {
        return catalogue.models().values().stream()
                .anyMatch(model -> behind.covers(model.id()) && model.make().equals(make));
    }

    private static void sold(Draft card, Seller seller, double share) {
        if (share > 0) {
            card.concept(seller.id(), (float) (2 * share)).say(Field.TEXT, "sold as " + seller.title());
        }
    }

    Draft seller(Seller seller) {
        Draft card = Card.draft("seller", seller.id(), seller.title())
                .say(Field.TEXT, seller.howKnown())
                .say(Field.TEXT, years(seller.years()));
        catalogue
                .models()
                .values()
                .forEach(model -> behind(seller, model.id())
                        .ifPresent(behind -> card.link(model.id(), (float) behind.weight())
                                .beside(Map.of(model.id(), (float) behind.weight()))
                                .say(Field.TEXT, model.title())));
        return card;
    }

    private static Optional<MadeBy> behind(Seller seller, String model) {
        return seller.madeBy().stream().filter(behind -> behind.covers(model)).findFirst();
    }

    Draft model(Model model) {
        Draft card = Card.draft("model", model.id(), model.title())
                .say(Field.NAME, makeName(model.make()))
                .say(Field.NAME, model.pattern())
                .say(Field.TEXT, years(model.years()))
                .say(Field.TEXT, model.notes())
                .concept(model.make(), 3)
                .runs(model.serialRanges());
        model.instruments().forEach(instrument -> card.concept("family-member=" + instrument, 3));
        model.threads().forEach((use, thread) -> card.say(Field.TEXT, use + " " + thread));
        model.quirksKnown().forEach(quirk -> card.link(quirk, 0.3f));
        model.traits().forEach((trait, known) -> {
            if (known instanceof Shares shares) {
                shares.of().forEach((value, share) -> usual(card, trait, value, share));
            }
        });
        for (TakingDown step : model.takingDown()) {
            card.say(Field.TEXT, step.piece() + " " + step.how());
        }
        catalogue
                .sellers()
                .values()
                .forEach(seller -> behind(seller, model.id()).ifPresent(behind -> sold(card, seller, behind.weight())));
        return card;
    }

    private static void usual(Draft card, String trait, String value, double share) {
        if (share >= USUAL) {
            card.concept(trait + "=" + value, (float) (0.4 * share));
        }
    }

    private String makeName(String make) {
        Make known = catalogue.makes().get(make);
        return known == null ? "" : known.title();
    }

    private static String years(@Nullable Years years) {
        return years == null
                ? ""
                : (years.from() == null ? "" : years.from()) + " to " + (years.to() == null ? "" : years.to());
    }
}
