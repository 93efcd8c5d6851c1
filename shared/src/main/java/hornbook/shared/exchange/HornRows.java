package hornbook.shared.exchange;

import hornbook.shared.shop.Horn;
import hornbook.shared.store.Writing;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Horns, as a list of them tells what they are. */
final class HornRows implements SheetRows {
    private static final String UNLISTED = "unlisted";
    private static final Pattern SHORTENED = Pattern.compile("\\d([.,]\\d+)?[eE]\\+\\d+");

    private final Names names;
    private final Owners owners;
    private final LocalDate today;
    private final List<String> remarks;

    HornRows(Names names, Owners owners, LocalDate today, List<String> remarks) {
        this.names = names;
        this.owners = owners;
        this.today = today;
        this.remarks = remarks;
    }

    @Override
    public void take(Writing writing, Cells cells) {
        String instrument = cells.needed("instrument").toLowerCase(Locale.ROOT);
        String make = cells.cell("make");
        String model = cells.cell("model");
        Optional<String> makeId = make.isEmpty() ? Optional.empty() : names.make(make);
        Optional<String> modelId = model.isEmpty() ? Optional.empty() : names.model(make, model, instrument);
        String asText = Stream.of(makeId.isPresent() ? "" : make, modelId.isPresent() ? "" : model)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" "));
        if (cells.cell("id").isEmpty()) {
            refuseStanding(writing, instrument, cells.cell("serial"));
        }
        String id = NewIds.of(writing, Horn.class, cells.cell("id"));
        if (!asText.isEmpty()) {
            remarks.add("horn " + id + ": “" + asText + "” is not known here and was taken as text");
        }
        writing.put(new Horn(
                id,
                modelId.orElse(UNLISTED),
                makeId.orElse(null),
                instrument,
                serial(cells.cell("serial")),
                null,
                null,
                owners.code(writing, cells.cell("owner")),
                today,
                "owner's list",
                modelId.isPresent() ? "likely" : "unsure",
                Stream.of(asText.isEmpty() ? "" : "listed as " + asText, cells.cell("note"))
                        .filter(part -> !part.isEmpty())
                        .collect(Collectors.joining("; "))));
    }

    /** Without numbers a list that comes in twice would double every horn on it whose serial is known. */
    private static void refuseStanding(Writing writing, String instrument, String serial) {
        if (serial.isEmpty()) {
            return;
        }
        writing.where(Horn.class, "serial", serial).stream()
                .filter(horn -> horn.instrument().equals(instrument))
                .findFirst()
                .ifPresent(horn -> {
                    throw new CellRefused(
                            "serial",
                            "“" + serial + "” is in the books already as " + horn.id()
                                    + ": leave the row out, or give it a number of its own in a column id");
                });
    }

    /** Spreadsheet programs shorten long numbers, and what was left out is lost. */
    private static String serial(String cell) {
        if (SHORTENED.matcher(cell).matches()) {
            throw new CellRefused(
                    "serial",
                    "“" + cell
                            + "” was shortened by a spreadsheet program: write it in full, and set the column to text");
        }
        return cell;
    }
}
