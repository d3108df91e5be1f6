package crumbclock.methods;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;

/** What a request chose, option by option, with what follows from the request itself (tiers, message, hand-over). */
final class Choices {

    private final Method method;
    private final Map<String, String> values;

    private Choices(Method method, Map<String, String> values) {
        this.method = method;
        this.values = Collections.unmodifiableMap(values);
    }

    /**
     * @param asked   options of the request
     * @param implied options that follow from the request; nobody may set them
     * @param fault   told of every option or value that the method does not have
     */
    static Choices of(Method method, Map<String, String> asked, Map<String, String> implied, Consumer<String> fault) {
        var values = new TreeMap<>(implied);
        for (OptionTemplate option : method.options()) {
            values.put(option.id(), option.values().get(0).value());
        }
        asked.forEach((id, value) -> {
            var option = method.options().stream().filter(o -> o.id().equals(id)).findFirst();
            if (option.isEmpty()) {
                fault.accept("read option \"" + id + "\"; expected one of " + list(method.options().stream()
                        .map(OptionTemplate::id).toList()) + " of method " + method.id());
            } else if (option.get().values().stream().noneMatch(v -> v.value().equals(value))) {
                fault.accept("option " + id + ": read \"" + value + "\"; expected one of " + list(option.get().values()
                        .stream().map(OptionValue::value).toList()));
            } else {
                values.put(id, value);
            }
        });
        return new Choices(method, values);
    }

    private static String list(Collection<String> names) {
        return names.isEmpty() ? "none" : String.join(", ", names);
    }

    boolean allow(StepTemplate step) {
        return step.when().entrySet().stream()
                .allMatch(condition -> condition.getValue().contains(values.getOrDefault(condition.getKey(), "")));
    }

    /** Allergens brought in by a section or a step of it, after what the options add and leave out. */
    Set<String> contains(Section section, List<String> named, boolean withAdded) {
        var contains = new TreeSet<>(named);
        for (OptionTemplate option : method.options()) {
            for (OptionValue value : option.values()) {
                boolean chosen = value.value().equals(values.get(option.id()));
                if (chosen && (value.section().isEmpty() || value.section().equals(section.id()))) {
                    value.removes().forEach(contains::remove);
                    if (withAdded) {
                        contains.addAll(value.adds());
                    }
                }
            }
        }
        return contains;
    }
}
