package hornbook.indexer.card;

import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.PartUsed;
import hornbook.shared.shop.Supplier;
import hornbook.shared.shop.Went;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Cards of horns, jobs and suppliers. */
final class JobCards {
    private static final float HORN = 0.8f;
    private static final float JOB = 0.7f;
    private static final float SUPPLIER = 0.8f;

    private final Names names;

    JobCards(Names names) {
        this.names = names;
    }

    Card horn(Horn horn) {
        String serial = horn.serial().isEmpty() ? "" : ", serial " + horn.serial();
        Draft card = Card.draft("horn", horn.id(), names.of(horn) + serial)
                .say(Field.TEXT, horn.note())
                .say(Field.TEXT, horn.identifiedBy())
                .say(Field.TEXT, horn.yearAbout() == null ? "" : String.valueOf(horn.yearAbout()));
        names.horn(card, horn, 3);
        return card.standing(HORN).shown(Shown.on(text(horn.firstSeen()))).card();
    }

    Card job(Job job, @Nullable Horn horn, List<Finding> findings, List<PartUsed> parts) {
        LocalDate day = job.done() == null ? job.tookIn() : job.done();
        String went = job.went() == null ? "" : ", went " + job.went().name().toLowerCase(Locale.ROOT);
        String of = horn == null ? job.horn() : names.of(horn);
        Draft card = Card.draft("job", job.id(), of + ": " + job.kind() + ", " + day + went)
                .say(Field.GIST, job.complaint())
                .say(Field.GIST, job.wentNote())
                .say(Field.TEXT, job.note())
                .say(Field.TEXT, job.status().name())
                .concept(job.horn(), 4);
        if (horn != null) {
            names.horn(card, horn, 2.5f);
        }
        job.quirksMet().forEach(quirk -> card.concept(quirk, 2).say(Field.TEXT, names.title(quirk)));
        findings.forEach(finding -> finding(card, finding));
        parts.forEach(part -> card.say(Field.TEXT, part.whatFor()).concept(part.lot(), 0.5f));
        return card.standing(JOB).shown(shown(job)).card();
    }

    /** Only what is done can be asked how it went; it has a day. */
    private static Shown shown(Job job) {
        if (job.done() == null) {
            return Shown.NOTHING.remarking(job.status().name().toLowerCase(Locale.ROOT) + ", not done");
        }
        String remark = job.went() == Went.ROUGH && !job.wentNote().isEmpty() ? job.wentNote() : null;
        return Shown.on(job.done().toString()).remarking(remark);
    }

    private static void finding(Draft card, Finding finding) {
        card.concept(finding.what() + "=" + finding.value(), 0.5f).concept(finding.what(), 0.3f);
        card.say(Field.TEXT, finding.note());
    }

    Card supplier(Supplier supplier) {
        return Card.draft("supplier", supplier.id(), supplier.name())
                .say(Field.GIST, supplier.packs())
                .say(Field.TEXT, supplier.place())
                .say(Field.TEXT, supplier.verdict())
                .say(Field.TEXT, supplier.why())
                .say(Field.TEXT, "supplier, delivers")
                .standing(SUPPLIER)
                .card();
    }

    private static @Nullable String text(@Nullable LocalDate day) {
        return day == null ? null : day.toString();
    }
}
