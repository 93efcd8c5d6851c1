package hornbook.shared.pads;

import hornbook.shared.shop.Finding;
import hornbook.shared.shop.Job;
import hornbook.shared.shop.PadUsed;
import hornbook.shared.shop.ShopTool;
import hornbook.shared.store.Books;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** The cups of open jobs that were measured and have no pad yet; readings less the known error of their tool. */
final class MeasuredCups {
    private static final String INSIDE = "finding-cup-id";
    private static final String THICKNESS = "finding-pad-thickness";

    private final Books books;
    private final Millimetres sizes;
    private final List<Cup> cups = new ArrayList<>();
    private final List<String> remarks = new ArrayList<>();
    private final Map<String, BigDecimal> errors = new HashMap<>();

    MeasuredCups(Books books, Millimetres sizes) {
        this.books = books;
        this.sizes = sizes;
        books.all(Job.class).stream().filter(job -> job.status().onBench()).forEach(this::read);
    }

    List<Cup> cups() {
        return cups;
    }

    /** Jobs with such cups, in the order taken in. */
    Set<String> jobs() {
        return cups.stream()
                .flatMap(cup -> Optional.ofNullable(cup.job()).stream())
                .collect(Collectors.toCollection(java.util.LinkedHashSet::new));
    }

    List<String> remarks() {
        return remarks;
    }

    private void read(Job job) {
        List<Finding> findings = books.where(Finding.class, "job", job.id()).stream()
                .sorted(Comparator.comparing(Finding::date))
                .toList();
        Map<String, BigDecimal> inside = latest(findings, INSIDE);
        Map<String, BigDecimal> thickness = latest(findings, THICKNESS);
        Set<String> fitted = inside.isEmpty()
                ? Set.of()
                : books.where(PadUsed.class, "job", job.id()).stream()
                        .map(PadUsed::cup)
                        .collect(Collectors.toSet());
        inside.forEach((cup, mm) -> {
            if (!fitted.contains(cup)) {
                cups.add(new Cup(cup, mm, job.id(), thickness.getOrDefault(cup, thickness.get("")), null));
            }
        });
    }

    /** By cup; a later reading replaces an earlier one. */
    private Map<String, BigDecimal> latest(List<Finding> findings, String what) {
        Map<String, BigDecimal> readings = new LinkedHashMap<>();
        for (Finding finding : findings) {
            if (finding.what().equals(what)) {
                reading(finding).ifPresent(mm -> readings.put(finding.where(), mm));
            }
        }
        return readings;
    }

    private Optional<BigDecimal> reading(Finding finding) {
        Optional<BigDecimal> mm = sizes.read(finding.value() + " " + finding.unit())
                .found()
                .map(read -> read.subtract(error(finding.tool())));
        boolean usable = mm.filter(read ->
                        read.signum() > 0 && read.compareTo(BigDecimal.valueOf(HalfSize.MOST / 2 + 1)) < 0)
                .isPresent();
        if (!usable) {
            remarks.add("finding %s: “%s %s” is no size of a cup or pad and was left out: measure again"
                    .formatted(finding.id(), finding.value(), finding.unit()));
        }
        return usable ? mm : Optional.empty();
    }

    private BigDecimal error(@Nullable String tool) {
        return tool == null ? BigDecimal.ZERO : errors.computeIfAbsent(tool, this::known);
    }

    private BigDecimal known(String tool) {
        return books.find(ShopTool.class, tool)
                .map(ShopTool::errorMm)
                .filter(error -> error.strip().matches("[+-]?\\d{1,2}(\\.\\d{1,4})?"))
                .map(error -> new BigDecimal(error.strip()))
                .orElse(BigDecimal.ZERO);
    }
}
