package crumbclock.app.replan;

import crumbclock.domain.day.DayNote;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.StepEvent;
import crumbclock.domain.plan.PlacedStep;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.function.Consumer;

/** What was written down of each step: when it began, when it was over, how much longer it takes. */
final class Records {

    private final Map<String, Integer> started = new LinkedHashMap<>();
    private final Map<String, Integer> done = new LinkedHashMap<>();
    private final Map<String, Integer> slower = new LinkedHashMap<>();

    /**
     * @param lostAt minute from which on a step's work is lost, by step; what was recorded until then counts for nothing
     * @param notes  told of each contradiction
     */
    Records(List<StepEvent> events, OldPlan old, int now, Map<String, Integer> lostAt, Consumer<DayNote> notes) {
        for (StepEvent event : events) {
            for (String id : event.stepIds()) {
                boolean before = event.isTimed() && event.minute() <= lostAt.getOrDefault(id, -1)
                        || !event.isTimed() && lostAt.containsKey(id);
                if (!before) {
                    take(event, id, old, now, notes);
                }
            }
        }
        for (Map.Entry<String, Integer> end : done.entrySet()) {
            Integer start = started.get(end.getKey());
            if (start != null && start > end.getValue()) {
                started.remove(end.getKey());
                notes.accept(new DayNote(0, end.getKey() + " is recorded as done before it was started; taken as done then, begun earlier"));
            }
        }
    }

    private void take(StepEvent event, String id, OldPlan old, int now, Consumer<DayNote> notes) {
        if (event.word() == DayWord.STARTED) {
            put(started, event, id, event.isTimed() ? event.minute() : planned(old, id, now, true), notes);
        } else if (event.word() == DayWord.DONE) {
            put(done, event, id, event.isTimed() ? event.minute() : planned(old, id, now, false), notes);
        } else if (event.word() == DayWord.SLOWER) {
            slower.merge(id, event.minutes(), Integer::sum);
        }
    }

    private static int planned(OldPlan old, String id, int now, boolean start) {
        return old.find(id).map(start ? PlacedStep::start : PlacedStep::end).filter(minute -> minute <= now).orElse(now);
    }

    private static void put(Map<String, Integer> times, StepEvent event, String id, int minute, Consumer<DayNote> notes) {
        Integer before = times.put(id, minute);
        if (before != null && before != minute) {
            notes.accept(new DayNote(event.line(), id + " is recorded as " + (event.word() == DayWord.DONE ? "done" : "started")
                    + " twice; the later time counts"));
            times.put(id, Math.max(before, minute));
        }
    }

    boolean knows(String id) {
        return started.containsKey(id) || done.containsKey(id);
    }

    OptionalInt started(String id) {
        return started.containsKey(id) ? OptionalInt.of(started.get(id)) : OptionalInt.empty();
    }

    OptionalInt done(String id) {
        return done.containsKey(id) ? OptionalInt.of(done.get(id)) : OptionalInt.empty();
    }

    int slower(String id) {
        return slower.getOrDefault(id, 0);
    }
}
