package hornbook.viewer.hornmap;

import hornbook.catalogue.hornmap.CupLine;
import hornbook.catalogue.hornmap.Usuals;
import hornbook.shared.job.JobBook;
import hornbook.shared.job.KeyField;
import hornbook.shared.job.Look;
import hornbook.shared.job.MapBook;
import hornbook.shared.job.PadFitted;
import hornbook.shared.measure.LengthUnit;
import hornbook.shared.measure.SizeReader;
import hornbook.shared.pads.Assignment;
import hornbook.shared.pads.Cup;
import hornbook.shared.pads.Pads;
import hornbook.shared.shop.BadInput;
import hornbook.shared.store.Deed;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes down what was read at a cup: one deed a call. Sizes may be written as on any gauge. */
public final class Entering {
    private static final List<String> LEAKS = List.of("none", "hair", "gap");
    private static final BigDecimal LARGEST_MM = new BigDecimal(150);

    private final JobBook jobs;
    private final MapBook maps;
    private final Pads pads;
    private final SizeReader sizes;

    public Entering(JobBook jobs, MapBook maps, Pads pads, SizeReader sizes) {
        this.jobs = jobs;
        this.maps = maps;
        this.pads = pads;
        this.sizes = sizes;
    }

    /** @throws BadInput where what was typed cannot be read */
    Deed enter(String job, CupLine cup, Layer layer, KeyField field, String typed) {
        return switch (layer) {
            case PADS -> pad(job, cup, mm(typed));
            case INSIDES -> read(job, Usuals.INSIDE, cup, typed, false);
            case FOUND -> read(job, Usuals.HEIGHT, cup, typed, false);
            case LEFT -> read(job, Usuals.HEIGHT, cup, typed, true);
            case LEAKS -> jobs.find(job, new Look("finding-leak-light", cup.cup(), leak(typed), "", false, null, ""));
            case KEYS ->
                maps.measure(
                        job,
                        cup.title(),
                        cup.cup(),
                        field,
                        field.millimetres() ? mm(typed).toPlainString() : typed.strip());
        };
    }

    private Deed read(String job, String what, CupLine cup, String typed, boolean left) {
        return jobs.find(job, new Look(what, cup.cup(), mm(typed).toPlainString(), "mm", left, null, as(typed)));
    }

    private BigDecimal mm(String typed) {
        BigDecimal mm = sizes.length(typed.strip(), LengthUnit.MILLIMETRE)
                .found()
                .map(length -> length.millimetres().stripTrailingZeros())
                .orElseThrow(
                        () -> new BadInput("“" + typed.strip() + "” is no size: write it as 31, 1 7/32 in or .108\""));
        if (mm.signum() <= 0 || mm.compareTo(LARGEST_MM) > 0) {
            throw new BadInput(mm.toPlainString() + " mm is no size on a key: look at the unit");
        }
        return mm;
    }

    /** How it was written, where that was not plain millimetres. */
    private static String as(String typed) {
        return typed.strip().matches("[0-9]+([.,][0-9]+)?") ? "" : "as written: " + typed.strip();
    }

    private static String leak(String typed) {
        return LEAKS.stream()
                .filter(word ->
                        !typed.isBlank() && word.startsWith(typed.strip().toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(
                        () -> new BadInput("“" + typed.strip() + "”: write none, hair or gap (n, h or g will do)"));
    }

    /** The pad that was proposed, out of its lot. @throws BadInput where it is gone meanwhile */
    Deed fit(String job, Assignment pad) {
        return jobs.pad(
                job, new PadFitted(pad.cup(), pad.diameter(), pad.size(), pad.thickness(), pad.lot(), "", false));
    }

    /** A pad out of the stack of that size, where the books have one; else written down without taking any. */
    private Deed pad(String job, CupLine cup, BigDecimal size) {
        Optional<String> lot =
                pads.forCups(List.of(new Cup(cup.cup(), size, null, null, null)), false).assignments().stream()
                        .filter(found -> found.size().compareTo(size) == 0)
                        .map(Assignment::lot)
                        .findFirst();
        CupLine.Size inside = cup.inside();
        BigDecimal measured = inside != null && inside.own() ? BigDecimal.valueOf(inside.mm()) : null;
        String note = lot.isPresent() ? "" : "out of no lot: the books have none of that size";
        return jobs.pad(job, new PadFitted(cup.cup(), measured, size, null, lot.orElse(null), note, true));
    }
}
