package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Model;
import java.util.List;

/** How often each entry comes through the door, before anything is seen. */
final class Prior {
    private static final double LEAST = 0.02;
    private static final double MOST = 0.30;

    private Prior() {}

    /**
     * Horns seen and one, for each entry; unlisted last, by how many entries were met once (after Good 1953).
     *
     * @param except index of an entry one of whose horns is left out, or -1
     */
    static double[] of(List<Model> models, Experience experience, int except) {
        double[] prior = new double[models.size() + 1];
        double sum = 0;
        int once = 0;
        int all = experience.unplaced();
        for (int e = 0; e < models.size(); e++) {
            int seen = Math.max(0, experience.seen(models.get(e)) - (e == except ? 1 : 0));
            prior[e] = seen + 1;
            sum += prior[e];
            once += seen == 1 ? 1 : 0;
            all += seen;
        }
        double unlisted = models.isEmpty() ? 1 : Math.clamp((once + 2.0) / (all + 20), LEAST, MOST);
        for (int e = 0; e < models.size(); e++) {
            prior[e] *= (1 - unlisted) / sum;
        }
        prior[models.size()] = unlisted;
        return prior;
    }
}
