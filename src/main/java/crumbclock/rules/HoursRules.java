package crumbclock.rules;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.sum;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.uni.UniConstraintStream;
import crumbclock.domain.plan.Rule;
import crumbclock.rules.fact.Day;
import crumbclock.rules.fact.GivenTouch;
import crumbclock.rules.fact.HeatRun;
import crumbclock.rules.fact.Opening;
import crumbclock.rules.fact.Roster;
import crumbclock.rules.fact.TimedStep;
import crumbclock.rules.fact.Watch;
import crumbclock.rules.fact.WorkSpan;
import crumbclock.units.Span;

/** R03 hands, for one person's day; R05 presence; R14 not before, not when shut. */
final class HoursRules {

    private HoursRules() {
    }

    /** Work lies inside a shift and outside breaks. */
    static Constraint r03OnShift(ConstraintFactory factory) {
        return factory.forEach(WorkSpan.class)
                .join(Roster.class, Joiners.equal(WorkSpan::personId, Roster::personId))
                .filter((work, roster) -> !roster.working().covers(work.span()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((work, roster, score) -> Cause.of(work.personId(),
                        roster.working().gapsIn(work.span()).get(0),
                        roster.person().name() + " works on " + work.stepId() + " outside a shift or in a break",
                        work.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R03, "on shift"));
    }

    /** A person does one hands-on step at a time. */
    static Constraint r03OneAtATime(ConstraintFactory factory) {
        return factory.forEach(WorkSpan.class)
                .join(WorkSpan.class, Joiners.equal(WorkSpan::personId),
                        Joiners.overlapping(WorkSpan::start, WorkSpan::end),
                        Joiners.filtering((one, other) -> one.no() < other.no()
                                && !one.stepId().equals(other.stepId()) && one.span().overlaps(other.span())))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, score) -> Cause.of(one.personId(), Cause.shared(one.span(), other.span()),
                        one.personId() + " works on " + one.stepId() + " and " + other.stepId() + " at once",
                        one.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R03, "one at a time"));
    }

    /** Nobody works more than their most minutes in a calendar day, touches included. */
    static Constraint r03MostADay(ConstraintFactory factory) {
        return handlings(factory)
                .join(Day.class, Joiners.filtering((handling, day) -> day.span().overlaps(handling.span())))
                .groupBy((handling, day) -> handling.personId(), (handling, day) -> day,
                        sum((handling, day) -> day.span().overlapMinutes(handling.span())))
                .join(Roster.class, Joiners.equal((person, day, minutes) -> person, Roster::personId))
                .filter((person, day, minutes, roster) -> minutes > roster.person().mostMinutesADay())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((person, day, minutes, roster, score) -> Cause.of(person, day.span(),
                        roster.person().name() + " works " + minutes + " min in one day; "
                                + roster.person().mostMinutesADay() + " are the most"))
                .asConstraint(ConstraintNames.of(Rule.R03, "most a day"));
    }

    /** While an oven is on, someone is in the kitchen. */
    static Constraint r05OvenWatched(ConstraintFactory factory) {
        return factory.forEach(HeatRun.class)
                .join(Watch.class)
                .filter((run, watch) -> !watch.minutes().covers(run.on()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((run, watch, score) -> Cause.of(run.cavityId(), watch.minutes().gapsIn(run.on()).get(0),
                        "the oven is on and nobody is in the kitchen"))
                .asConstraint(ConstraintNames.of(Rule.R05, "oven on"));
    }

    /** While a step that needs somebody near runs, someone is in the kitchen. */
    static Constraint r05StepWatched(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> step.step().presence())
                .join(Watch.class)
                .filter((step, watch) -> !watch.minutes().covers(step.span()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, watch, score) -> Cause.of("", watch.minutes().gapsIn(step.span()).get(0),
                        step.id() + " needs somebody near and nobody is in the kitchen", step.id()))
                .asConstraint(ConstraintNames.of(Rule.R05, "step watched"));
    }

    /** No step starts before the problem does, or before its own earliest minute. */
    static Constraint r14Earliest(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> step.start() < Math.max(0, step.step().earliest()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of("",
                        new Span(step.start(), Math.max(0, step.step().earliest())),
                        step.id() + " starts " + ((long) Math.max(0, step.step().earliest()) - step.start())
                                + " min too early",
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R14, "earliest"));
    }

    /** No step ends after the problem does. */
    static Constraint r14Horizon(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .join(Opening.class)
                .filter((step, opening) -> step.end() > opening.horizon())
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, opening, score) -> Cause.of("", new Span(opening.horizon(), step.end()),
                        step.id() + " ends " + (step.end() - opening.horizon()) + " min after the problem's end",
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R14, "horizon"));
    }

    /** Nobody works outside opening hours. */
    static Constraint r14WorkWhenOpen(ConstraintFactory factory) {
        return factory.forEach(WorkSpan.class)
                .join(Opening.class)
                .filter((work, opening) -> !opening.minutes().covers(work.span()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((work, opening, score) -> Cause.of(work.personId(),
                        opening.minutes().gapsIn(work.span()).get(0),
                        work.personId() + " works on " + work.stepId() + " while the kitchen is shut", work.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R14, "work when open"));
    }

    /** Nobody puts in or takes out outside opening hours. */
    static Constraint r14TouchWhenOpen(ConstraintFactory factory) {
        return factory.forEach(GivenTouch.class)
                .join(Opening.class)
                .filter((touch, opening) -> !opening.minutes().covers(touch.when()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((touch, opening, score) -> Cause.of(touch.personId(),
                        opening.minutes().gapsIn(touch.when()).get(0),
                        touch.personId() + " touches " + touch.stepId() + " while the kitchen is shut", touch.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R14, "touch when open"));
    }

    /** All stretches in which hands are busy; joint touches of one movement once. */
    static UniConstraintStream<Handling> handlings(ConstraintFactory factory) {
        var touches = factory.forEach(GivenTouch.class)
                .map(touch -> new Handling(touch.personId(), touch.movement(), touch.when()))
                .distinct();
        return factory.forEach(WorkSpan.class)
                .map(work -> new Handling(work.personId(), "step " + work.stepId(), work.span()))
                .concat(touches);
    }
}
