package crumbclock.methods;

import static crumbclock.methods.LibraryFixture.LIBRARY;
import static crumbclock.methods.LibraryFixture.cake;
import static crumbclock.methods.LibraryFixture.expand;
import static crumbclock.methods.LibraryFixture.order;
import static crumbclock.methods.LibraryFixture.round;
import static crumbclock.methods.LibraryFixture.with;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.LifeLimit;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

class MethodLibraryTest {

    @Test
    void every_file_follows_the_schema() throws IOException {
        var mapper = new ObjectMapper();
        try (var schemaStream = getClass().getResourceAsStream(MethodLibrary.SCHEMA)) {
            var schema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(schemaStream);
            for (String resource : MethodLibrary.resources()) {
                try (var in = getClass().getResourceAsStream(resource)) {
                    assertThat(schema.validate(mapper.readTree(in))).as(resource).isEmpty();
                }
            }
            var wrong = mapper.readTree("{\"format\":\"crumbclock-methods-1\",\"methods\":[{\"id\":\"a\",\"title\":\"A\","
                    + "\"sections\":[{\"id\":\"s\",\"steps\":[{\"id\":\"x\",\"name\":\"x\",\"source\":\"me\"}]}]}]}");
            assertThat(schema.validate(wrong)).as("a step without work or rest").isNotEmpty();
        }
    }

    @Test
    void holds_the_methods_that_orders_name() {
        assertThat(LIBRARY.keySet()).containsExactly("abc-layer-cake", "smbc-marbled-cake", "smbc-drip-cake",
                "fruit-smbc-cake", "praline-cake", "naked-berry-cake", "gluten-free-lemon-cake",
                "vegan-chocolate-cake", "paste-tiered-cake", "paste-peony-cake", "cream-cheese-sheet-cake",
                "cheesecake", "whipped-cream-fruit-cake", "mousse-glaze-cake", "cupcakes-swirl",
                "charity-border-cake", "batter-bowl", "icing-bowl");
    }

    /** Every cake method at typical sizes, with every value of every option, for every way of handing over. */
    static Stream<Arguments> requests() {
        var all = new ArrayList<Arguments>();
        for (Method method : LIBRARY.values()) {
            if (method.kind() == MethodKind.CAKE) {
                for (CakeRequest cake : sizes(method.id())) {
                    for (CakeRequest chosen : choices(method, cake)) {
                        for (HandOverWay way : HandOverWay.values()) {
                            all.add(Arguments.of(chosen, way));
                        }
                    }
                }
            }
        }
        return all.stream();
    }

    private static List<CakeRequest> sizes(String id) {
        return switch (id) {
            case "cream-cheese-sheet-cake" ->
                List.of(cake(id, new TierRequest(new Footprint(false, 330, 229), 1)));
            case "cheesecake" -> List.of(cake(id, round(9, 1)));
            case "mousse-glaze-cake" -> List.of(cake(id, round(7, 1)));
            case "paste-tiered-cake" -> List.of(cake(id, round(8, 2)), cake(id, round(10, 2), round(6, 2)),
                    cake(id, round(10, 2), round(8, 2), round(6, 2)));
            case "paste-peony-cake" -> List.of(cake(id, round(8, 2), round(6, 2)));
            default -> List.of(cake(id, round(6, 3)), cake(id, round(8, 2)), cake(id, round(10, 2)));
        };
    }

    private static List<CakeRequest> choices(Method method, CakeRequest cake) {
        var chosen = new ArrayList<>(List.of(cake));
        for (OptionTemplate option : method.options()) {
            for (OptionValue value : option.values()) {
                var one = with(cake, Map.of(option.id(), value.value()));
                chosen.add(one);
                chosen.add(LibraryFixture.named(one, "X1", "Juno is 6", Map.of(), Set.of()));
            }
        }
        return chosen;
    }

    @ParameterizedTest
    @MethodSource("requests")
    void every_request_becomes_sound_work(CakeRequest cake, HandOverWay way) {
        var expanded = expand(List.of(order(way, cake)), List.of());

        var ids = new HashSet<String>();
        for (Step step : expanded.steps()) {
            assertThat(ids.add(step.id())).as("twice: %s", step.id()).isTrue();
            assertThat(step.mostMinutes()).isGreaterThanOrEqualTo(step.leastMinutes());
            step.place().ifPresent(place -> {
                assertThat(place.form().heightMm()).as(step.id()).isPositive();
                assertThat(place.form().massGrams()).as(step.id()).isPositive();
                assertThat(place.form().footprint().boxAreaMm2()).as(step.id()).isPositive();
            });
        }
        for (Step step : expanded.steps()) {
            assertThat(step.equipment()).extracting(EquipmentNeed::untilStepId).isSubsetOf(ids);
        }
        var made = expanded.orders().get(0).cakes().get(0);
        assertThat(ids).contains(made.finishStepId());
        assertReferences(expanded, ids);
        String last = way == HandOverWay.SET_ASIDE ? made.finishStepId() : "X/hand-over";
        var graph = new WaitGraph(expanded.steps(), expanded.waits());
        assertThat(graph.leastMinutesTo(last)).isPositive();
        assertThat(graph.before(last)).as("every step leads to the end").containsAll(ids);
    }

    private static void assertReferences(Expanded expanded, Set<String> ids) {
        for (Wait wait : expanded.waits()) {
            assertThat(ids).contains(wait.fromStepId(), wait.toStepId());
            assertThat(wait.mostMinutes()).isGreaterThanOrEqualTo(wait.leastMinutes());
        }
        var places = new HashMap<String, Step>();
        expanded.steps().stream().filter(step -> step.place().isPresent()).forEach(step -> places.put(step.id(), step));
        for (LifeLimit life : expanded.lifeLimits()) {
            assertThat(ids).contains(life.fromStepId(), life.toStepId());
            assertThat(places.keySet()).containsAll(life.heldStepIds());
        }
        expanded.coldLimits().forEach(cold -> {
            assertThat(ids).contains(cold.fromStepId(), cold.toStepId());
            assertThat(places.keySet()).containsAll(cold.heldStepIds());
        });
        expanded.freshnessWishes().forEach(wish -> assertThat(ids).contains(wish.fromStepId()));
    }

    @Test
    void sugar_paste_never_goes_into_a_fridge() {
        var expanded = expand(cake("paste-tiered-cake", round(10, 2), round(6, 2)));
        assertThat(expanded.steps()).filteredOn(step -> step.place().map(p -> p.form().pasteFinish()).orElse(false))
                .hasSize(3).allSatisfy(step -> assertThat(step.place().orElseThrow().allowed())
                        .doesNotContain(PlaceKind.FRIDGE, PlaceKind.FREEZER));
    }

    @Test
    void batch_methods_expand_without_a_cake() {
        var expanded = expand(List.of(), List.of(
                new BatchRequest("b", "bowl", "batter-bowl", 8200, 0, Set.of(), Set.of("egg"), Map.of("free-from", "egg")),
                new BatchRequest("i", "icing", "icing-bowl", 6720, 0, Set.of(), Set.of(), Map.of())));
        assertThat(expanded.steps()).extracting(Step::id).containsExactly("b/mix", "i/make");
        assertThat(expanded.steps().get(0).contains()).containsExactly("milk", "wheat");
        assertThat(expanded.steps().get(0).equipment().get(0).amount()).isEqualTo(17056);
        assertThat(expanded.steps().get(1).equipment().get(0).amount()).isEqualTo(15658);
    }
}
