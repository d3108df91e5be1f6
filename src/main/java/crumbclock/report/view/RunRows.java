package crumbclock.report.view;

import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The single lines of a run sheet. */
final class RunRows {

    /** Something that stays longer than this after its least rest needs no timer: nobody waits for it. */
    private static final int MOST_AFTER_TIMER = 60;

    private final PlanView view;
    private final ClockText clock;

    RunRows(PlanView view) {
        this.view = view;
        this.clock = view.clock();
    }

    /** One row for each stretch of a hands-on step, as it may be put down and picked up again. */
    List<RunSheet.Row> work(PlacedStep placed, PersonWork work) {
        List<RunSheet.Row> rows = new ArrayList<>();
        for (int part = 0; part < work.spans().size(); part++) {
            var span = work.spans().get(part);
            List<String> notes = new ArrayList<>();
            if (work.spans().size() > 1) {
                notes.add("part " + (part + 1) + " of " + work.spans().size());
            }
            if (part + 1 < work.spans().size()) {
                int next = work.spans().get(part + 1).start();
                notes.add("put it down, go on at " + clock.timeSeenFrom(span.start(), next));
            }
            if (part == 0) {
                notes.addAll(workNotes(placed));
            }
            String window = part == 0 ? beginWindow(placed, span) : "";
            rows.add(row(RunSheet.Kind.WORK, placed.stepId(), span, view.stepName(placed.stepId()),
                    String.join("; ", workPlaces(placed)), others(placed, work.personId()), window, notes));
        }
        return rows;
    }

    private String beginWindow(PlacedStep placed, Span span) {
        return TimeWindow.begin(view, placed.stepId()).filter(TimeWindow::hasEnd)
                .map(window -> "begin " + window.text(clock, span.start())).orElse("");
    }

    private List<String> workNotes(PlacedStep placed) {
        List<String> notes = new ArrayList<>();
        view.findStep(placed.stepId()).flatMap(Step::handsOn).filter(HandsOn::away)
                .ifPresent(away -> notes.add("away from the kitchen"));
        if (view.isFixed(placed.stepId())) {
            notes.add("already recorded");
        }
        view.findStep(placed.stepId()).map(Step::freeFrom).filter(set -> !set.isEmpty())
                .ifPresent(set -> notes.add("keep free from " + String.join(", ", set)));
        for (Wait wait : view.waitsFrom(placed.stepId())) {
            // a thing that cools or sets by itself has no touch that would start a timer
            var next = view.findStep(wait.toStepId());
            var nextPlaced = view.findPlaced(wait.toStepId());
            if (next.isPresent() && nextPlaced.isPresent() && next.get().handsOn().isEmpty()
                    && next.get().putIn().isEmpty() && next.get().leastMinutes() > 0) {
                int done = nextPlaced.get().start() + next.get().leastMinutes();
                notes.add("timer: " + next.get().name() + " until "
                        + clock.timeSeenFrom(placed.start(), done));
            }
        }
        return notes;
    }

    private List<String> workPlaces(PlacedStep placed) {
        List<String> places = new ArrayList<>();
        if (!placed.surfaceId().isEmpty()) {
            places.add(view.surfaceName(placed.surfaceId()));
        }
        placed.units().forEach(unit -> places.add(view.unitName(unit.poolId(), unit.unit())));
        return places;
    }

    private String others(PlacedStep placed, String personId) {
        return placed.work().stream().map(PersonWork::personId).filter(id -> !id.equals(personId))
                .map(view::personName).collect(Collectors.joining(", "));
    }

    RunSheet.Row touch(PlacedTouch touch) {
        return touch.at() == TouchEnd.PUT_IN ? putIn(touch) : takeOut(touch);
    }

    private RunSheet.Row putIn(PlacedTouch touch) {
        var step = view.findStep(touch.stepId());
        List<String> notes = new ArrayList<>();
        step.flatMap(Step::oven).map(OvenUse::temperatureC).ifPresent(celsius -> notes.add(celsius + " °C"));
        step.ifPresent(one -> notes.addAll(timers(touch, one)));
        if (view.isFixed(touch.stepId())) {
            notes.add("already recorded");
        }
        return row(RunSheet.Kind.PUT_IN, touch.stepId(), touch.when(), view.stepName(touch.stepId()),
                standsIn(touch.stepId()), "", "", notes);
    }

    private String formText(Optional<Step> step) {
        return step.flatMap(Step::place).map(need -> form(need.form())).orElse("");
    }

    private static String form(Form form) {
        return form.pieces() > 1 ? ", " + form.pieces() + " × " + form.name() : ", " + form.name();
    }

    /** A timer for the least rest, and the last minute where there is one; an elastic holding gets its planned end. */
    private List<String> timers(PlacedTouch touch, Step step) {
        var window = TimeWindow.takeOut(view, step.id());
        var placed = view.findPlaced(step.id());
        if (window.isEmpty() || placed.isEmpty()) {
            return List.of();
        }
        int planned = placed.get().end() - step.takeOutMinutes();
        int from = touch.when().start();
        int least = touch.when().end() + step.leastMinutes();
        if (step.leastMinutes() == 0) {
            return List.of("stays until " + clock.timeSeenFrom(from, planned));
        }
        if (planned - least > MOST_AFTER_TIMER) {
            return List.of("stays until " + clock.timeSeenFrom(from, planned) + ", not less than until "
                    + clock.timeSeenFrom(from, least));
        }
        return List.of("timer " + ClockText.duration(step.leastMinutes()) + ", to " + clock.timeSeenFrom(from, least)
                + (planned > least ? "; planned out " + clock.timeSeenFrom(from, planned) : ""));
    }

    private RunSheet.Row takeOut(PlacedTouch touch) {
        List<String> notes = new ArrayList<>();
        String window = TimeWindow.takeOut(view, touch.stepId())
                .map(one -> "take out " + one.text(clock, touch.when().start())).orElse("");
        nextWork(touch.stepId()).ifPresent(notes::add);
        return row(RunSheet.Kind.TAKE_OUT, touch.stepId(), touch.when(), view.stepName(touch.stepId()),
                standsIn(touch.stepId()), "", window, notes);
    }

    /** What the thing is wanted for first, when, and how long it must be out before that. */
    private Optional<String> nextWork(String stepId) {
        Wait first = null;
        PlacedStep next = null;
        for (Wait wait : view.waitsFrom(stepId)) {
            var placed = view.findPlaced(wait.toStepId());
            if (placed.isPresent() && (next == null || placed.get().start() < next.start())) {
                first = wait;
                next = placed.get();
            }
        }
        if (next == null) {
            return Optional.empty();
        }
        String who = next.work().stream().map(one -> view.personName(one.personId()))
                .collect(Collectors.joining(", "));
        int end = view.findPlaced(stepId).map(PlacedStep::end).orElse(next.start());
        return Optional.of("next: " + view.stepName(next.stepId()) + " " + clock.timeSeenFrom(end, next.start())
                + (who.isEmpty() ? "" : " (" + who + ")") + (first.leastMinutes() <= 0 ? ""
                        : ", out at least " + ClockText.duration(first.leastMinutes()) + " before"));
    }

    private String standsIn(String stepId) {
        String oven = PlaceWords.inOven(view, stepId);
        if (!oven.isEmpty()) {
            return oven;
        }
        String store = PlaceWords.inStore(view, stepId);
        if (!store.isEmpty()) {
            return store;
        }
        return view.findPlaced(stepId).map(placed -> String.join("; ", workPlaces(placed))).orElse("");
    }

    private RunSheet.Row row(RunSheet.Kind kind, String stepId, Span when, String what, String where, String with,
            String window, List<String> notes) {
        String owner = view.ownerId(stepId);
        return new RunSheet.Row(when.start(), when.end(), kind, stepId, clock.span(when), what,
                view.ownerLabel(owner), view.orderIndex(owner), view.ownerTitle(owner)
                + (kind == RunSheet.Kind.WORK ? "" : formText(view.findStep(stepId))), where, with, window, notes);
    }
}
