package crumbclock.bench.reference;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Touch;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;

/** Who works when: R03 and R04, as far as {@link KitchenModel} says. */
final class HandsModel {

    private final CpModel model;
    private final Problem problem;
    private final List<Person> people;
    /** Of each person: work against work. */
    private final List<List<IntervalVar>> work = new ArrayList<>();
    /** Of each person: what must not be put down, and touches. */
    private final List<List<IntervalVar>> firm = new ArrayList<>();

    HandsModel(CpModel model, Problem problem) {
        this.model = model;
        this.problem = problem;
        this.people = problem.kitchen().people();
        people.forEach(person -> {
            work.add(new ArrayList<>());
            firm.add(new ArrayList<>());
        });
    }

    void work(StepVars vars) {
        HandsOn hands = vars.step().handsOn().orElseThrow();
        if (hands.minutes() == 0) {
            model.addEquality(vars.start(), vars.end());
            return;
        }
        List<Literal> workers = new ArrayList<>();
        for (int person = 0; person < people.size(); person++) {
            if (!people.get(person).hasSkill(hands.skill())) {
                continue;
            }
            int minutes = people.get(person).minutesAtOwnPace(hands.workKind(), hands.minutes());
            Literal does = model.newBoolVar("");
            there(person, vars.start(), minutes, does);
            if (hands.people() == 1) {
                model.addEquality(vars.end(), LinearExpr.affine(vars.start(), 1, minutes)).onlyEnforceIf(does);
            } else {
                model.addGreaterOrEqual(vars.end(), LinearExpr.affine(vars.start(), 1, minutes)).onlyEnforceIf(does);
            }
            IntervalVar span = model.newOptionalIntervalVar(vars.start(), vars.length(), vars.end(), does, "");
            work.get(person).add(span);
            if (!hands.mayPutDown()) {
                firm.get(person).add(span);
            }
            workers.add(does);
        }
        model.addEquality(LinearExpr.sum(workers.toArray(Literal[]::new)), hands.people());
    }

    /** Put-down work in the relaxed model: it takes as long as the quickest needs, and no hands. */
    void workWithoutHands(StepVars vars) {
        HandsOn hands = vars.step().handsOn().orElseThrow();
        int least = people.stream().filter(person -> person.hasSkill(hands.skill()))
                .mapToInt(person -> person.minutesAtOwnPace(hands.workKind(), hands.minutes())).min().orElseThrow();
        model.addGreaterOrEqual(vars.end(), LinearExpr.affine(vars.start(), 1, least));
    }

    /** @param ofBake several bakes may go in or out in one movement: their touches bind somebody, but not only once */
    void touch(Touch touch, LinearArgument from, boolean ofBake) {
        List<Literal> workers = new ArrayList<>();
        for (int person = 0; person < people.size(); person++) {
            if (people.get(person).hasSkill(touch.skill())) {
                Literal does = model.newBoolVar("");
                there(person, from, touch.minutes(), does);
                if (!ofBake) {
                    firm.get(person).add(model.newOptionalFixedSizeIntervalVar(from, touch.minutes(), does, ""));
                }
                workers.add(does);
            }
        }
        model.addExactlyOne(workers);
    }

    /** If the person does it: at work for so many minutes from then on, in opening hours and outside breaks. */
    private void there(int person, LinearArgument from, int minutes, Literal does) {
        model.addLinearExpressionInDomain(from, starts(people.get(person), minutes)).onlyEnforceIf(does);
    }

    private Domain starts(Person person, int minutes) {
        List<long[]> spans = new ArrayList<>();
        for (Span shift : person.shifts()) {
            for (Span open : problem.kitchen().opening()) {
                int from = Math.max(shift.start(), open.start());
                int end = Math.min(shift.end(), open.end());
                for (Span pause : person.breaks()) {
                    if (pause.start() < end && pause.end() > from) {
                        add(spans, from, pause.start() - minutes);
                        from = pause.end();
                    }
                }
                add(spans, from, end - minutes);
            }
        }
        return Domain.fromIntervals(spans.toArray(long[][]::new));
    }

    private static void add(List<long[]> spans, int first, int last) {
        if (first <= last) {
            spans.add(new long[] {first, last});
        }
    }

    /** To be called once, when all work and touches are told. */
    void close() {
        work.forEach(model::addNoOverlap);
        firm.forEach(model::addNoOverlap);
    }
}
