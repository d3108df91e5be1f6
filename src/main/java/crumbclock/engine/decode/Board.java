package crumbclock.engine.decode;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.engine.book.CavityBook;
import crumbclock.engine.book.IntList;
import crumbclock.engine.book.PeopleBook;
import crumbclock.engine.book.PoolBook;
import crumbclock.engine.book.PresenceBook;
import crumbclock.engine.book.Profile;
import crumbclock.engine.book.ShelfBook;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.engine.model.Need;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.Arrays;

/**
 * The timetable while it is made: all books, and for each task when it is and who does it. Times are abstract.
 * Fields are package-private: the placers of this package work on them directly.
 */
public final class Board implements Journal.Undoable {

    private static final int PLACED = 0;
    private static final int ENDED = 1;
    private static final int ON_SURFACE = 2;

    final CompiledProblem compiled;
    final Journal journal = new Journal();
    final PeopleBook people;
    final PresenceBook presence;
    final PoolBook[] pools;
    final Profile[] surfaces;
    final ShelfBook shelves;
    final CavityBook[] cavities;

    final int[] start;
    final int[] end;
    final boolean[] placed;
    /** Elastic and placed, with an end still to be found. */
    final boolean[] open;
    /** Open and booked to the horizon, because what takes it out belongs to a later unit. */
    final boolean[] openEnded;
    final int[][] workers;
    /** Pairs of start and end of the work, the same for all workers of a task. */
    final IntList[] spans;
    final int[] inPerson;
    final int[] outPerson;
    final int[] cavity;
    final int[] surface;
    /** Kind of the place it stands in, of its first piece; {@code null} when it does not count. */
    final PlaceKind[] kind;
    final int[][] pieces;
    final boolean[] needOpenEnded;
    /** Tasks that stand on a surface, by surface, for rule R13. */
    final IntList[] onSurface;

    public Board(CompiledProblem compiled) {
        this.compiled = compiled;
        var kitchen = compiled.kitchen();
        people = new PeopleBook(compiled, journal);
        presence = new PresenceBook(compiled, journal);
        pools = new PoolBook[kitchen.pools().size()];
        Arrays.setAll(pools, pool -> new PoolBook(compiled, pool, journal));
        surfaces = new Profile[kitchen.surfaces().size()];
        onSurface = new IntList[surfaces.length];
        for (int index = 0; index < surfaces.length; index++) {
            int area = kitchen.surfaces().get(index).areaMm2();
            int[] taken = new int[compiled.horizon + 1];
            for (Span away : kitchen.surfaces().get(index).away()) {
                Span span = compiled.mirror(away);
                Arrays.fill(taken, Math.max(0, span.start()), Math.max(0, Math.min(taken.length, span.end())), area);
            }
            surfaces[index] = new Profile(journal, area, taken);
            onSurface[index] = new IntList();
        }
        shelves = new ShelfBook(compiled, journal);
        cavities = new CavityBook[kitchen.cavities().size()];
        Arrays.setAll(cavities, index -> new CavityBook(compiled, index, journal, presence));

        int count = compiled.tasks.length;
        start = new int[count];
        end = new int[count];
        placed = new boolean[count];
        open = new boolean[count];
        openEnded = new boolean[count];
        workers = new int[count][];
        spans = new IntList[count];
        Arrays.setAll(spans, index -> new IntList());
        inPerson = new int[count];
        outPerson = new int[count];
        cavity = new int[count];
        surface = new int[count];
        kind = new PlaceKind[count];
        pieces = new int[compiled.needs.length][];
        needOpenEnded = new boolean[compiled.needs.length];
    }

    void reset() {
        journal.reset();
        people.reset();
        presence.reset();
        for (PoolBook pool : pools) {
            pool.reset();
        }
        for (int index = 0; index < surfaces.length; index++) {
            surfaces[index].reset();
            onSurface[index].clear();
        }
        shelves.reset();
        for (CavityBook book : cavities) {
            book.reset();
        }
        Arrays.fill(placed, false);
        Arrays.fill(open, false);
        Arrays.fill(openEnded, false);
        Arrays.fill(needOpenEnded, false);
        Arrays.fill(inPerson, -1);
        Arrays.fill(outPerson, -1);
        Arrays.fill(cavity, -1);
        Arrays.fill(surface, -1);
    }

    void place(Task task, int from, int until) {
        start[task.index] = from;
        end[task.index] = until;
        placed[task.index] = true;
        journal.add(this, PLACED, task.index, 0, 0);
    }

    void stand(Task task, int onSurfaceIndex, int from, int until) {
        surface[task.index] = onSurfaceIndex;
        surfaces[onSurfaceIndex].book(from, until, task.areaMm2);
        onSurface[onSurfaceIndex].add(task.index);
        journal.add(this, ON_SURFACE, onSurfaceIndex, 0, 0);
    }

    /** Fixes the end of an open task. */
    void end(Task task, int until) {
        journal.add(this, ENDED, task.index, end[task.index], 0);
        end[task.index] = until;
        open[task.index] = false;
    }

    /** Earliest end that a placed task has or may still get. */
    int leastEnd(Task task) {
        return end[task.index];
    }

    /** Latest end that a placed task has or may still get. */
    int mostEnd(Task task) {
        if (!open[task.index] || task.most == Integer.MAX_VALUE) {
            return open[task.index] ? compiled.horizon : end[task.index];
        }
        return Math.min(compiled.horizon, start[task.index] + task.mostLength());
    }

    @Override
    public void undo(int code, int task, int oldEnd, int c) {
        if (code == PLACED) {
            placed[task] = false;
            open[task] = false;
            openEnded[task] = false;
            inPerson[task] = -1;
            outPerson[task] = -1;
            cavity[task] = -1;
            surface[task] = -1;
            for (Need need : compiled.tasks[task].takes) {
                needOpenEnded[need.index()] = false;
            }
        } else if (code == ENDED) {
            end[task] = oldEnd;
            open[task] = true;
            outPerson[task] = -1;
        } else {
            onSurface[task].removeLast();
        }
    }
}
