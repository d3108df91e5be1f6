package crumbclock.methods;

import java.util.List;
import java.util.Set;

/** The method files that ship with the program, as class path resources, and the schema that they follow. */
public final class MethodLibrary {

    /** JSON Schema (2020-12) of a method file. */
    public static final String SCHEMA = "/crumbclock/schema/method.schema.json";

    private static final List<String> RESOURCES = List.of(
            "/crumbclock/methods/layer-cakes.json",
            "/crumbclock/methods/free-from-cakes.json",
            "/crumbclock/methods/sugar-paste-cakes.json",
            "/crumbclock/methods/cold-cakes.json",
            "/crumbclock/methods/small-cakes.json",
            "/crumbclock/methods/batch-day.json");

    private MethodLibrary() {
    }

    /** Components of a method that a cake may take from stock instead of making them. */
    public static Set<String> componentsOf(Method method) {
        return Stock.components(method);
    }

    /** Names of the resources, each a {@link MethodFile} in JSON, in the order in which they are read. */
    public static List<String> resources() {
        return RESOURCES;
    }
}
