package crumbclock.app.promise;

import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.search.model.DecodeDesk;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * A problem with less room than the real one: some work has a person who does it, and some waits last as long as they may, so that what is
 * waited for leaves its place early. Each of its timetables is one of the real problem, too.
 */
final class Narrowed {

    private final Choices choices;
    /** By the id of a hands-on step, the id of who does it. */
    private final Map<String, String> doers;
    /** Places, among the waits of the problem, of those that last as long as they may. */
    private final Set<Integer> longest;

    /** What there is to choose: who can do what alone, and the places of waits with a range. */
    private record Choices(Problem problem, Map<String, List<String>> doers, List<Integer> waits) {

        static Choices of(Problem problem) {
            Set<String> fixed = problem.fixedSteps().stream().map(one -> one.step().stepId()).collect(Collectors.toSet());
            Map<String, List<String>> doers = new LinkedHashMap<>();
            for (Step step : problem.steps()) {
                List<String> able = step.handsOn().filter(work -> work.people() == 1 && work.minutes() > 0).map(work -> problem.kitchen().people()
                        .stream().filter(person -> person.hasSkill(work.skill())).map(Person::id).toList()).orElse(List.of());
                if (able.size() > 1 && !fixed.contains(step.id())) {
                    doers.put(step.id(), able);
                }
            }
            List<Integer> waits = IntStream.range(0, problem.waits().size()).filter(at -> {
                Wait wait = problem.waits().get(at);
                return wait.hasMost() && wait.mostMinutes() > wait.leastMinutes() && !fixed.contains(wait.toStepId());
            }).boxed().toList();
            return new Choices(problem, doers, waits);
        }
    }

    private Narrowed(Choices choices, Map<String, String> doers, Set<Integer> longest) {
        this.choices = choices;
        this.doers = doers;
        this.longest = longest;
    }

    /** The real problem. */
    static Narrowed none(Problem problem) {
        return new Narrowed(Choices.of(problem), Map.of(), Set.of());
    }

    /** The same with one choice made, made otherwise, or left open again. */
    Narrowed changed(Random random) {
        int count = choices.doers.size() + choices.waits.size();
        if (count == 0) {
            return this;
        }
        int choice = random.nextInt(count);
        return choice < choices.doers.size() ? withDoer(List.copyOf(choices.doers.keySet()).get(choice), random)
                : withWait(choices.waits.get(choice - choices.doers.size()));
    }

    private Narrowed withDoer(String stepId, Random random) {
        Map<String, String> other = new LinkedHashMap<>(doers);
        List<String> able = choices.doers.get(stepId);
        int one = random.nextInt(able.size() + 1);
        if (one == able.size() || able.get(one).equals(doers.get(stepId))) {
            other.remove(stepId);
        } else {
            other.put(stepId, able.get(one));
        }
        return new Narrowed(choices, other, longest);
    }

    private Narrowed withWait(int place) {
        Set<Integer> other = new LinkedHashSet<>(longest);
        if (!other.remove(place)) {
            other.add(place);
        }
        return new Narrowed(choices, doers, other);
    }

    /** Decodes it, forward. */
    DecodeDesk desk() {
        return new DecodeDesk(CompiledProblem.of(problem(), false));
    }

    /** Who does a step is told by a skill that nobody else has. */
    private Problem problem() {
        Problem real = choices.problem;
        Kitchen kitchen = real.kitchen();
        List<Person> people = kitchen.people().stream().map(person -> new Person(person.id(), person.name(), person.shifts(), person.breaks(),
                with(person.skills(), onlyOf(person.id())), person.paceByWork(), person.mostMinutesADay())).toList();
        List<Wait> waits = new ArrayList<>(real.waits());
        longest.forEach(place -> waits.set(place, lasting(waits.get(place))));
        return real.withKitchen(new Kitchen(kitchen.name(), people, kitchen.cavities(), kitchen.stores(), kitchen.surfaces(), kitchen.pools(),
                kitchen.opening())).withWaits(waits).withEachStep(step -> doers.containsKey(step.id()) ? doneBy(step, doers.get(step.id())) : step);
    }

    private static String onlyOf(String personId) {
        return "\tonly " + personId;
    }

    private static Set<String> with(Set<String> skills, String more) {
        Set<String> all = new TreeSet<>(skills);
        all.add(more);
        return all;
    }

    private static Wait lasting(Wait wait) {
        return new Wait(wait.fromStepId(), wait.toStepId(), wait.mostMinutes(), wait.mostMinutes());
    }

    private static Step doneBy(Step step, String personId) {
        HandsOn work = step.handsOn().orElseThrow();
        return step.withHandsOn(new HandsOn(work.minutes(), work.people(), onlyOf(personId), work.workKind(), work.mayPutDown(), work.away(),
                work.finish()));
    }
}
