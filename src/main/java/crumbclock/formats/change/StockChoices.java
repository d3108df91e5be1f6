package crumbclock.formats.change;

import crumbclock.domain.change.WorkChange.ComponentInStock;
import crumbclock.formats.problem.ProblemDraft;
import crumbclock.methods.Method;
import crumbclock.methods.MethodLibrary;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** What could be in stock for an order: components that are made for its cakes, and layers where spare ones can be thawed. */
public final class StockChoices {

    private StockChoices() {
    }

    /** All that is not in stock already, by cake and name. */
    public static List<ComponentInStock> of(ProblemDraft draft, String orderId) {
        return draft.orders().stream().filter(order -> order.id().equals(orderId)).flatMap(order -> order.cakes().stream())
                .flatMap(cake -> components(draft.methods().get(cake.methodId())).stream()
                        .filter(one -> !cake.batches().containsKey(one) && !"spare".equals(cake.options().get(one)))
                        .map(one -> new ComponentInStock(cake.id(), one))).toList();
    }

    static Set<String> components(Method method) {
        var components = new TreeSet<>(MethodLibrary.componentsOf(method));
        method.options().stream().filter(option -> option.values().stream().anyMatch(value -> value.value().equals("spare")))
                .forEach(option -> components.add(option.id()));
        return components;
    }
}
