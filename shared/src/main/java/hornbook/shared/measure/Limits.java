package hornbook.shared.measure;

/** Least and most of a toleranced diameter. */
public record Limits(Length least, Length most) {

    static Limits ofMillimetres(String least, String most) {
        return new Limits(Length.ofMillimetres(least), Length.ofMillimetres(most));
    }

    static Limits ofInches(String least, String most) {
        return new Limits(Length.ofInches(least), Length.ofInches(most));
    }

    static Limits ofMillimetres(double least, double most) {
        return new Limits(Length.ofMillimetres(least), Length.ofMillimetres(most));
    }

    public Length middle() {
        return new Length((least.nanometres() + most.nanometres()) / 2);
    }

    public Length width() {
        return most.minus(least);
    }
}
