package crumbclock.engine.decode;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.problem.Weights;
import crumbclock.domain.work.FreshnessWish;
import crumbclock.engine.book.CavityBook;
import crumbclock.engine.book.IntList;
import crumbclock.engine.cost.Cost;
import crumbclock.engine.model.CompiledOrder;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Task;
import crumbclock.units.Span;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Adds up what a decoded timetable costs, straight from the board. The audit adds up the same from the finished plan
 * with code of its own; the two must agree to the point.
 */
public final class CostMeter {

    private final Decoder decoder;
    private final CompiledProblem compiled;
    private final Board board;
    private final Weights weights;
    private final int peopleCount;
    private final boolean[] hasShift;
    private final int[] workKind;
    private final boolean[] finish;
    private final Task[] freshTask;
    private final int[] freshOrder;
    private final int[] freshWish;
    /** First and last minute of work or touch, by person and day. */
    private final int[][] first;
    private final int[][] last;
    private final int[] worked;
    private final long[][] sequence;
    private final int[] sequenceSize;
    private final boolean[] finisher;
    private final KeptMeter kept;

    public CostMeter(Decoder decoder) {
        this.decoder = decoder;
        compiled = decoder.compiled();
        board = decoder.board();
        weights = compiled.problem.weights();
        kept = new KeptMeter(board);
        List<Person> people = compiled.kitchen().people();
        peopleCount = people.size();
        hasShift = new boolean[peopleCount];
        for (int person = 0; person < peopleCount; person++) {
            hasShift[person] = !people.get(person).shifts().isEmpty();
        }
        workKind = new int[compiled.tasks.length];
        finish = new boolean[compiled.tasks.length];
        Map<String, Integer> kinds = new HashMap<>();
        Map<String, Task> byId = new HashMap<>();
        for (Task task : compiled.tasks) {
            byId.put(task.step.id(), task);
            task.step.handsOn().ifPresent(work -> {
                workKind[task.index] = kinds.computeIfAbsent(work.workKind(), key -> kinds.size());
                finish[task.index] = work.finish();
            });
        }
        Map<String, Integer> orderById = new HashMap<>();
        for (int order = 0; order < compiled.orders.length; order++) {
            orderById.put(compiled.problem.orders().get(order).id(), order);
        }
        List<FreshnessWish> wishes = compiled.problem.freshnessWishes();
        freshTask = wishes.stream().map(wish -> byId.get(wish.fromStepId())).toArray(Task[]::new);
        freshOrder = wishes.stream().mapToInt(wish -> orderById.get(wish.orderId())).toArray();
        freshWish = wishes.stream().mapToInt(FreshnessWish::wishMinutes).toArray();
        first = new int[peopleCount][compiled.days.size()];
        last = new int[peopleCount][compiled.days.size()];
        worked = new int[peopleCount];
        sequence = new long[peopleCount][64];
        sequenceSize = new int[peopleCount];
        finisher = new boolean[compiled.ordersOfOwner.length * Math.max(1, peopleCount)];
    }

    /** What the decoder's last timetable costs. */
    public Cost measure() {
        long medium = 0;
        long soft = 0;
        for (CompiledOrder order : compiled.orders) {
            if (!decoder.isPossible(order.index())) {
                medium += (long) weights.notPossible() * order.importance();
                continue;
            }
            int late = Math.max(0, moment(order) - order.until());
            medium += (long) late * order.importance() * weights.lateMinute() + (late > 0 ? weights.lateOrder() : 0);
            soft += (long) Math.max(0, order.bufferWish() - buffer(order)) * weights.bufferMinute();
        }
        soft += stale() * weights.staleMinute();
        soft += hoursAndCalm();
        for (CavityBook cavity : board.cavities) {
            soft += (long) cavity.runCount() * weights.heatUp() + (long) cavity.minutesOn() * weights.ovenMinute();
        }
        if (weights.behind() > 0) {
            soft += (long) board.shelves.countBehind() * weights.behind();
        }
        return new Cost(medium, soft + (long) lastEnd() * weights.endMinute() + kept.points());
    }

    private int realStart(Task task) {
        return compiled.realStart(board.start[task.index], board.end[task.index]);
    }

    private int realEnd(Task task) {
        return compiled.realEnd(board.start[task.index], board.end[task.index]);
    }

    /** Latest end of the finish steps of an order that is possible. */
    int ready(CompiledOrder order) {
        int ready = Integer.MIN_VALUE;
        for (Task cake : order.finishes()) {
            ready = Math.max(ready, realEnd(cake));
        }
        return ready;
    }

    int moment(CompiledOrder order) {
        return order.handOver() == null ? ready(order) : realStart(order.handOver()) + order.offset();
    }

    int buffer(CompiledOrder order) {
        return (order.handOver() == null ? order.until() : realStart(order.handOver())) - ready(order);
    }

    private long stale() {
        long minutes = 0;
        for (int wish = 0; wish < freshTask.length; wish++) {
            CompiledOrder order = compiled.orders[freshOrder[wish]];
            if (decoder.isPossible(order.index()) && board.placed[freshTask[wish].index]) {
                int hand = order.handOver() == null ? order.until() : moment(order);
                minutes += Math.max(0, hand - realEnd(freshTask[wish]) - freshWish[wish]);
            }
        }
        return minutes;
    }

    private int lastEnd() {
        int end = 0;
        for (Task task : compiled.tasks) {
            if (board.placed[task.index]) {
                end = Math.max(end, realEnd(task));
            }
        }
        return end;
    }

    private long hoursAndCalm() {
        for (int person = 0; person < peopleCount; person++) {
            Arrays.fill(first[person], Integer.MAX_VALUE);
            Arrays.fill(last[person], Integer.MIN_VALUE);
        }
        Arrays.fill(worked, 0);
        Arrays.fill(sequenceSize, 0);
        Arrays.fill(finisher, false);
        long odd = 0;
        for (Task task : compiled.tasks) {
            if (!board.placed[task.index]) {
                continue;
            }
            if (task.works) {
                odd += work(task);
            } else if (!task.handsOn) {
                int start = board.start[task.index];
                int end = board.end[task.index];
                touch(board.inPerson[task.index], start, start + task.inMinutes);
                touch(board.outPerson[task.index], end - task.outMinutes, end);
            }
        }
        long spread = 0;
        for (int person = 0; person < peopleCount; person++) {
            for (int day = 0; day < first[person].length; day++) {
                spread += Math.max(0, (long) last[person][day] - first[person][day]);
            }
        }
        return spread * weights.spreadMinute() + odd * weights.oddHourMinute()
                + (long) uneven() * weights.unevenMinute() + calm();
    }

    private long work(Task task) {
        long odd = 0;
        IntList spans = board.spans[task.index];
        for (int person : board.workers[task.index]) {
            for (int span = 0; span < spans.size(); span += 2) {
                int start = compiled.realStart(spans.get(span), spans.get(span + 1));
                int end = compiled.realEnd(spans.get(span), spans.get(span + 1));
                mark(person, start, end);
                odd += oddMinutes(start, end);
                worked[person] += end - start;
                remember(person, (long) start << 32 | task.index);
            }
            if (finish[task.index]) {
                finisher[task.owner * peopleCount + person] = true;
            }
        }
        return odd;
    }

    private void touch(int person, int from, int until) {
        if (person >= 0) {
            mark(person, compiled.realStart(from, until), compiled.realEnd(from, until));
        }
    }

    private void mark(int person, int start, int end) {
        for (int day = dayOf(start); day < first[person].length && compiled.days.get(day).start() < end; day++) {
            Span span = compiled.days.get(day);
            first[person][day] = Math.min(first[person][day], Math.max(start, span.start()));
            last[person][day] = Math.max(last[person][day], Math.min(end, span.end()));
        }
    }

    private int dayOf(int minute) {
        return compiled.dayOf[compiled.mirrored ? compiled.horizon - 1 - minute : minute];
    }

    private int oddMinutes(int start, int end) {
        int odd = 0;
        for (int day = dayOf(start); day < compiled.days.size() && compiled.days.get(day).start() < end; day++) {
            Span span = compiled.days.get(day);
            int from = Math.max(start, span.start());
            int until = Math.min(end, span.end());
            int early = Math.min(span.start() + weights.earlyBefore(), span.end());
            int late = Math.max(early, span.start() + weights.lateAfter());
            odd += Math.max(0, Math.min(until, early) - from) + Math.max(0, until - Math.max(from, late));
        }
        return odd;
    }

    private int uneven() {
        if (weights.unevenMinute() == 0) {
            return 0;
        }
        int most = Integer.MIN_VALUE;
        int least = Integer.MAX_VALUE;
        for (int person = 0; person < peopleCount; person++) {
            if (hasShift[person]) {
                most = Math.max(most, worked[person]);
                least = Math.min(least, worked[person]);
            }
        }
        return most < least ? 0 : most - least;
    }

    private void remember(int person, long entry) {
        if (sequenceSize[person] == sequence[person].length) {
            sequence[person] = Arrays.copyOf(sequence[person], 2 * sequence[person].length);
        }
        sequence[person][sequenceSize[person]++] = entry;
    }

    private long calm() {
        long points = 0;
        for (int person = 0; person < peopleCount; person++) {
            long[] entries = sequence[person];
            Arrays.sort(entries, 0, sequenceSize[person]);
            for (int index = 1; index < sequenceSize[person]; index++) {
                Task before = compiled.tasks[(int) entries[index - 1]];
                Task after = compiled.tasks[(int) entries[index]];
                if (before != after && dayOf((int) (entries[index - 1] >> 32)) == dayOf((int) (entries[index] >> 32))) {
                    points += workKind[before.index] != workKind[after.index] ? weights.workChange() : 0;
                    points += before.owner != after.owner ? weights.cakeChange() : 0;
                }
            }
        }
        for (int owner = 0; owner < compiled.ordersOfOwner.length; owner++) {
            int people = 0;
            for (int person = 0; person < peopleCount; person++) {
                people += finisher[owner * peopleCount + person] ? 1 : 0;
            }
            points += (long) Math.max(0, people - 1) * weights.extraFinisher();
        }
        return points;
    }
}
