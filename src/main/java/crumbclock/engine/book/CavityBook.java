package crumbclock.engine.book;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PanPlace;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * One oven cavity: keeps rules R07 (room, one temperature), R08 (heat) and R09 (door) by construction, and asks the
 * presence book for R05. Works in real time, because doors and preheating do not look the same backward.
 */
public final class CavityBook implements Journal.Undoable {

    private final CompiledProblem compiled;
    private final Cavity cavity;
    private final Journal journal;
    private final OvenHeat heat;
    private final OvenRacks racks;
    private final List<Bake> bakes = new ArrayList<>();
    private int longest;
    private Bake candidate;

    /** A bake in real time. */
    record Bake(Task task, int start, int end, int heatedEnd, int shutFrom, int shutUntil, int temperature) {

        static Bake of(Task task, int start, int end) {
            int inside = start + task.realInMinutes;
            int heatedEnd = task.coolsInOven ? inside + task.bakeMinutes : end;
            return new Bake(task, start, end, heatedEnd, inside, inside + task.doorShutMinutes, task.temperatureC);
        }

        int putInEnd() {
            return start + task.realInMinutes;
        }

        int takeOutStart() {
            return end - task.realOutMinutes;
        }
    }

    public CavityBook(CompiledProblem compiled, int cavityIndex, Journal journal, PresenceBook presence) {
        this.compiled = compiled;
        this.cavity = compiled.kitchen().cavities().get(cavityIndex);
        this.journal = journal;
        this.heat = new OvenHeat(compiled, cavity, presence);
        this.racks = new OvenRacks(cavity);
    }

    public void reset() {
        bakes.clear();
        candidate = null;
        heat.reset();
        racks.reset();
        longest = 0;
    }

    /**
     * −1 when the task may bake in abstract {@code [from, until)}, which {@link #book} then takes; else the first later
     * start worth asking for.
     */
    public int blockedUntil(Task task, int from, int until) {
        if (task.temperatureC < cavity.leastC() || task.temperatureC > cavity.mostC()) {
            return compiled.horizon + 1;
        }
        Bake bake = Bake.of(task, compiled.realStart(from, until), compiled.realEnd(from, until));
        int shift = 0;
        for (Span away : cavity.away()) {
            if (away.overlaps(new Span(bake.start, bake.end))) {
                shift = Math.max(shift, shift(bake.start, bake.end, away.start(), away.end()));
            }
        }
        for (int at = firstNear(bake.start); at < bakes.size() && bakes.get(at).start <= bake.end; at++) {
            shift = Math.max(shift, shiftFor(bake, bakes.get(at)));
        }
        if (shift == 0) {
            shift = heat.shiftFor(bake, bakes);
        }
        if (shift == 0 && !racks.find(bake, bakes, firstNear(bake.start))) {
            shift = shiftForRoom(bake);
        }
        candidate = shift == 0 ? bake : null;
        return shift == 0 ? -1 : from + shift;
    }

    /** Whether the last {@link #blockedUntil} found room for exactly this. */
    public boolean hasRoomFor(Task task, int from, int until) {
        return candidate != null && candidate.task == task && candidate.start == compiled.realStart(from, until)
                && candidate.end == compiled.realEnd(from, until);
    }

    /** How far to move in abstract time, at least, until what is ours no longer overlaps what is theirs. */
    private int shift(int ourFrom, int ourUntil, int theirFrom, int theirUntil) {
        return Math.max(1, compiled.mirrored ? ourUntil - theirFrom : theirUntil - ourFrom);
    }

    private int shiftFor(Bake ours, Bake theirs) {
        if (theirs.end <= ours.start && theirs.shutUntil <= ours.start) {
            return 0;
        }
        int shift = 0;
        if (ours.temperature != theirs.temperature && ours.start < theirs.heatedEnd && theirs.start < ours.heatedEnd) {
            shift = shift(ours.start, ours.heatedEnd, theirs.start, theirs.heatedEnd);
        }
        boolean together = ours.start < theirs.end && theirs.start < ours.end;
        if (together && ((ours.task.contains & theirs.task.freeFrom) | (ours.task.freeFrom & theirs.task.contains)) != 0) {
            shift = Math.max(shift, shift(ours.start, ours.end, theirs.start, theirs.end));
        }
        if (together && theirs.heatedEnd < ours.end && ours.start < theirs.end && theirs.heatedEnd < theirs.end) {
            shift = Math.max(shift, shift(ours.start, ours.end, theirs.heatedEnd, theirs.end));
        }
        if (together && ours.heatedEnd < ours.end && ours.heatedEnd < theirs.end) {
            shift = Math.max(shift, shift(ours.heatedEnd, ours.end, theirs.start, theirs.end));
        }
        shift = Math.max(shift, doorShift(ours.start, ours.putInEnd(), theirs.shutFrom, theirs.shutUntil));
        shift = Math.max(shift, doorShift(ours.takeOutStart(), ours.end, theirs.shutFrom, theirs.shutUntil));
        shift = Math.max(shift, doorShift(ours.shutFrom, ours.shutUntil, theirs.start, theirs.putInEnd()));
        shift = Math.max(shift, doorShift(ours.shutFrom, ours.shutUntil, theirs.takeOutStart(), theirs.end));
        return shift;
    }

    /** Rule R09; a touch of no length counts only strictly inside. */
    private int doorShift(int ourFrom, int ourUntil, int theirFrom, int theirUntil) {
        boolean moment = ourFrom == ourUntil || theirFrom == theirUntil;
        boolean conflict = moment
                ? Math.max(ourFrom, theirFrom) < Math.min(ourUntil, theirUntil) || strictlyInside(ourFrom, ourUntil, theirFrom, theirUntil)
                : ourFrom < theirUntil && theirFrom < ourUntil;
        return conflict ? shift(ourFrom, ourUntil, theirFrom, theirUntil) : 0;
    }

    private static boolean strictlyInside(int aFrom, int aUntil, int bFrom, int bUntil) {
        return aFrom == aUntil && bFrom < aFrom && aFrom < bUntil || bFrom == bUntil && aFrom < bFrom && bFrom < aUntil;
    }

    /** Full racks: nothing changes until the first of the others is out. */
    private int shiftForRoom(Bake bake) {
        int least = Integer.MAX_VALUE;
        for (int at = firstNear(bake.start); at < bakes.size() && bakes.get(at).start < bake.end; at++) {
            Bake other = bakes.get(at);
            if (bake.start < other.end) {
                least = Math.min(least, shift(bake.start, bake.end, other.start, other.end));
            }
        }
        return least == Integer.MAX_VALUE ? compiled.horizon + 1 : least;
    }

    /** Index of the first bake that may still be in, or shut, at {@code minute}. */
    private int firstNear(int minute) {
        int low = 0;
        int high = bakes.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (bakes.get(middle).start < minute - longest) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Whether any bake is in the cavity, or goes in or out, in real {@code [from, until]}. */
    public boolean isUsed(int from, int until) {
        int at = firstNear(from);
        while (at < bakes.size() && bakes.get(at).start <= until) {
            if (bakes.get(at).end >= from) {
                return true;
            }
            at++;
        }
        return false;
    }

    /** A bake of the same temperature that goes in (or comes out) in exactly this real span; its touch is shared. */
    public Task sharedTouch(Task task, int from, int until, boolean putIn) {
        for (int at = firstNear(from); at < bakes.size() && bakes.get(at).start < until; at++) {
            Bake bake = bakes.get(at);
            boolean same = putIn ? bake.start == from && bake.putInEnd() == until
                    : bake.takeOutStart() == from && bake.end == until;
            if (same && bake.task != task) {
                return bake.task;
            }
        }
        return null;
    }

    /** Takes what the last {@link #blockedUntil} found. */
    public void book() {
        insert(candidate);
        racks.take(candidate.task);
        heat.take();
        candidate = null;
    }

    /** Books a recorded bake (rule R15). */
    public void force(Task task, int start, int end, List<PanPlace> pans) {
        Bake bake = Bake.of(task, start, end);
        heat.force(bake);
        racks.force(task, pans);
        insert(bake);
    }

    private void insert(Bake bake) {
        int at = bakes.size();
        while (at > 0 && bakes.get(at - 1).start > bake.start) {
            at--;
        }
        bakes.add(at, bake);
        longest = Math.max(longest, Math.max(bake.end, bake.shutUntil) - bake.start);
        journal.add(this, 0, at, 0, 0);
    }

    @Override
    public void undo(int code, int at, int b, int c) {
        racks.giveBack(bakes.remove(at).task);
        heat.undo();
        candidate = null;
    }

    public String id() {
        return cavity.id();
    }

    public List<OvenRun> runs() {
        return heat.runs();
    }

    /** Where the pans of a task stand. */
    public List<PanPlace> pans(Task task) {
        return racks.places(task);
    }

    public int runCount() {
        return heat.count();
    }

    public int minutesOn() {
        return heat.minutesOn();
    }
}
