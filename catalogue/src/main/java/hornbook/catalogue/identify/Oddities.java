package hornbook.catalogue.identify;

import hornbook.catalogue.entry.Model;
import java.util.ArrayList;
import java.util.List;

/** What does not fit: answers that speak against the best entry, and answers that contradict each other. */
final class Oddities {
    /** An answer is odd where it is four times rarer on the entry than on horns at large. */
    private static final double RARE = Math.log(4);

    private final Standing standing;

    Oddities(Standing standing) {
        this.standing = standing;
    }

    /** Ids of traits whose answer does not fit any of these entries. */
    List<String> odd(List<Integer> entries) {
        List<String> odd = new ArrayList<>();
        for (Piece piece : standing.pieces()) {
            String trait = piece.trait();
            if (trait != null && !entries.isEmpty() && entries.stream().allMatch(e -> against(piece, e))) {
                odd.add(trait);
            }
        }
        return odd;
    }

    private boolean against(Piece piece, int entry) {
        double rarer = piece.logs()[standing.unlisted()] - piece.logs()[entry];
        return rarer > RARE * standing.exponent();
    }

    /** Lines about answers that a person should know. */
    List<String> remarks(int best) {
        List<String> remarks = new ArrayList<>();
        standing.looks().forEach((trait, answers) -> {
            if (contradict(answers)) {
                remarks.add(trait + " was seen as "
                        + String.join(
                                " and as ", answers.stream().map(Seen::value).toList())
                        + ": both cannot be, look once more");
            }
        });
        if (best < standing.unlisted()) {
            apart(standing.models().get(best), best, remarks);
        }
        return remarks;
    }

    private void apart(Model model, int best, List<String> remarks) {
        for (Piece piece : standing.pieces()) {
            if (piece.trait() == null && against(piece, best)) {
                remarks.add(
                        piece.answer().equals("serial")
                                ? "the serial lies outside the numbers known of " + model.title()
                                : "the name on it is not one known on " + model.title()
                                        + "; traits count for more than a name");
            }
        }
    }

    private static boolean contradict(List<Seen> answers) {
        List<Seen.OneOf> ones = answers.stream()
                .filter(Seen.OneOf.class::isInstance)
                .map(Seen.OneOf.class::cast)
                .toList();
        return ones.size() > 1
                && ones.getFirst().values().stream()
                        .noneMatch(v -> ones.stream().allMatch(o -> o.values().contains(v)));
    }
}
