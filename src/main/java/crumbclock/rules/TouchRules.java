package crumbclock.rules;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.rules.fact.GivenTouch;
import crumbclock.rules.fact.Roster;
import crumbclock.rules.fact.TouchNeed;
import crumbclock.rules.fact.WorkSpan;

/** R04 touches: putting in and taking out, by somebody who is free for it. */
final class TouchRules {

    private TouchRules() {
    }

    /** Every touch that a placed step needs is there. */
    static Constraint r04Missing(ConstraintFactory factory) {
        return factory.forEach(TouchNeed.class)
                .ifNotExists(GivenTouch.class, Joiners.equal(TouchNeed::stepId, GivenTouch::stepId),
                        Joiners.equal(TouchNeed::at, GivenTouch::at))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((need, score) -> Cause.of("", need.due(),
                        need.stepId() + " needs a " + words(need.at()) + " touch and has none", need.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "missing"));
    }

    /** No touch is there twice. */
    static Constraint r04Twice(ConstraintFactory factory) {
        return factory.forEach(GivenTouch.class)
                .join(GivenTouch.class, Joiners.equal(GivenTouch::stepId), Joiners.equal(GivenTouch::at),
                        Joiners.lessThan(GivenTouch::no))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, score) -> Cause.of(other.personId(), other.when(),
                        other.stepId() + " has its " + words(other.at()) + " touch twice", other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "twice"));
    }

    /** No touch without need. */
    static Constraint r04Needless(ConstraintFactory factory) {
        return factory.forEach(GivenTouch.class)
                .ifNotExists(TouchNeed.class, Joiners.equal(GivenTouch::stepId, TouchNeed::stepId),
                        Joiners.equal(GivenTouch::at, TouchNeed::at))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((touch, score) -> Cause.of(touch.personId(), touch.when(),
                        touch.stepId() + " has a " + words(touch.at()) + " touch and needs none", touch.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "needless"));
    }

    /** Touches of steps that are not placed. */
    static Constraint r04Stray(ConstraintFactory factory) {
        return Strays.of(factory, Rule.R04);
    }

    /** A touch lies at its end of the step. */
    static Constraint r04Due(ConstraintFactory factory) {
        return factory.forEach(TouchNeed.class)
                .join(GivenTouch.class, Joiners.equal(TouchNeed::stepId, GivenTouch::stepId),
                        Joiners.equal(TouchNeed::at, GivenTouch::at))
                .filter((need, touch) -> !touch.when().equals(need.due()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((need, touch, score) -> Cause.of(touch.personId(), touch.when(),
                        "the " + words(need.at()) + " touch of " + need.stepId() + " takes minutes " + touch.start()
                                + " to " + touch.end() + "; it is due from " + need.due().start() + " to "
                                + need.due().end(),
                        need.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "due"));
    }

    /** Whoever touches is known in the kitchen. */
    static Constraint r04KnownPerson(ConstraintFactory factory) {
        return factory.forEach(GivenTouch.class)
                .ifNotExists(Roster.class, Joiners.equal(GivenTouch::personId, Roster::personId))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((touch, score) -> Cause.of(touch.personId(), touch.when(),
                        "nobody in the kitchen is known as \"" + touch.personId() + "\"", touch.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "known person"));
    }

    /** Whoever touches has the skill for it. */
    static Constraint r04Skill(ConstraintFactory factory) {
        return factory.forEach(GivenTouch.class)
                .join(TouchNeed.class, Joiners.equal(GivenTouch::stepId, TouchNeed::stepId),
                        Joiners.equal(GivenTouch::at, TouchNeed::at))
                .join(Roster.class, Joiners.equal((touch, need) -> touch.personId(), Roster::personId))
                .filter((touch, need, roster) -> !roster.person().hasSkill(need.touch().skill()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((touch, need, roster, score) -> Cause.of(touch.personId(), touch.when(),
                        roster.person().name() + " has no skill \"" + need.touch().skill() + "\", which the "
                                + words(need.at()) + " touch of " + need.stepId() + " asks for",
                        need.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "skill"));
    }

    /** A touch lies inside a shift and outside breaks. */
    static Constraint r04OnShift(ConstraintFactory factory) {
        return factory.forEach(GivenTouch.class)
                .join(Roster.class, Joiners.equal(GivenTouch::personId, Roster::personId))
                .filter((touch, roster) -> !roster.working().covers(touch.when()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((touch, roster, score) -> Cause.of(touch.personId(),
                        roster.working().gapsIn(touch.when()).get(0),
                        roster.person().name() + " touches " + touch.stepId() + " outside a shift or in a break",
                        touch.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "on shift"));
    }

    /** Nobody touches anything while at work that may not be put down, or while away. */
    static Constraint r04HandsFree(ConstraintFactory factory) {
        return factory.forEach(GivenTouch.class)
                .join(WorkSpan.class, Joiners.equal(GivenTouch::personId, WorkSpan::personId),
                        Joiners.overlapping(GivenTouch::start, GivenTouch::end, WorkSpan::start, WorkSpan::end))
                .filter((touch, work) -> work.isSolid() && work.span().overlaps(touch.when()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((touch, work, score) -> Cause.of(touch.personId(),
                        Cause.shared(touch.when(), work.span()),
                        touch.personId() + " cannot put down " + work.stepId() + " to touch " + touch.stepId(),
                        touch.stepId(), work.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "hands free"));
    }

    /** Two touches of one person never coincide, but for pans that move together. */
    static Constraint r04OneAtATime(ConstraintFactory factory) {
        return factory.forEach(GivenTouch.class)
                .join(GivenTouch.class, Joiners.equal(GivenTouch::personId),
                        Joiners.overlapping(GivenTouch::start, GivenTouch::end),
                        Joiners.filtering((one, other) -> one.no() < other.no() && !isSameTouch(one, other)
                                && one.when().overlaps(other.when()) && !one.isOneWith(other)))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((one, other, score) -> Cause.of(one.personId(), Cause.shared(one.when(), other.when()),
                        one.personId() + " touches " + one.stepId() + " and " + other.stepId() + " at once",
                        one.stepId(), other.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R04, "one at a time"));
    }

    /** A touch given twice is told once, by {@link #r04Twice}. */
    private static boolean isSameTouch(GivenTouch one, GivenTouch other) {
        return one.stepId().equals(other.stepId()) && one.at() == other.at();
    }

    private static String words(TouchEnd at) {
        return switch (at) {
            case PUT_IN -> "putting-in";
            case TAKE_OUT -> "taking-out";
        };
    }
}
