package crumbclock.formats.day;

import crumbclock.domain.day.KitchenEvent;
import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.formats.issue.Nearest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds what a line names: by id or by plain name, with or without blanks, dashes and capitals. */
final class DayNames {

    private final Problem problem;
    private final Map<String, Set<String>> owners = new LinkedHashMap<>();

    /** An oven, store or person. */
    record Thing(KitchenEvent.Kind kind, String id) {
    }

    DayNames(Problem problem) {
        this.problem = problem;
        for (Order order : problem.orders()) {
            var own = new LinkedHashSet<String>();
            order.cakes().forEach(cake -> own.add(cake.id()));
            own.add(order.id());
            for (Cake cake : order.cakes()) {
                owners.putIfAbsent(plain(cake.id()), Set.of(cake.id()));
            }
            owners.put(plain(order.id()), own);
            owners.putIfAbsent(plain(order.title()), own);
        }
        for (Batch batch : problem.batches()) {
            owners.putIfAbsent(plain(batch.id()), Set.of(batch.id()));
            owners.putIfAbsent(plain(batch.title()), Set.of(batch.id()));
        }
    }

    private static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_.\\-]", "");
    }

    /** Ids of what a cell of the column cake names; empty when nothing is named so. */
    Set<String> owners(String cake) {
        return cake.isEmpty() ? Set.of() : owners.getOrDefault(plain(cake), Set.of());
    }

    String ownerAdvice(String cake) {
        List<String> known = new ArrayList<>();
        problem.orders().forEach(order -> known.add(order.id()));
        problem.batches().forEach(batch -> known.add(batch.id()));
        return Nearest.advice(cake, known);
    }

    List<String> allSteps(Set<String> of) {
        return problem.steps().stream().filter(step -> of.contains(step.ownerId())).map(Step::id).toList();
    }

    /** Ids of the steps that are called so; without an owner only a whole id, or a name that one step alone has, counts. */
    List<String> steps(Set<String> of, String called) {
        String sought = plain(called);
        List<String> found = problem.steps().stream()
                .filter(step -> (of.isEmpty() || of.contains(step.ownerId())) && names(step).contains(sought))
                .map(Step::id).toList();
        return of.isEmpty() && found.size() > 1 ? List.of() : found;
    }

    private static Set<String> names(Step step) {
        var names = new LinkedHashSet<String>();
        names.add(plain(step.id()));
        names.add(plain(lastOf(step.id())));
        names.add(plain(withoutOwner(step)));
        names.add(plain(step.name()));
        if (!step.part().isEmpty()) {
            names.add(plain(step.name() + step.part()));
            names.add(plain(step.part() + step.name()));
            names.add(plain(lastOf(step.id()) + step.part()));
            names.add(plain(step.part() + lastOf(step.id())));
        }
        return names;
    }

    private static String lastOf(String id) {
        return id.substring(id.lastIndexOf('/') + 1);
    }

    private static String withoutOwner(Step step) {
        return step.id().startsWith(step.ownerId() + "/") ? step.id().substring(step.ownerId().length() + 1) : step.id();
    }

    String stepAdvice(Set<String> of, String called) {
        if (of.isEmpty()) {
            return Nearest.advice(called, problem.steps().stream().map(Step::id).toList());
        }
        List<String> known = new ArrayList<>();
        for (Step step : problem.steps()) {
            if (of.contains(step.ownerId())) {
                known.add(withoutOwner(step));
                known.add(step.name());
            }
        }
        return Nearest.advice(called, known);
    }

    /** The one oven, store or person that is meant. */
    Optional<Thing> thing(KitchenWords about) {
        if (about.kind() == KitchenEvent.Kind.POWER_CUT) {
            return Optional.of(new Thing(about.kind(), ""));
        }
        String sought = plain(about.subject());
        if (about.kind() == KitchenEvent.Kind.PERSON_AWAY) {
            return one(problem.kitchen().people().stream()
                    .filter(person -> List.of(plain(person.id()), plain(person.name())).contains(sought))
                    .map(person -> new Thing(about.kind(), person.id())).toList());
        }
        List<Thing> found = new ArrayList<>();
        var ovens = problem.kitchen().cavities();
        for (Cavity oven : ovens) {
            if (List.of(plain(oven.id()), plain(oven.name())).contains(sought) || sought.equals("oven") && ovens.size() == 1) {
                found.add(new Thing(KitchenEvent.Kind.OVEN_DEAD, oven.id()));
            }
        }
        for (Store store : problem.kitchen().stores()) {
            boolean only = sought.equals(plain(store.kind().name())) && problem.kitchen().stores().stream()
                    .filter(other -> other.kind() == store.kind()).count() == 1;
            if (List.of(plain(store.id()), plain(store.name())).contains(sought) || only) {
                found.add(new Thing(KitchenEvent.Kind.STORE_WARM, store.id()));
            }
        }
        return one(found);
    }

    private static Optional<Thing> one(List<Thing> found) {
        return found.stream().distinct().count() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    String thingAdvice(KitchenWords about) {
        List<String> known = new ArrayList<>();
        if (about.kind() == KitchenEvent.Kind.PERSON_AWAY) {
            problem.kitchen().people().stream().map(Person::id).forEach(known::add);
        } else {
            problem.kitchen().cavities().forEach(oven -> known.add(oven.id()));
            problem.kitchen().stores().forEach(store -> known.add(store.id()));
        }
        return Nearest.advice(about.subject(), known);
    }
}
