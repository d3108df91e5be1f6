package crumbclock.bound;

import java.util.Arrays;

/** Picks the minutes at which stretches of time begin and end. */
final class Borders {

    private Borders() {
    }

    /** The different ones among them, ascending; of more than {@code most} an even choice with the first and the last. */
    static int[] some(int[] minutes, int most) {
        int[] distinct = Arrays.stream(minutes).sorted().distinct().toArray();
        if (distinct.length <= most) {
            return distinct;
        }
        int[] some = new int[most];
        for (int index = 0; index < most; index++) {
            some[index] = distinct[(int) ((long) index * (distinct.length - 1) / (most - 1))];
        }
        return some;
    }
}
