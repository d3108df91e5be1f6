package crumbclock.rules;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.max;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.problem.FixedStep;
import crumbclock.rules.fact.Roster;
import crumbclock.rules.fact.TimedStep;
import crumbclock.rules.fact.WorkSpan;
import crumbclock.units.Span;
import java.util.List;

/** R03 hands, for one step: who works on it, how long, and in what pieces. {@link HoursRules} has the rest of R03. */
final class HandsRules {

    private HandsRules() {
    }

    /** As many different people as the step needs; nobody on a milestone or an unattended step. */
    static Constraint r03Heads(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> step.placed().work().size() != headsNeeded(step)
                        || differentHeads(step) != headsNeeded(step))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of("", step.span(),
                        step.id() + " names " + step.placed().work().size() + " people, " + differentHeads(step)
                                + " of them different; it needs " + headsNeeded(step),
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R03, "heads"));
    }

    /** Everybody who works is known in the kitchen. */
    static Constraint r03KnownPerson(ConstraintFactory factory) {
        return factory.forEach(WorkSpan.class)
                .ifNotExists(Roster.class, Joiners.equal(WorkSpan::personId, Roster::personId))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((work, score) -> Cause.of(work.personId(), work.span(),
                        "nobody in the kitchen is known as \"" + work.personId() + "\"", work.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R03, "known person"));
    }

    /** Everybody who works has the skill that the work asks for. */
    static Constraint r03Skill(ConstraintFactory factory) {
        return factory.forEach(WorkSpan.class)
                .join(Roster.class, Joiners.equal(WorkSpan::personId, Roster::personId))
                .filter((work, roster) -> !roster.person().hasSkill(work.work().skill()))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((work, roster, score) -> Cause.of(work.personId(), work.span(),
                        roster.person().name() + " has no skill \"" + work.work().skill() + "\", which "
                                + work.stepId() + " asks for",
                        work.stepId()))
                .asConstraint(ConstraintNames.of(Rule.R03, "skill"));
    }

    /** The work fills the step from its first to its last minute, in order, and for all people alike. */
    static Constraint r03Spans(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> step.isHandsOn() && !fillsStep(step))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of("", step.span(),
                        "the work on " + step.id() + " is " + describe(step)
                                + "; it must run in order from the step's start to its end, for all people alike",
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R03, "spans"));
    }

    /** Work that may not be put down is in one piece. */
    static Constraint r03InOneGo(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(step -> step.needsHands() && !step.step().handsOn().orElseThrow().mayPutDown()
                        && step.placed().work().stream().anyMatch(work -> work.spans().size() > 1))
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, score) -> Cause.of("", step.span(),
                        step.id() + " may not be put down, but is done in several pieces", step.id()))
                .asConstraint(ConstraintNames.of(Rule.R03, "in one go"));
    }

    /** The work takes as long as the slowest of its people needs; recorded work took as long as it took. */
    static Constraint r03Minutes(ConstraintFactory factory) {
        return factory.forEach(TimedStep.class)
                .filter(TimedStep::needsHands)
                .ifNotExists(FixedStep.class, Joiners.equal(TimedStep::id, fixed -> fixed.step().stepId()))
                .join(WorkSpan.class, Joiners.equal(TimedStep::id, WorkSpan::stepId))
                .join(Roster.class, Joiners.equal((step, work) -> work.personId(), Roster::personId))
                .groupBy((step, work, roster) -> step, max((TimedStep step, WorkSpan work, Roster roster) -> roster
                        .person().minutesAtOwnPace(work.work().workKind(), work.work().minutes())))
                .filter((step, needed) -> minutesGiven(step) != needed)
                .penalize(HardMediumSoftLongScore.ONE_HARD)
                .justifyWith((step, needed, score) -> Cause.of("", step.span(),
                        step.id() + " is worked on for " + minutesGiven(step) + " min; its slowest person needs " + needed,
                        step.id()))
                .asConstraint(ConstraintNames.of(Rule.R03, "minutes"));
    }

    private static int headsNeeded(TimedStep step) {
        return step.needsHands() ? step.step().handsOn().orElseThrow().people() : 0;
    }

    private static long differentHeads(TimedStep step) {
        return step.placed().work().stream().map(PersonWork::personId).distinct().count();
    }

    private static boolean fillsStep(TimedStep step) {
        if (!step.needsHands()) {
            return step.start() == step.end();
        }
        return step.placed().work().stream().allMatch(work -> work.spans().equals(firstSpans(step)))
                && (step.placed().work().isEmpty() || runsThrough(firstSpans(step), step));
    }

    private static boolean runsThrough(List<Span> spans, TimedStep step) {
        if (spans.isEmpty() || spans.get(0).start() != step.start() || spans.get(spans.size() - 1).end() != step.end()) {
            return false;
        }
        for (int i = 0; i < spans.size(); i++) {
            if (spans.get(i).isEmpty() || i > 0 && spans.get(i).start() < spans.get(i - 1).end()) {
                return false;
            }
        }
        return true;
    }

    private static List<Span> firstSpans(TimedStep step) {
        return step.placed().work().get(0).spans();
    }

    private static long minutesGiven(TimedStep step) {
        return step.placed().work().isEmpty() ? 0
                : firstSpans(step).stream().mapToLong(span -> (long) span.end() - span.start()).sum();
    }

    private static String describe(TimedStep step) {
        if (!step.needsHands()) {
            return "none, yet the step takes " + ((long) step.end() - step.start()) + " min";
        }
        return step.placed().work().size() == 1 ? "broken or does not meet the step's ends" : "broken or unlike";
    }
}
