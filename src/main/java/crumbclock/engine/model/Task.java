package crumbclock.engine.model;

import crumbclock.domain.work.Step;

/**
 * A step compiled for the decoder, in abstract time. Fields are final after compilation; they are public because the
 * decoder's inner loops read them millions of times.
 */
public final class Task {

    /** Position in {@link CompiledProblem#tasks}. */
    public final int index;
    public final Step step;
    public final boolean handsOn;

    /** Hands-on: minutes at pace 1 are above 0, so somebody works. */
    public boolean works;
    public int people;
    /** People who may do the work, in the kitchen's order, and their minutes at their own pace. */
    public int[] workers = {};
    public int[] workerMinutes = {};
    /** Skills that each of them has and this task does not ask for. */
    public int[] spareSkills = {};
    public boolean mayPutDown;
    public boolean away;

    /** Unattended: rest between the touches. */
    public int least;
    public int most;
    /** Touch minutes at the start and end in abstract time, and the people who may do each. */
    public int inMinutes;
    public int outMinutes;
    public int[] inPeople = {};
    public int[] outPeople = {};
    /** The end follows the step that takes the thing out, within least and most. */
    public boolean elastic;
    public boolean presence;

    /** Bake: minutes of rest that are baking; the remainder of the least rest is cooling in the oven. */
    public boolean bakes;
    public int bakeMinutes;
    public int temperatureC;
    public int doorShutMinutes;
    public boolean coolsInOven;
    /** Bake: touches in real time, whatever the direction. */
    public int realInMinutes;
    public int realOutMinutes;

    /** Candidates to stand on in order of preference: shelf index, or −1 − surface index; empty when it does not count. */
    public int[] spots = {};
    /** mm² on a surface. */
    public int areaMm2;
    public boolean open;

    public long contains;
    public long freeFrom;

    /** Needs taken at this task's start, and needs given back at its end, in abstract time. */
    public Need[] takes = {};
    public Need[] gives = {};

    public Link[] before = {};
    public Link[] after = {};

    /** Starts not before, ends not before, ended by; hard, in abstract time. */
    public int earliestStart;
    public int earliestEnd;
    public int latestEnd;

    /** Index of the order it belongs to; −1 for a batch. */
    public int order = -1;
    /** Cake, batch or order id as a small number. */
    public int owner;
    /** Recorded and not to be moved (rule R15). */
    public boolean fixed;

    Task(int index, Step step, boolean handsOn) {
        this.index = index;
        this.step = step;
        this.handsOn = handsOn;
    }

    /** Length when the rest is the least; a hands-on task has no length before its worker is known. */
    public int leastLength() {
        return inMinutes + least + outMinutes;
    }

    /** Longest length an unattended task may have. */
    public int mostLength() {
        return most == Integer.MAX_VALUE ? Integer.MAX_VALUE : inMinutes + most + outMinutes;
    }

    @Override
    public String toString() {
        return step.id();
    }
}
