package crumbclock.bound;

/** The end of the last step: the earliest minute by which no contradiction shows (wish W07). */
final class LastEnd {

    private final Proof proof;

    LastEnd(Proof proof) {
        this.proof = proof;
    }

    /** Minutes from the problem's start; 0 without tasks. */
    int least() {
        int low = 0;
        for (int task = 0; task < proof.in.length; task++) {
            low = Math.max(low, proof.in[task] ? Math.min(proof.earliestEnd(task), proof.net.horizon) : 0);
        }
        int step = 1;
        int high = low;
        // steps that double, then halving: sound whichever way it goes, for only a contradicted minute raises the bound
        while (high < proof.net.horizon && proof.isContradicted(by(high))) {
            low = high + 1;
            high = Math.min(proof.net.horizon, high + step);
            step *= 2;
        }
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (proof.isContradicted(by(middle))) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static Proof.Limits by(int minute) {
        return new Proof.Limits() {
            @Override
            public int latestStart(int task) {
                return minute;
            }

            @Override
            public int latestEnd(int task) {
                return minute;
            }
        };
    }
}
