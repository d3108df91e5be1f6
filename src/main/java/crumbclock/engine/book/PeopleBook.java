package crumbclock.engine.book;

import crumbclock.domain.kitchen.Person;
import crumbclock.engine.model.Bits;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Hands: keeps rules R03 (one hands-on step at a time, inside shifts, outside breaks, not more than the day's most),
 * R04 (touches) and R14 (no hands when the kitchen is shut) by construction.
 */
public final class PeopleBook implements Journal.Undoable {

    private static final int SOLID = 0;
    private static final int LOOSE = 1;
    private static final int TOUCH = 2;

    private final Journal journal;
    private final int horizon;
    private final int[] dayOf;
    private final int[] mostADay;
    private final boolean[] limited;
    private final int dayCount;
    /** On shift, not on a break, kitchen open. */
    private final long[][] available;
    /** Free for work that may not be put down: no work and no touch. */
    private final long[][] solidFree;
    /** Free for work that may be put down: no work; touches may fall into it. */
    private final long[][] looseFree;
    /** Free for a touch: no other touch, and no work that may not be put down. */
    private final long[][] touchFree;
    private final int[][] workedOn;
    private final long[] together;

    public PeopleBook(CompiledProblem compiled, Journal journal) {
        this.journal = journal;
        horizon = compiled.horizon;
        dayOf = compiled.dayOf;
        dayCount = compiled.days.size();
        List<Person> people = compiled.kitchen().people();
        mostADay = people.stream().mapToInt(Person::mostMinutesADay).toArray();
        limited = new boolean[people.size()];
        available = new long[people.size()][];
        solidFree = new long[people.size()][];
        looseFree = new long[people.size()][];
        touchFree = new long[people.size()][];
        workedOn = new int[people.size()][dayCount];
        together = Bits.ofSize(horizon + 1);
        long[] open = compiled.calendar(compiled.kitchen().opening());
        for (int person = 0; person < people.size(); person++) {
            limited[person] = mostADay[person] < 24 * 60;
            available[person] = compiled.calendar(people.get(person).shifts());
            for (Span pause : people.get(person).breaks()) {
                long[] off = compiled.calendar(List.of(pause));
                for (int word = 0; word < off.length; word++) {
                    available[person][word] &= ~off[word];
                }
            }
            for (int word = 0; word < open.length; word++) {
                available[person][word] &= open[word];
            }
            solidFree[person] = new long[open.length];
            looseFree[person] = new long[open.length];
            touchFree[person] = new long[open.length];
        }
    }

    public void reset() {
        for (int person = 0; person < available.length; person++) {
            long[] source = available[person];
            System.arraycopy(source, 0, solidFree[person], 0, source.length);
            System.arraycopy(source, 0, looseFree[person], 0, source.length);
            System.arraycopy(source, 0, touchFree[person], 0, source.length);
            Arrays.fill(workedOn[person], 0);
        }
    }

    /** First start at or after {@code from} of {@code minutes} in one piece that end by {@code limit}; −1 for none. */
    public int findSolid(int person, int from, int minutes, int limit) {
        int start = Bits.nextRun(solidFree[person], from, minutes, limit);
        while (start >= 0 && limited[person]) {
            int tooMuch = overfullDayEnd(person, start, start + minutes);
            if (tooMuch < 0) {
                return start;
            }
            start = Bits.nextRun(solidFree[person], Math.max(start + 1, tooMuch - minutes + 1), minutes, limit);
        }
        return start;
    }

    /** The same for several people at once. */
    public int findTogether(int[] people, int count, int from, int minutes, int limit) {
        for (int word = from >>> 6; word < together.length; word++) {
            long all = -1L;
            for (int index = 0; index < count; index++) {
                all &= solidFree[people[index]][word];
            }
            together[word] = all;
        }
        int start = Bits.nextRun(together, from, minutes, limit);
        while (start >= 0) {
            int next = -1;
            for (int index = 0; index < count && next < 0; index++) {
                if (limited[people[index]]) {
                    next = overfullDayEnd(people[index], start, start + minutes);
                }
            }
            if (next < 0) {
                return start;
            }
            start = Bits.nextRun(together, Math.max(start + 1, next - minutes + 1), minutes, limit);
        }
        return -1;
    }

    /** End of the day whose most would be passed by work in {@code [start, end)}; −1 when none would. */
    private int overfullDayEnd(int person, int start, int end) {
        int at = start;
        while (at < end) {
            int day = dayOf[at];
            int until = at;
            while (until < end && dayOf[until] == day) {
                until++;
            }
            if (workedOn[person][day] + until - at > mostADay[person]) {
                while (until < horizon && dayOf[until] == day) {
                    until++;
                }
                return until;
            }
            at = until;
        }
        return -1;
    }

    /**
     * Work that may be put down: takes free minutes from {@code from} on until there are enough.
     *
     * @param spans receives pairs of start and end
     * @return whether {@code minutes} were found before {@code limit}
     */
    public boolean findLoose(int person, int from, int minutes, int limit, IntList spans) {
        spans.clear();
        int left = minutes;
        int at = Bits.nextSet(looseFree[person], from, limit);
        int[] extra = limited[person] ? new int[dayCount] : null;
        while (at >= 0 && left > 0) {
            int end = Bits.nextClear(looseFree[person], at, Math.min(limit, at + left));
            if (extra != null) {
                int day = dayOf[at];
                int room = mostADay[person] - workedOn[person][day] - extra[day];
                int sameDay = at;
                while (sameDay < end && dayOf[sameDay] == day) {
                    sameDay++;
                }
                end = Math.min(sameDay, at + Math.max(0, room));
                if (end == at) {
                    int nextDay = at;
                    while (nextDay < limit && dayOf[nextDay] == day) {
                        nextDay++;
                    }
                    at = Bits.nextSet(looseFree[person], nextDay, limit);
                    continue;
                }
                extra[day] += end - at;
            }
            if (spans.size() > 0 && spans.get(spans.size() - 1) == at) {
                spans.set(spans.size() - 1, end);
            } else {
                spans.add(at);
                spans.add(end);
            }
            left -= end - at;
            at = Bits.nextSet(looseFree[person], end, limit);
        }
        return left == 0;
    }

    /** Whether the person has nothing to do in the minute before {@code start}, though at work. */
    public boolean isFreeBefore(int person, int start) {
        return start > 0 && Bits.get(solidFree[person], start - 1);
    }

    public boolean canTouch(int person, int start, int minutes) {
        return Bits.nextClear(touchFree[person], start, start + minutes) >= start + minutes
                && (!limited[person] || overfullDayEnd(person, start, start + minutes) < 0);
    }

    /** First start of a possible touch at or after {@code from} that ends by {@code limit}; −1 for none. */
    public int findTouch(int person, int from, int minutes, int limit) {
        int start = Bits.nextRun(touchFree[person], from, minutes, limit);
        while (start >= 0 && limited[person]) {
            int tooMuch = overfullDayEnd(person, start, start + minutes);
            if (tooMuch < 0) {
                return start;
            }
            start = Bits.nextRun(touchFree[person], Math.max(start + 1, tooMuch - minutes + 1), minutes, limit);
        }
        return start;
    }

    /** Last start of a possible touch at or before {@code latest} and not before {@code from}; −1 for none. */
    public int findLastTouch(int person, int from, int minutes, int latest) {
        int start = Bits.lastRun(touchFree[person], Math.max(0, from), minutes, Math.min(latest, horizon - minutes));
        while (start >= 0 && limited[person] && overfullDayEnd(person, start, start + minutes) >= 0) {
            start = Bits.lastRun(touchFree[person], Math.max(0, from), minutes, start - 1);
        }
        return start;
    }

    public void bookWork(int person, int start, int end, boolean solid) {
        Bits.clear(solidFree[person], start, end);
        Bits.clear(looseFree[person], start, end);
        if (solid) {
            Bits.clear(touchFree[person], start, end);
        }
        count(person, start, end, 1);
        journal.add(this, solid ? SOLID : LOOSE, person, start, end);
    }

    public void bookTouch(int person, int start, int end) {
        Bits.clear(touchFree[person], start, end);
        Bits.clear(solidFree[person], start, end);
        count(person, start, end, 1);
        journal.add(this, TOUCH, person, start, end);
    }

    private void count(int person, int start, int end, int sign) {
        if (limited[person]) {
            for (int minute = start; minute < end; minute++) {
                workedOn[person][dayOf[minute]] += sign;
            }
        }
    }

    @Override
    public void undo(int code, int person, int start, int end) {
        count(person, start, end, -1);
        switch (code) {
            case SOLID -> {
                Bits.set(looseFree[person], start, end);
                Bits.set(touchFree[person], start, end);
                Bits.set(solidFree[person], start, end);
            }
            // whoever worked loosely may have been touching meanwhile: those minutes stay taken for solid work
            case LOOSE -> {
                Bits.set(looseFree[person], start, end);
                restoreSolid(person, start, end, touchFree[person]);
            }
            case TOUCH -> {
                Bits.set(touchFree[person], start, end);
                restoreSolid(person, start, end, looseFree[person]);
            }
            default -> throw new IllegalStateException("code " + code);
        }
    }

    private void restoreSolid(int person, int start, int end, long[] where) {
        for (int minute = start; minute < end; minute++) {
            if (Bits.get(where, minute)) {
                Bits.set(solidFree[person], minute, minute + 1);
            }
        }
    }
}
