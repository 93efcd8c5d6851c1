package hornbook.shared.pads;

/**
 * The cups of one ruled size, smallest first. Whoever goes a size down is best the smallest, whoever goes up the
 * largest, and of the rest those nearest to the size stay: swapping any two cups against that order never gains.
 */
final class Rung {
    private static final long HALF = 500;

    private final int[] cups;
    private final int[] off;
    private final long[] sumOff;
    private final long[] sumNear;

    /**
     * @param cups numbers of the cups, by diameter
     * @param off diameter less ruled size of each, micrometres
     */
    Rung(int[] cups, int[] off) {
        this.cups = cups;
        this.off = off;
        this.sumOff = new long[cups.length + 1];
        this.sumNear = new long[cups.length + 1];
        for (int i = 0; i < cups.length; i++) {
            sumOff[i + 1] = sumOff[i] + off[i];
            sumNear[i + 1] = sumNear[i] + Math.abs(off[i]);
        }
    }

    int size() {
        return cups.length;
    }

    /** Micrometres off in all when so many go down, stay and go up, and the rest stays empty. */
    long off(int down, int stay, int up) {
        int n = cups.length;
        long smaller = sumOff[down] + HALF * down;
        long larger = HALF * up - (sumOff[n] - sumOff[n - up]);
        int from = firstToStay(down, stay, up);
        return smaller + larger + sumNear[from + stay] - sumNear[from];
    }

    /** Those that stay are a run of neighbours; slides it until it is nearest to the size. */
    private int firstToStay(int down, int stay, int up) {
        int from = down;
        int last = cups.length - up - stay;
        while (stay > 0 && from < last && off[from] + off[from + stay] < 0) {
            from++;
        }
        return from;
    }

    /** Writes the size of each cup served. */
    void write(int ruled, int down, int stay, int up, int[] sizes) {
        int from = firstToStay(down, stay, up);
        for (int i = 0; i < cups.length; i++) {
            if (i < down) {
                sizes[cups[i]] = ruled - 1;
            } else if (i >= cups.length - up) {
                sizes[cups[i]] = ruled + 1;
            } else if (i >= from && i < from + stay) {
                sizes[cups[i]] = ruled;
            }
        }
    }
}
