package crumbclock.app.pace;

import crumbclock.app.pace.Attempts.Attempt;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.pace.LeftOut;
import crumbclock.domain.pace.SeenStep;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Tells for each recorded stretch of one day how many minutes of it were work, or why nobody can know. */
final class RealMinutes {

    /** People write down one thing and then the next: two stretches that share no more than this are taken as one after the other. */
    private static final int SHARED = 2;

    private final FinishedDay day;
    private final Map<String, Step> steps = new LinkedHashMap<>();
    private final Map<String, PlacedStep> placed = new LinkedHashMap<>();
    private final Map<String, Person> people = new LinkedHashMap<>();
    private final List<Attempt> attempts;
    private final List<SeenStep> seen = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();

    /** @param known people whose paces are asked for, by id */
    RealMinutes(FinishedDay day, List<Attempt> attempts, Set<String> known) {
        this.day = day;
        this.attempts = attempts;
        day.problem().steps().forEach(step -> steps.put(step.id(), step));
        day.timetable().steps().forEach(step -> placed.put(step.stepId(), step));
        day.problem().kitchen().people().forEach(person -> people.put(person.id(), person));
        for (Attempt attempt : attempts) {
            String reason = reason(attempt, known);
            if (reason.isEmpty()) {
                seen.add(seen(attempt));
            } else {
                leftOut.add(new LeftOut(attempt.stepId(), day.problem().clock().at(attempt.when().start()),
                        day.problem().clock().at(attempt.when().end()), reason));
            }
        }
    }

    List<SeenStep> seen() {
        return List.copyOf(seen);
    }

    List<LeftOut> leftOut() {
        return List.copyOf(leftOut);
    }

    /** Why the stretch says nothing of minutes; empty when it does. */
    private String reason(Attempt attempt, Set<String> known) {
        PlacedStep planned = placed.get(attempt.stepId());
        if (!attempt.broken().isEmpty()) {
            return attempt.broken();
        }
        if (planned == null || planned.end() <= planned.start()) {
            return "it is not in the plan";
        }
        if (attempt.when().isEmpty()) {
            return "it is done in the minute in which it is started";
        }
        for (KitchenEvent event : day.log().kitchen()) {
            String broken = event.when().overlaps(attempt.when()) ? interruption(event, planned) : "";
            if (!broken.isEmpty()) {
                return broken;
            }
        }
        return alone(planned).map(person -> known.contains(person.id()) ? ofOnePerson(attempt, planned, person)
                : person.id() + " is not one of this kitchen's people").orElse("");
    }

    private String interruption(KitchenEvent event, PlacedStep planned) {
        return switch (event.kind()) {
            case POWER_CUT -> "the power was cut";
            case OVEN_DEAD -> planned.cavityId().equals(event.id()) ? event.id() + " was dead" : "";
            case STORE_WARM -> day.timetable().placements().stream().anyMatch(one -> one.stepId().equals(planned.stepId())
                    && one.storeId().equals(event.id())) ? event.id() + " was warm" : "";
            case PERSON_AWAY -> planned.work().stream().anyMatch(work -> work.personId().equals(event.id())) ? event.id() + " was away" : "";
        };
    }

    /** Who works on it; empty when nobody does, or several together, whose minutes are the slowest one's. */
    private Optional<Person> alone(PlacedStep planned) {
        return planned.work().size() == 1 ? Optional.ofNullable(people.get(planned.work().get(0).personId())) : Optional.empty();
    }

    private String ofOnePerson(Attempt attempt, PlacedStep planned, Person person) {
        for (Attempt other : attempts) {
            PlacedStep at = placed.get(other.stepId());
            if (other != attempt && at != null && at.work().stream().anyMatch(work -> work.personId().equals(person.id()))
                    && other.when().overlapMinutes(attempt.when()) > SHARED) {
                return "at the same time " + person.id() + " is recorded on " + other.stepId();
            }
        }
        if (!mayPutDown(planned)) {
            return person.breaks().stream().noneMatch(attempt.when()::overlaps) ? "" : person.id() + " had a break in it, and nobody wrote whether it was taken";
        }
        boolean otherWork = day.timetable().steps().stream().anyMatch(step -> !step.stepId().equals(planned.stepId())
                && step.span().overlaps(planned.span()) && step.work().stream().anyMatch(work -> work.personId().equals(person.id())));
        if (otherWork) {
            return "it is put down for other work, and nobody wrote for how long";
        }
        return attempt.when().minutes() - off(person, attempt.when()) < 1 ? person.id() + " was not there" : "";
    }

    private boolean mayPutDown(PlacedStep planned) {
        return steps.get(planned.stepId()).handsOn().filter(HandsOn::mayPutDown).isPresent();
    }

    private SeenStep seen(Attempt attempt) {
        PlacedStep planned = placed.get(attempt.stepId());
        Step step = steps.get(attempt.stepId());
        var clock = day.problem().clock();
        var from = clock.at(attempt.when().start());
        var until = clock.at(attempt.when().end());
        Optional<HandsOn> work = step.handsOn();
        Optional<Person> person = work.isPresent() ? alone(planned) : Optional.empty();
        int plannedMinutes = planned.work().isEmpty() ? planned.end() - planned.start()
                : planned.work().get(0).spans().stream().mapToInt(Span::minutes).sum();
        int real = attempt.when().minutes() - (person.isPresent() && mayPutDown(planned) ? off(person.get(), attempt.when()) : 0);
        return new SeenStep(step.id(), step.name(), person.map(Person::id).orElse(""), work.map(HandsOn::workKind).orElse(""), from, until,
                work.map(HandsOn::minutes).orElse(0), plannedMinutes, real);
    }

    /** Breaks, and nights between two shifts; who stays longer than the shift works on. */
    private static int off(Person person, Span when) {
        int off = person.breaks().stream().mapToInt(pause -> pause.overlapMinutes(when)).sum();
        for (int i = 1; i < person.shifts().size(); i++) {
            var between = new Span(person.shifts().get(i - 1).end(), person.shifts().get(i).start());
            off += when.contains(between) ? between.minutes() : 0;
        }
        return off;
    }
}
