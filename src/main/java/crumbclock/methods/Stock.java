package crumbclock.methods;

import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;

import java.util.Collections;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/**
 * Sections of one cake that are not made, because what they make is there already: components taken from stock, from a batch in
 * stock, and sections whose work goes into such components alone.
 *
 * @param contents section → allergens in it
 */
record Stock(Map<String, Set<String>> contents) {

    static final Stock NONE = new Stock(Map.of());

    Stock {
        contents = Collections.unmodifiableMap(new TreeMap<>(contents));
    }

    /**
     * @param batches what each shared batch holds
     * @param fault   told of every component that the method does not have, or that is the cake itself
     */
    static Stock of(CakeRequest cake, Method method, Choices choices, Map<String, BatchContents> batches, Consumer<String> fault) {
        var contents = new TreeMap<String, Set<String>>();
        cake.batches().forEach((component, batch) -> {
            if (batches.containsKey(batch) && batches.get(batch).inStock()) {
                method.sections().stream().filter(section -> section.id().equals(component) && section.batch() != null)
                        .forEach(section -> contents.put(component, batches.get(batch).allergens()));
            } else if (batch.equals(CakeRequest.IN_STOCK)) {
                method.sections().stream().filter(section -> section.id().equals(component) && mayBeInStock(method, section)).findFirst()
                        .ifPresentOrElse(section -> contents.put(component, contents(section, choices)),
                                () -> fault.accept("read component \"" + component + "\"; expected one of " + String.join(", ",
                                        components(method)) + " of method " + method.id()));
            }
        });
        addWhatGoesIntoThem(cake, method, choices, batches, contents);
        return new Stock(contents);
    }

    /** Components of a method that may come from stock: all its sections but the one in which the cake is finished. */
    static Set<String> components(Method method) {
        var components = new TreeSet<String>();
        method.sections().stream().filter(section -> mayBeInStock(method, section)).forEach(section -> components.add(section.id()));
        return components;
    }

    private static boolean mayBeInStock(Method method, Section section) {
        int last = method.sections().size() - 1;
        return method.finishStep().isEmpty() ? method.sections().indexOf(section) != last
                : section.steps().stream().noneMatch(step -> step.id().equals(method.finishStep()));
    }

    /** The batter of layers in stock is not made either: no other section asks for it. What was in it is in the layers. */
    private static void addWhatGoesIntoThem(CakeRequest cake, Method method, Choices choices, Map<String, BatchContents> batches,
            Map<String, Set<String>> contents) {
        boolean added = !contents.isEmpty();
        while (added) {
            added = false;
            for (Section section : method.sections()) {
                var users = users(method, choices, section);
                if (!contents.containsKey(section.id()) && !users.isEmpty() && contents.keySet().containsAll(users)) {
                    var batch = batches.get(cake.batches().getOrDefault(section.id(), ""));
                    var own = batch == null ? contents(section, choices) : batch.allergens();
                    contents.put(section.id(), own);
                    users.forEach(user -> {
                        var all = new TreeSet<>(contents.get(user));
                        all.addAll(own);
                        contents.put(user, all);
                    });
                    added = true;
                }
            }
        }
    }

    private static Set<String> users(Method method, Choices choices, Section used) {
        var users = new HashSet<String>();
        for (Section section : method.sections()) {
            boolean uses = section != used && section.steps().stream().filter(choices::allow)
                    .flatMap(step -> step.after().stream())
                    .anyMatch(after -> after.section().equals(used.id())
                            || used.steps().stream().anyMatch(step -> step.id().equals(after.step())));
            if (uses) {
                users.add(section.id());
            }
        }
        return users;
    }

    /** Allergens in a whole batch, whether it is made or there already. */
    static BatchContents contents(BatchRequest batch, Method method, Choices choices) {
        var contents = new TreeSet<>(batch.contains());
        method.sections().forEach(section -> contents.addAll(contents(section, choices)));
        return new BatchContents(contents, batch.inStock());
    }

    /** What is in a batch, and whether it is there already. */
    record BatchContents(Set<String> allergens, boolean inStock) {
    }

    private static Set<String> contents(Section section, Choices choices) {
        var contents = new TreeSet<>(choices.contains(section, section.contains(), true));
        section.steps().stream().filter(choices::allow)
                .forEach(step -> contents.addAll(choices.contains(section, step.contains(), false)));
        return contents;
    }

    boolean holds(Section section) {
        return contents.containsKey(section.id());
    }
}
