package hornbook.indexer.fit;

import hornbook.shared.shop.TaskTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Minutes of operations that this shop clocked by their own ids: the median for one piece, from three on. */
final class OwnMinutes {
    private static final int ENOUGH = 3;

    private OwnMinutes() {}

    static Minutes of(List<TaskTime> times) {
        Map<String, List<Double>> clocked = times.stream()
                .filter(time -> time.task().startsWith("op-") && time.count() > 0 && time.minutes() > 0)
                .collect(Collectors.groupingBy(
                        TaskTime::task,
                        TreeMap::new,
                        Collectors.mapping(time -> (double) time.minutes() / time.count(), Collectors.toList())));
        return new Minutes(clocked.entrySet().stream()
                .filter(entry -> entry.getValue().size() >= ENOUGH)
                .collect(Collectors.toMap(Map.Entry::getKey, entry -> median(entry.getValue()))));
    }

    private static double median(List<Double> values) {
        List<Double> sorted = values.stream().sorted().toList();
        int half = sorted.size() / 2;
        return sorted.size() % 2 == 1 ? sorted.get(half) : (sorted.get(half - 1) + sorted.get(half)) / 2;
    }
}
