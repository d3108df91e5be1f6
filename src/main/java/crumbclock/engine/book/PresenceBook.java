package crumbclock.engine.book;

import crumbclock.engine.model.Bits;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;

/** Who is in the kitchen, and when somebody must be: keeps rule R05 by construction. */
public final class PresenceBook implements Journal.Undoable {

    private static final int NEED = 0;
    private static final int LEAVE = 1;

    private final Journal journal;
    private final long[][] shift;
    private final int[] present0;
    private final int[] present;
    private final int[] needed;

    public PresenceBook(CompiledProblem compiled, Journal journal) {
        this.journal = journal;
        int people = compiled.kitchen().people().size();
        shift = new long[people][];
        present0 = new int[compiled.horizon + 1];
        for (int person = 0; person < people; person++) {
            shift[person] = compiled.calendar(compiled.kitchen().people().get(person).shifts());
            for (int minute = 0; minute < compiled.horizon; minute++) {
                if (Bits.get(shift[person], minute)) {
                    present0[minute]++;
                }
            }
        }
        present = present0.clone();
        needed = new int[present0.length];
    }

    public void reset() {
        System.arraycopy(present0, 0, present, 0, present.length);
        java.util.Arrays.fill(needed, 0);
    }

    /** −1 when somebody is there all through {@code [from, until)}; else the minute after the last one when nobody is. */
    public int nobodyUntil(int from, int until) {
        for (int minute = until - 1; minute >= from; minute--) {
            if (present[minute] == 0) {
                return minute + 1;
            }
        }
        return -1;
    }

    public void need(int from, int until) {
        add(needed, from, until, 1);
        journal.add(this, NEED, from, until, 1);
    }

    public void noLongerNeed(int from, int until) {
        add(needed, from, until, -1);
        journal.add(this, NEED, from, until, -1);
    }

    /**
     * −1 when the first {@code count} of {@code people} may all leave for {@code [from, until)}; else the minute after
     * the last one that forbids it. Asked for all who leave at once: each alone might go, and nobody would be left.
     */
    public int neededUntil(int[] people, int count, int from, int until) {
        for (int minute = until - 1; minute >= from; minute--) {
            if (needed[minute] > 0) {
                int leaving = 0;
                for (int index = 0; index < count; index++) {
                    leaving += Bits.get(shift[people[index]], minute) ? 1 : 0;
                }
                if (leaving > 0 && present[minute] <= leaving) {
                    return minute + 1;
                }
            }
        }
        return -1;
    }

    public void leave(int person, int from, int until) {
        move(person, from, until, -1);
        journal.add(this, LEAVE, person, from, until);
    }

    private void move(int person, int from, int until, int sign) {
        for (int minute = from; minute < until; minute++) {
            if (Bits.get(shift[person], minute)) {
                present[minute] += sign;
            }
        }
    }

    private static void add(int[] counts, int from, int until, int amount) {
        for (int minute = Math.max(0, from); minute < until; minute++) {
            counts[minute] += amount;
        }
    }

    @Override
    public void undo(int code, int a, int b, int c) {
        if (code == NEED) {
            add(needed, a, b, -c);
        } else {
            move(a, b, c, 1);
        }
    }
}
