package crumbclock.methods;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What a schema cannot see in a method: names that are there twice, and references that lead nowhere. */
final class MethodCheck {

    private static final String HAND_OVER = "hand-over";
    /** Options that follow from the request itself, with all their values. */
    private static final Map<String, Set<String>> IMPLIED = Map.of("tiers", Set.of("one", "several"),
            "message", Set.of("yes", "no"), HAND_OVER, Set.of("pick-up", "delivery", "set-aside"));

    private final Method method;
    private final Set<String> sections = new LinkedHashSet<>();
    /** With those of repairs. */
    private final Set<String> steps = new LinkedHashSet<>();
    private final Set<String> ownSteps = new LinkedHashSet<>();
    private final Map<String, Set<String>> options = new LinkedHashMap<>(IMPLIED);
    private final List<String> problems = new ArrayList<>();

    private MethodCheck(Method method) {
        this.method = method;
    }

    /** Every problem in a sentence, in the order of the method; empty when it is sound. */
    static List<String> problems(Method method) {
        var check = new MethodCheck(method);
        check.collectNames();
        check.checkSteps();
        check.checkLimits();
        check.checkRepairs();
        return List.copyOf(check.problems);
    }

    private void collectNames() {
        for (OptionTemplate option : method.options()) {
            var values = new LinkedHashSet<String>();
            option.values().forEach(value -> values.add(value.value()));
            if (values.isEmpty() || options.put(option.id(), values) != null) {
                problem("option " + option.id()
                        + " has no values, stands there twice, or is one that every method has");
            }
        }
        for (Section section : method.sections()) {
            if (!sections.add(section.id())) {
                problem("section " + section.id() + " stands there twice");
            }
            for (StepTemplate step : section.steps()) {
                if (!steps.add(step.id())) {
                    problem("step " + step.id() + " stands there twice");
                }
            }
        }
        if (steps.isEmpty()) {
            problem("it has no steps");
        }
        ownSteps.addAll(steps);
        for (RepairTemplate repair : method.repairs()) {
            for (StepTemplate step : repair.steps()) {
                if (!steps.add(step.id())) {
                    problem("step " + step.id() + " stands there twice");
                }
            }
        }
    }

    private void checkSteps() {
        for (Section section : method.sections()) {
            var inSection = section.steps().stream().map(StepTemplate::id).toList();
            for (StepTemplate step : section.steps()) {
                String where = "step " + step.id();
                checkKind(step, where);
                step.after().forEach(after -> checkAfter(where, after));
                step.needs().stream().map(NeedTemplate::until).filter(until -> !until.isEmpty())
                        .forEach(until -> known(where + ", until", until, inSection));
                checkWhen(step, where);
            }
        }
    }

    private void checkKind(StepTemplate step, String where) {
        if ((step.work() == null) == (step.rest() == null)) {
            problem(where + " needs either work or rest");
        }
    }

    private void checkWhen(StepTemplate step, String where) {
        step.when().forEach((option, values) -> {
            known(where + ", when", option, options.keySet());
            values.forEach(value -> known(where + ", when " + option, value, options.getOrDefault(option, Set.of(value))));
        });
    }

    /** The steps of a repair stand by themselves, in their order, and bring nothing in. */
    private void checkRepairs() {
        for (RepairTemplate repair : method.repairs()) {
            String first = repair.steps().isEmpty() ? "" : " " + repair.steps().get(0).id();
            known("repair" + first + ", from", repair.from(), ownSteps);
            known("repair" + first + ", to", repair.to(), ownSteps);
            for (StepTemplate step : repair.steps()) {
                String where = "step " + step.id();
                checkKind(step, where);
                checkWhen(step, where);
                if (!step.after().isEmpty() || !step.contains().isEmpty() || step.needs().stream().anyMatch(need -> !need.until().isEmpty())
                        || step.rest() != null && step.rest().oven() != null) {
                    problem(where + " is part of a repair, which has no \"after\", no \"contains\", no \"until\" and no oven");
                }
            }
        }
    }

    private void checkAfter(String where, AfterTemplate after) {
        if (after.step().isEmpty()) {
            known(where + ", after section", after.section(), sections);
        } else {
            known(where + ", after step", after.step(), ownSteps);
        }
    }

    private void checkLimits() {
        if (!method.finishStep().isEmpty()) {
            known("finishStep", method.finishStep(), ownSteps);
        }
        var ends = new LinkedHashSet<>(ownSteps);
        ends.add(HAND_OVER);
        for (LifeTemplate life : method.lives()) {
            known("life " + life.id() + ", from", life.from(), ownSteps);
            known("life " + life.id() + ", to", life.to(), ends);
            life.held().forEach(held -> known("life " + life.id() + ", held", held, ownSteps));
        }
        for (ColdTemplate cold : method.coldLimits()) {
            known("cold limit " + cold.id() + ", from", cold.from(), ownSteps);
            known("cold limit " + cold.id() + ", to", cold.to(), ends);
            cold.held().forEach(held -> known("cold limit " + cold.id() + ", held", held, ownSteps));
        }
        method.wishes().forEach(wish -> known("wish, from", wish.from(), ownSteps));
    }

    private void known(String where, String read, Iterable<String> expected) {
        var names = new ArrayList<String>();
        expected.forEach(names::add);
        if (!names.contains(read)) {
            names.sort(null);
            problem(where + ": read \"" + read + "\"; expected one of " + String.join(", ", names));
        }
    }

    private void problem(String sentence) {
        problems.add("method " + method.id() + ": " + sentence);
    }
}
