package hornbook.indexer.fit;

import hornbook.shared.measure.Length;

/** What a dimension of a piece is: a size or a count, or a word. */
sealed interface Value {
    /**
     * A size in mm, or a count.
     *
     * @param doubt it lies within plus and minus this
     */
    record Amount(double mm, double doubt) implements Value {
        @Override
        public String shown() {
            return Shown.number(mm);
        }
    }

    /** A word or a designation. */
    record Word(String text) implements Value {
        @Override
        public String shown() {
            return text;
        }
    }

    static Value of(double mm) {
        return new Amount(mm, 0);
    }

    static Value of(Length length) {
        return of(length.mm());
    }

    /** For people, without a unit. */
    String shown();
}
