package crumbclock.app.pace;

import crumbclock.domain.day.DayLog;
import crumbclock.domain.day.DayWord;
import crumbclock.domain.day.StepEvent;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * From lines of a day file to stretches of work: each from started to done. A step that is done again has several. Lines without a
 * time say nothing of minutes. The order of the lines does not count.
 */
final class Attempts {

    private static final int NONE = -1;
    private static final String TWICE = "it is recorded twice with no \"redo\" between";

    /** One stretch; with a reason when it is not to be reckoned with. */
    record Attempt(String stepId, Span when, String broken) {
    }

    private final List<Attempt> all = new ArrayList<>();
    private final Set<String> slower = new LinkedHashSet<>();
    private int withoutStart;

    Attempts(DayLog log) {
        Map<String, List<StepEvent>> byStep = new TreeMap<>();
        for (StepEvent event : log.steps()) {
            for (String id : event.stepIds()) {
                byStep.computeIfAbsent(id, key -> new ArrayList<>()).add(event);
            }
        }
        byStep.forEach(this::step);
    }

    /** By step, then by time. */
    List<Attempt> all() {
        return List.copyOf(all);
    }

    int withoutStart() {
        return withoutStart;
    }

    /** Steps told to be slower, without both times. */
    int withoutTimes() {
        return (int) slower.stream().filter(id -> all.stream().noneMatch(one -> one.stepId().equals(id) && !one.when().isEmpty())).count();
    }

    private void step(String id, List<StepEvent> events) {
        boolean skipped = events.stream().anyMatch(event -> event.word() == DayWord.SKIP);
        if (events.stream().anyMatch(event -> event.word() == DayWord.SLOWER)) {
            slower.add(id);
        }
        int open = NONE;
        Attempt last = null;
        boolean doneAlone = false;
        boolean twice = false;
        for (StepEvent event : events.stream().filter(StepEvent::isTimed)
                .sorted(Comparator.comparingInt(StepEvent::minute).thenComparing(event -> rank(event.word()))).toList()) {
            switch (event.word()) {
                case STARTED -> {
                    // begun twice before it was done: the later time counts, as when planning again
                    twice |= last != null;
                    keep(last == null ? null : new Attempt(id, last.when(), TWICE));
                    last = null;
                    open = event.minute();
                }
                case DONE -> {
                    doneAlone |= open == NONE && last == null;
                    int start = open != NONE ? open : last == null ? NONE : last.when().start();
                    last = start == NONE ? null : new Attempt(id, new Span(start, event.minute()),
                            skipped ? "it is recorded as skipped" : twice ? TWICE : "");
                    open = NONE;
                }
                case SPOILED, REDO -> {
                    String reason = event.word() == DayWord.SPOILED ? "what it made was spoiled" : "it was done again";
                    keep(open != NONE ? new Attempt(id, new Span(open, event.minute()), reason)
                            : last == null ? null : new Attempt(id, last.when(), reason));
                    last = null;
                    open = NONE;
                    twice = false;
                }
                default -> {
                    // slower and skip have no times of their own
                }
            }
        }
        keep(open == NONE ? last : new Attempt(id, new Span(open, open), "nobody wrote when it was done"));
        withoutStart += doneAlone ? 1 : 0;
    }

    private void keep(Attempt attempt) {
        if (attempt != null) {
            all.add(attempt);
        }
    }

    /** Within one minute the end of what was comes before the beginning of what is next. */
    private static int rank(DayWord word) {
        return switch (word) {
            case DONE -> 0;
            case SPOILED -> 1;
            case REDO -> 2;
            case STARTED -> 3;
            default -> 4;
        };
    }
}
