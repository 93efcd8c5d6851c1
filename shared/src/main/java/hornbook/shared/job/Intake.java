package hornbook.shared.job;

import hornbook.shared.shop.BadInput;
import hornbook.shared.shop.Consent;
import hornbook.shared.shop.Horn;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.JobStatus;
import hornbook.shared.shop.PersonCode;
import hornbook.shared.store.Books;
import hornbook.shared.store.Deed;
import hornbook.shared.store.Writing;
import java.util.List;

/** Horns come in. */
public final class Intake {
    private final Books books;

    public Intake(Books books) {
        this.books = books;
    }

    /** Opens a job, and a horn that was not here before. */
    public Deed takeIn(TakeIn in) {
        TakeIn.promisable(in.promised(), books.today());
        return books.write("take in: " + in.complaint(), w -> {
            String horn = in.horn() == null ? newHorn(w, in) : known(in.horn());
            String job = w.nextId(Job.class);
            w.put(new Job(
                    job,
                    horn,
                    in.kind(),
                    books.today(),
                    in.promised(),
                    null,
                    JobStatus.OPEN,
                    in.complaint(),
                    List.of(),
                    null,
                    "",
                    in.quotedMin(),
                    null,
                    in.ownerCode(),
                    in.note()));
            if (in.agreedTo() != null) {
                String by = in.ownerCode() == null ? PersonCode.OWNER : in.ownerCode();
                w.put(new Consent(w.nextId(Consent.class), job, books.today(), in.agreedTo(), by, ""));
            }
        });
    }

    /** The job that was opened. */
    public String job(Deed takenIn) {
        return books.touched(takenIn, Job.class).getFirst();
    }

    private String newHorn(Writing w, TakeIn in) {
        String id = w.nextId(Horn.class);
        w.put(new Horn(
                id,
                "unlisted",
                null,
                in.instrument(),
                in.serial(),
                in.soldAs(),
                null,
                in.ownerCode(),
                books.today(),
                "none",
                "not placed",
                ""));
        return id;
    }

    private String known(String horn) {
        return books.find(Horn.class, horn)
                .map(Horn::id)
                .orElseThrow(() -> new BadInput("there is no horn " + horn + ": leave it out for a new one"));
    }
}
