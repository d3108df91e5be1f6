package crumbclock.bound;

/**
 * Work that may be put down: somebody's minutes on it add up over breaks and nights. One entry for each who could do it.
 *
 * @param calendars who is there when
 * @param minutes   how many each of them needs
 */
record Pieces(Presence[] calendars, int[] minutes) {

    /** When the first of them could be done, begun at {@code start} or later. */
    int earliestEnd(int start) {
        int earliest = Room.NEVER;
        for (int who = 0; who < minutes.length; who++) {
            earliest = Math.min(earliest, calendars[who].doneBy(start, minutes[who]));
        }
        return earliest;
    }

    Pieces mirrored(int horizon) {
        Presence[] mirrored = new Presence[calendars.length];
        for (int who = 0; who < mirrored.length; who++) {
            mirrored[who] = calendars[who].mirrored();
        }
        return new Pieces(mirrored, minutes);
    }
}
