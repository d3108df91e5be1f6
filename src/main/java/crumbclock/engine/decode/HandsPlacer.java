package crumbclock.engine.decode;

import crumbclock.engine.book.IntList;
import crumbclock.engine.model.Task;

/** Whose hands do a task, and when: mostly the people who are through with it first; ties go to the earlier
 * in the kitchen. */
final class HandsPlacer {

    /** Answer of {@link #toucher} when a touch of no minutes needs nobody. */
    static final int NOBODY = -3;

    private static final int SPARE_SKILL = 2;
    private static final int CUT = 4;

    private final Board board;
    private final IntList spans = new IntList();
    private final IntList trial = new IntList();
    private int[] chosen = new int[2];
    private int chosenCount;
    private int[] trialGroup = new int[2];

    HandsPlacer(Board board) {
        this.board = board;
    }

    int start() {
        return spans.get(0);
    }

    int end() {
        return spans.get(spans.size() - 1);
    }

    /** Finds who can do the work from {@code from} on and be done by {@code limit}. */
    boolean find(Task task, int from, int limit) {
        chosenCount = 0;
        spans.clear();
        if (task.people == 1) {
            findOne(task, from, limit);
        } else {
            if (trialGroup.length < task.people) {
                trialGroup = new int[task.people];
            }
            findGroup(task, from, limit, 0, 0);
        }
        return chosenCount > 0;
    }

    /**
     * Who is through first, with two handicaps in minutes: for skills that the work does not ask for, which others may
     * need, and for work that cuts into the middle of a free stretch instead of following on what the person does before.
     */
    private void findOne(Task task, int from, int limit) {
        int best = Integer.MAX_VALUE;
        for (int index = 0; index < task.workers.length; index++) {
            int person = task.workers[index];
            int minutes = task.workerMinutes[index];
            int earliest = Math.max(from, task.earliestEnd - minutes);
            int handicap = SPARE_SKILL * task.spareSkills[index];
            int latest = (int) Math.min(limit, (long) best - 1 - handicap);
            if (task.mayPutDown) {
                if (board.people.findLoose(person, earliest, minutes, latest, trial)) {
                    // put down early and picked up late may still end before the least end: then start later
                    int end = trial.get(trial.size() - 1);
                    int weight = end + handicap + cut(person, trial.get(0));
                    if (end >= task.earliestEnd && weight < best) {
                        best = weight;
                        spans.copyFrom(trial);
                        choose(person);
                    }
                }
            } else {
                int start = board.people.findSolid(person, earliest, minutes, latest);
                if (start >= 0 && start + minutes + handicap + cut(person, start) < best) {
                    best = start + minutes + handicap + cut(person, start);
                    spans.clear();
                    spans.add(start);
                    spans.add(start + minutes);
                    choose(person);
                }
            }
        }
    }

    private int cut(int person, int start) {
        return board.people.isFreeBefore(person, start) ? CUT : 0;
    }

    private void choose(int person) {
        chosen[0] = person;
        chosenCount = 1;
    }

    /** Tries all groups of the size asked for; kitchens are small. */
    private void findGroup(Task task, int from, int limit, int at, int size) {
        if (size == task.people) {
            tryGroup(task, from, limit, size);
            return;
        }
        for (int index = at; index <= task.workers.length - (task.people - size); index++) {
            trialGroup[size] = index;
            findGroup(task, from, limit, index + 1, size + 1);
        }
    }

    private void tryGroup(Task task, int from, int limit, int size) {
        int minutes = 0;
        int[] group = new int[size];
        for (int index = 0; index < size; index++) {
            minutes = Math.max(minutes, task.workerMinutes[trialGroup[index]]);
            group[index] = task.workers[trialGroup[index]];
        }
        int best = chosenCount == 0 ? limit : Math.min(limit, end() - 1);
        int start = board.people.findTogether(group, size, Math.max(from, task.earliestEnd - minutes), minutes, best);
        if (start >= 0) {
            spans.clear();
            spans.add(start);
            spans.add(start + minutes);
            chosen = group;
            chosenCount = size;
        }
    }

    /** For work away: the minute before which whoever was found must not leave; −1 when they may go. */
    int mustStayUntil(Task task) {
        return task.away ? board.presence.neededUntil(chosen, chosenCount, start(), end()) : -1;
    }

    void book(Task task) {
        board.spans[task.index].copyFrom(spans);
        board.workers[task.index] = task.works ? java.util.Arrays.copyOf(chosen, chosenCount) : new int[0];
        if (!task.works) {
            board.spans[task.index].clear();
            return;
        }
        boolean solid = !task.mayPutDown || task.people > 1;
        for (int index = 0; index < chosenCount; index++) {
            for (int span = 0; span < spans.size(); span += 2) {
                board.people.bookWork(chosen[index], spans.get(span), spans.get(span + 1), solid);
                if (task.away) {
                    board.presence.leave(chosen[index], spans.get(span), spans.get(span + 1));
                }
            }
        }
    }

    /** First start at or after {@code from} of a touch by any of {@code people}; −1 for none. A touch of no minutes starts at once. */
    int findTouch(int[] people, int from, int minutes, int limit) {
        if (minutes == 0) {
            return from;
        }
        int best = -1;
        for (int person : people) {
            int start = board.people.findTouch(person, from, minutes, best < 0 ? limit : best + minutes - 1);
            if (start >= 0) {
                best = start;
            }
        }
        return best;
    }

    /** Last start at or before {@code latest} and not before {@code from} of a touch by any of {@code people}; −1 for none. */
    int findLastTouch(int[] people, int from, int minutes, int latest) {
        if (minutes == 0) {
            return latest;
        }
        int best = -1;
        for (int person : people) {
            best = Math.max(best, board.people.findLastTouch(person, Math.max(from, best + 1), minutes, latest));
        }
        return best;
    }

    /** Somebody who can touch at exactly {@code start}; −1 for nobody, {@link #NOBODY} when nobody is needed. */
    int toucher(int[] people, int start, int minutes) {
        if (minutes == 0) {
            return NOBODY;
        }
        for (int person : people) {
            if (start >= 0 && start + minutes <= board.compiled.horizon && board.people.canTouch(person, start, minutes)) {
                return person;
            }
        }
        return -1;
    }

    /** Books a touch at exactly {@code start}, which must be possible; answers who does it. */
    int bookTouch(int[] people, int start, int minutes) {
        int person = toucher(people, start, minutes);
        if (person >= 0) {
            board.people.bookTouch(person, start, start + minutes);
        }
        return person;
    }
}
