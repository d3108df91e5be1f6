package crumbclock.engine.book;

import crumbclock.engine.model.Journal;
import java.util.Arrays;

/** How much of something that has a capacity is in use, minute by minute. */
public final class Profile implements Journal.Undoable {

    private final Journal journal;
    private final int capacity;
    private final int[] taken;
    private final int[] used;

    /** @param taken what is gone from the start (times away), by abstract minute */
    public Profile(Journal journal, int capacity, int[] taken) {
        this.journal = journal;
        this.capacity = capacity;
        this.taken = taken;
        this.used = taken.clone();
    }

    public void reset() {
        System.arraycopy(taken, 0, used, 0, used.length);
    }

    /**
     * −1 when {@code amount} is free all through {@code [from, until)}; otherwise the minute after the last one at
     * which it is not: no start before that helps a use of this length.
     */
    public int blockedUntil(int from, int until, int amount) {
        int room = capacity - amount;
        for (int minute = Math.min(until, used.length) - 1; minute >= from; minute--) {
            if (used[minute] > room) {
                return minute + 1;
            }
        }
        return -1;
    }

    /** First minute from {@code from} on at which {@code amount} is free; the size of the profile when there is none. */
    public int nextFree(int from, int amount) {
        int minute = from;
        while (minute < used.length && used[minute] > capacity - amount) {
            minute++;
        }
        return minute;
    }

    public void book(int from, int until, int amount) {
        add(from, until, amount);
        journal.add(this, 0, from, until, amount);
    }

    private void add(int from, int until, int amount) {
        int end = Math.min(until, used.length);
        for (int minute = Math.max(0, from); minute < end; minute++) {
            used[minute] += amount;
        }
    }

    /** Gives back the part of an open-ended booking that turned out not to be needed. */
    public void release(int from, int until, int amount) {
        book(from, until, -amount);
    }

    @Override
    public void undo(int code, int from, int until, int amount) {
        add(from, until, -amount);
    }

    static int[] none(int minutes) {
        int[] none = new int[minutes];
        Arrays.fill(none, 0);
        return none;
    }
}
