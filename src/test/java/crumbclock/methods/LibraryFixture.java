package crumbclock.methods;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.OrderRequest;
import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Step;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The built-in library, and requests in few words. */
final class LibraryFixture {

    static final Map<String, Method> LIBRARY = load();
    static final Set<String> POOLS = Set.of("mixer", "turntable", "pan-6in", "pan-8in", "pan-10in", "cupcake-tin", "car");

    private LibraryFixture() {
    }

    private static Map<String, Method> load() {
        var methods = new LinkedHashMap<String, Method>();
        for (String resource : MethodLibrary.resources()) {
            try (var in = LibraryFixture.class.getResourceAsStream(resource)) {
                for (Method method : new ObjectMapper().readValue(in, MethodFile.class).methods()) {
                    assertThat(methods.put(method.id(), method)).as("twice: %s", method.id()).isNull();
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return methods;
    }

    static TierRequest round(int inches, int layers) {
        return new TierRequest(new Footprint(true, Math.toIntExact(Math.round(inches * 25.4)),
                Math.toIntExact(Math.round(inches * 25.4))), layers);
    }

    static CakeRequest cake(String methodId, TierRequest... tiers) {
        return new CakeRequest("X1", "a cake", methodId, List.of(tiers), 1, 12, "", Set.of(), Set.of(), Map.of(),
                Map.of());
    }

    static CakeRequest with(CakeRequest cake, Map<String, String> options) {
        return new CakeRequest(cake.id(), cake.title(), cake.methodId(), cake.tiers(), cake.pieces(), cake.servings(),
                cake.message(), cake.contains(), cake.freeFrom(), cake.batches(), options);
    }

    static CakeRequest named(CakeRequest cake, String id, String message, Map<String, String> batches,
            Set<String> freeFrom) {
        return new CakeRequest(id, cake.title(), cake.methodId(), cake.tiers(), cake.pieces(), cake.servings(),
                message, cake.contains(), freeFrom, batches, cake.options());
    }

    static OrderRequest order(HandOverWay way, CakeRequest... cakes) {
        return new OrderRequest("X", "an order", List.of(cakes), way, 5000, 5060, 5, 10, 25, 20, 1, 30, 60);
    }

    /** Expands requests that must have no fault. */
    static Expanded expand(List<OrderRequest> orders, List<BatchRequest> batches) {
        var faults = new ArrayList<ExpansionFault>();
        var expanded = Expander.expand(orders, batches, LIBRARY, POOLS, faults::add);
        assertThat(faults).isEmpty();
        return expanded;
    }

    static Expanded expand(CakeRequest cake) {
        return expand(List.of(order(HandOverWay.PICK_UP, cake)), List.of());
    }

    static List<ExpansionFault> faults(List<OrderRequest> orders, List<BatchRequest> batches, Set<String> pools) {
        var faults = new ArrayList<ExpansionFault>();
        Expander.expand(orders, batches, LIBRARY, pools, faults::add);
        return faults;
    }

    static Step step(Expanded expanded, String id) {
        return expanded.steps().stream().filter(step -> step.id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError("no step " + id + " among "
                        + expanded.steps().stream().map(Step::id).toList()));
    }
}
