package crumbclock.rules;

import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.countDistinct;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.max;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.min;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.sumLong;
import static ai.timefold.solver.core.api.score.stream.ConstraintCollectors.toList;

import ai.timefold.solver.core.api.score.buildin.hardmediumsoftlong.HardMediumSoftLongScore;
import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.Joiners;
import ai.timefold.solver.core.api.score.stream.bi.BiConstraintStream;
import crumbclock.domain.plan.Wish;
import crumbclock.domain.problem.Weights;
import crumbclock.rules.fact.Day;
import crumbclock.rules.fact.Roster;
import crumbclock.rules.fact.WorkSpan;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The wishes about people: W03 few, even and ordinary hours; W04 calm. */
final class PeopleWishes {

    private PeopleWishes() {
    }

    /** For each person and day, the minutes from the first to the last work or touch. */
    static Constraint w03Spread(ConstraintFactory factory) {
        return HoursRules.handlings(factory)
                .join(Day.class, Joiners.filtering((handling, day) -> day.span().overlaps(handling.span())))
                .groupBy((handling, day) -> handling.personId(), (handling, day) -> day,
                        min((Handling handling, Day day) -> Math.max(day.span().start(), handling.span().start())),
                        max((Handling handling, Day day) -> Math.min(day.span().end(), handling.span().end())))
                .map((person, day, first, last) -> person, (person, day, first, last) -> new Span(first, last))
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT,
                        (person, spread, weights) -> (long) spread.minutes() * weights.spreadMinute())
                .justifyWith((person, spread, weights, score) -> Cause.of(person, spread,
                        person + " is busy over " + spread.minutes() + " min of a day"))
                .asConstraint(ConstraintNames.of(Wish.W03, "spread"));
    }

    /** Minutes of hands-on work early or late in the day. */
    static Constraint w03OddHours(ConstraintFactory factory) {
        return factory.forEach(WorkSpan.class)
                .join(Day.class, Joiners.filtering((work, day) -> day.span().overlaps(work.span())))
                .join(Weights.class)
                .filter((work, day, weights) -> oddMinutes(work.span(), day.span(), weights) > 0)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT, (work, day, weights) -> oddMinutes(work.span(),
                        day.span(), weights) * weights.oddHourMinute())
                .justifyWith((work, day, weights, score) -> Cause.of(work.personId(), work.span(),
                        work.personId() + " works " + oddMinutes(work.span(), day.span(), weights)
                                + " early or late minutes on " + work.stepId(),
                        work.stepId()))
                .asConstraint(ConstraintNames.of(Wish.W03, "odd hours"));
    }

    /** Minutes of hands-on work between the person with most and the one with least, of those who have a shift. */
    static Constraint w03Uneven(ConstraintFactory factory) {
        BiConstraintStream<String, Long> atLeastNone = factory.forEach(Roster.class)
                .filter(Roster::hasShift)
                .map(Roster::personId, roster -> 0L);
        return factory.forEach(WorkSpan.class)
                .ifExists(Roster.class, Joiners.equal(WorkSpan::personId, Roster::personId),
                        Joiners.filtering((work, roster) -> roster.hasShift()))
                .map(WorkSpan::personId, work -> (long) work.span().minutes())
                .concat(atLeastNone)
                .groupBy((person, minutes) -> person, sumLong((person, minutes) -> minutes))
                .groupBy(max((String person, Long minutes) -> minutes), min((String person, Long minutes) -> minutes))
                .filter((most, least) -> most > least)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT,
                        (most, least, weights) -> (most - least) * weights.unevenMinute())
                .justifyWith((most, least, weights, score) -> Cause.of("", new Span(0, 0),
                        "one person works " + most + " min, another " + least))
                .asConstraint(ConstraintNames.of(Wish.W03, "uneven"));
    }

    /** Going on to another kind of work within a day. */
    static Constraint w04WorkChange(ConstraintFactory factory) {
        return changes(factory)
                .filter((person, change) -> !change.before().work().workKind().equals(change.after().work().workKind()))
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT, (person, change, weights) -> weights.workChange())
                .justifyWith((person, change, weights, score) -> Cause.of(person, change.after().span(),
                        person + " goes from " + change.before().stepId() + " on to another kind of work, "
                                + change.after().stepId(),
                        change.before().stepId(), change.after().stepId()))
                .asConstraint(ConstraintNames.of(Wish.W04, "work change"));
    }

    /** Going on to another cake or batch within a day. */
    static Constraint w04CakeChange(ConstraintFactory factory) {
        return changes(factory)
                .filter((person, change) -> !change.before().ownerId().equals(change.after().ownerId()))
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT, (person, change, weights) -> weights.cakeChange())
                .justifyWith((person, change, weights, score) -> Cause.of(person, change.after().span(),
                        person + " goes from " + change.before().stepId() + " on to another cake, "
                                + change.after().stepId(),
                        change.before().stepId(), change.after().stepId()))
                .asConstraint(ConstraintNames.of(Wish.W04, "cake change"));
    }

    /** Each person beyond the first who works on one cake's finish. */
    static Constraint w04ExtraFinisher(ConstraintFactory factory) {
        return factory.forEach(WorkSpan.class)
                .filter(work -> work.work().finish())
                .groupBy(WorkSpan::ownerId, countDistinct(WorkSpan::personId))
                .filter((cake, finishers) -> finishers > 1)
                .join(Weights.class)
                .penalizeLong(HardMediumSoftLongScore.ONE_SOFT,
                        (cake, finishers, weights) -> (long) (finishers - 1) * weights.extraFinisher())
                .justifyWith((cake, finishers, weights, score) -> Cause.of("", new Span(0, 0),
                        finishers + " people work on the finish of " + cake, cake))
                .asConstraint(ConstraintNames.of(Wish.W04, "extra finisher"));
    }

    private static BiConstraintStream<String, Change> changes(ConstraintFactory factory) {
        return factory.forEach(WorkSpan.class)
                .groupBy(WorkSpan::personId, toList())
                .flattenLast(PeopleWishes::changesAmong);
    }

    /** Work on another step that begins on the same day as the work before it. */
    private static List<Change> changesAmong(List<WorkSpan> work) {
        List<WorkSpan> sorted = work.stream()
                .sorted(Comparator.comparing(WorkSpan::span).thenComparing(WorkSpan::no)).toList();
        List<Change> changes = new ArrayList<>();
        for (int i = 1; i < sorted.size(); i++) {
            WorkSpan before = sorted.get(i - 1);
            WorkSpan after = sorted.get(i);
            if (before.day() == after.day() && before.day() >= 0 && !before.stepId().equals(after.stepId())) {
                changes.add(new Change(before, after));
            }
        }
        return changes;
    }

    private static long oddMinutes(Span work, Span day, Weights weights) {
        int early = Math.min(day.end(), day.start() + weights.earlyBefore());
        int late = Math.max(early, Math.min(day.end(), day.start() + weights.lateAfter()));
        return (long) work.overlapMinutes(new Span(day.start(), early)) + work.overlapMinutes(new Span(late, day.end()));
    }

    private record Change(WorkSpan before, WorkSpan after) {
    }
}
