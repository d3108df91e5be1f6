package crumbclock.methods;

import static crumbclock.methods.LibraryFixture.POOLS;
import static crumbclock.methods.LibraryFixture.cake;
import static crumbclock.methods.LibraryFixture.expand;
import static crumbclock.methods.LibraryFixture.faults;
import static crumbclock.methods.LibraryFixture.named;
import static crumbclock.methods.LibraryFixture.order;
import static crumbclock.methods.LibraryFixture.round;
import static crumbclock.methods.LibraryFixture.step;
import static crumbclock.methods.LibraryFixture.with;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.domain.work.Repair;
import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

class ExpanderTest {

    @Test
    void a_pick_up_ends_at_the_door_shortly_after_the_cake_is_taken_out() {
        var expanded = expand(cake("abc-layer-cake", round(8, 2)));

        var handOver = step(expanded, "X/hand-over");
        assertThat(handOver.ownerId()).isEqualTo("X");
        assertThat(handOver.handsOn().orElseThrow().minutes()).isEqualTo(5);
        assertThat(handOver.handsOn().orElseThrow().away()).isFalse();
        assertThat(expanded.waits()).contains(new Wait("X1/hold-boxed", "X/hand-over", 0, 10));
        assertThat(expanded.orders().get(0).handOver().offsetMinutes()).isZero();
        assertThat(expanded.orders().get(0).cakes().get(0).finishStepId()).isEqualTo("X1/box");
        assertThat(expanded.steps()).extracting(Step::earliest).containsOnly(30);
    }

    @Test
    void a_delivery_takes_the_worker_and_the_car_there_and_back() {
        var expanded = expand(List.of(order(HandOverWay.DELIVERY, cake("abc-layer-cake", round(8, 2)))), List.of());

        var drive = step(expanded, "X/hand-over");
        assertThat(drive.handsOn().orElseThrow().minutes()).isEqualTo(10 + 25 + 20 + 25);
        assertThat(drive.handsOn().orElseThrow().away()).isTrue();
        assertThat(drive.equipment()).containsExactly(new EquipmentNeed("car", 1, 0, "X/hand-over"));
        assertThat(expanded.orders().get(0).handOver().offsetMinutes()).isEqualTo(55);
    }

    @Test
    void an_order_set_aside_has_neither_hand_over_nor_holding() {
        var expanded = expand(List.of(order(HandOverWay.SET_ASIDE, cake("charity-border-cake", round(8, 2)))),
                List.of());

        assertThat(expanded.steps()).extracting(Step::id).doesNotContain("X/hand-over", "X1/hold-boxed")
                .endsWith("X1/box");
        assertThat(expanded.orders().get(0).handOver().stepId()).isEmpty();
    }

    @Test
    void tiers_have_their_own_steps_and_meet_in_the_whole_cake() {
        var expanded = expand(cake("paste-tiered-cake", round(10, 2), round(6, 2)));

        assertThat(step(expanded, "X1/tier-1/bake").oven().orElseThrow().temperatureC()).isEqualTo(165);
        assertThat(step(expanded, "X1/tier-2/bake").oven().orElseThrow().temperatureC()).isEqualTo(175);
        assertThat(step(expanded, "X1/tier-2/bake").part()).isEqualTo("tier-2");
        assertThat(expanded.waits()).filteredOn(wait -> wait.toStepId().equals("X1/dowel"))
                .extracting(Wait::fromStepId).containsExactly("X1/tier-1/rest-paste", "X1/tier-2/rest-paste");
        assertThat(expanded.waits()).filteredOn(wait -> wait.toStepId().equals("X1/tier-2/cover"))
                .extracting(Wait::fromStepId).containsExactly("X1/tier-2/set-coat", "X1/knead");
        assertThat(expanded.lifeLimits()).extracting("id").contains("X1/layers-tier-1", "X1/layers-tier-2");
    }

    @Test
    void pans_are_held_until_the_cake_is_turned_out() {
        var deposit = step(expand(cake("abc-layer-cake", round(8, 3))), "X1/deposit");
        assertThat(deposit.equipment()).containsExactly(new EquipmentNeed("pan-8in", 3, 0, "X1/turn-out"));
        // 3 × 641 g of batter, 0.48 kg a litre of bowl: mixer manuals
        assertThat(step(expand(cake("abc-layer-cake", round(8, 3))), "X1/mix").equipment().get(0).amount())
                .isBetween(3950, 4050);
    }

    private static CakeRequest charity(String id, Set<String> freeFrom) {
        return named(cake("charity-border-cake", round(8, 2)), id, "Mia", Map.of("batter", "bowl-1", "icing", "icing-1"),
                freeFrom);
    }

    @Test
    void a_shared_batch_replaces_the_component_and_holds_what_its_cakes_need() {
        var batter = new BatchRequest("bowl-1", "first bowl", "batter-bowl", 0, 0, Set.of(), Set.of(), Map.of());
        var icing = new BatchRequest("icing-1", "icing", "icing-bowl", 0, 0, Set.of(), Set.of(), Map.of());
        var expanded = expand(List.of(order(HandOverWay.SET_ASIDE, charity("X1", Set.of()), charity("X2", Set.of("nuts")))),
                List.of(batter, icing));

        assertThat(expanded.steps()).extracting(Step::id).startsWith("bowl-1/mix", "icing-1/make", "X1/deposit")
                .doesNotContain("X1/mix", "X1/make-icing");
        assertThat(expanded.waits()).contains(new Wait("bowl-1/mix", "X2/deposit", 0, 20))
                .contains(new Wait("icing-1/make", "X2/fill", 0, Wait.NO_MOST));
        assertThat(expanded.lifeLimits()).extracting("fromStepId", "toStepId")
                .contains(org.assertj.core.groups.Tuple.tuple("icing-1/make", "X2/fill"));
        assertThat(step(expanded, "bowl-1/mix").equipment().get(0).amount()).isBetween(5300, 5360); // 4 layers × 641 g / 0.48
        assertThat(step(expanded, "bowl-1/mix").freeFrom()).containsExactly("nuts");
        assertThat(expanded.orders().get(0).cakes().get(0).batchIds()).containsExactly("bowl-1", "icing-1");
    }

    @Test
    void a_hall_full_of_cakes_stays_a_few_hundred_steps() {
        var cakes = IntStream.rangeClosed(1, 32).mapToObj(i -> charity("B" + i, Set.of())).toArray(CakeRequest[]::new);
        var expanded = expand(List.of(order(HandOverWay.SET_ASIDE, cakes)), List.of(
                new BatchRequest("bowl-1", "bowl", "batter-bowl", 0, 0, Set.of(), Set.of(), Map.of()),
                new BatchRequest("icing-1", "icing", "icing-bowl", 0, 0, Set.of(), Set.of(), Map.of())));
        assertThat(expanded.steps()).hasSize(2 + 32 * 9);
    }

    @Test
    void allergens_travel_with_the_steps_that_hold_them() {
        var sheet = expand(cake("cream-cheese-sheet-cake", round(9, 1)));
        assertThat(step(sheet, "X1/mix").contains()).containsExactly("egg", "milk", "nuts", "wheat");
        assertThat(step(sheet, "X1/make-icing").contains()).containsExactly("milk");
        assertThat(step(sheet, "X1/box").contains()).contains("nuts");
        assertThat(sheet.orders().get(0).cakes().get(0).contains()).contains("nuts");
        var plain = expand(with(cake("cream-cheese-sheet-cake", round(9, 1)), Map.of("nuts", "none")));
        assertThat(plain.steps()).noneMatch(step -> step.contains().contains("nuts"));
        var spare = expand(with(cake("vegan-chocolate-cake", round(8, 2)), Map.of("layers", "spare")));
        assertThat(step(spare, "X1/thaw").contains()).containsExactly("soya", "wheat");
    }

    @Test
    void a_cake_cannot_be_free_from_what_it_is_made_of() {
        var nutty = named(cake("cream-cheese-sheet-cake", round(9, 1)), "X1", "", Map.of(), Set.of("nuts"));
        assertThat(faults(List.of(order(HandOverWay.PICK_UP, nutty)), List.of(), POOLS)).singleElement()
                .hasToString("order X, cake X1: must be free from nuts, but step X1/mix contains it; expected another "
                        + "method, option or batch");
    }

    @Test
    void what_cannot_be_expanded_is_told_all_at_once() {
        var unknownMethod = named(cake("trifle", round(8, 2)), "X1", "", Map.of(), Set.of());
        var badOption = with(named(cake("abc-layer-cake", round(8, 2)), "X2", "", Map.of(), Set.of()),
                Map.of("wrap", "perhaps", "colour", "red"));
        var badBatch = named(cake("abc-layer-cake", round(8, 2)), "X3", "",
                Map.of("batter", "no-bowl", "layers", "bowl"), Set.of());
        var batch = new BatchRequest("bowl", "bowl", "icing-pot", 0, 0, Set.of(), Set.of(), Map.of());

        var faults = faults(List.of(order(HandOverWay.PICK_UP, unknownMethod, badOption, badBatch)), List.of(batch),
                Set.of("turntable", "mixer"));

        assertThat(faults).extracting(ExpansionFault::toString).anySatisfy(f -> assertThat(f)
                .startsWith("batch bowl: read method \"icing-pot\"; expected one of batter-bowl, icing-bowl"))
                .anySatisfy(f -> assertThat(f).startsWith("order X, cake X1: read method \"trifle\"; expected one of abc"))
                .anySatisfy(f -> assertThat(f).isEqualTo("order X, cake X2: read option \"colour\"; expected one of "
                        + "layers, wrap, settle of method abc-layer-cake"))
                .anySatisfy(f -> assertThat(f).isEqualTo("order X, cake X2: option wrap: read \"perhaps\"; expected "
                        + "one of yes, no"))
                .anySatisfy(f -> assertThat(f).contains("component batter: read batch \"no-bowl\""))
                .anySatisfy(f -> assertThat(f).contains("read component \"layers\"; expected one of batter, icing"))
                .hasSize(6);
    }

    @Test
    void a_missing_mixer_is_a_fault_and_a_missing_turntable_is_not() {
        var faults = faults(List.of(order(HandOverWay.PICK_UP, cake("charity-border-cake", round(8, 2)))), List.of(),
                Set.of("bowl"));
        assertThat(faults).hasSize(2).allSatisfy(fault -> assertThat(fault.message())
                .contains("needs equipment \"mixer\", which the kitchen does not have; expected one of bowl"));
    }

    @Test
    void equal_requests_give_equal_work() {
        var request = List.of(order(HandOverWay.PICK_UP, cake("paste-peony-cake", round(8, 2), round(6, 2))));
        assertThat(expand(request, List.of())).isEqualTo(expand(request, List.of()));
    }

    @Test
    void small_cakes_need_no_size() {
        var dozens = new CakeRequest("X1", "cupcakes", "cupcakes-swirl", List.of(), 24, 24, "", Set.of(), Set.of(),
                Map.of(), Map.of());
        var bake = step(expand(dozens), "X1/bake");
        assertThat(bake.oven().orElseThrow().pans()).hasSize(2)
                .allSatisfy(pan -> assertThat(pan.footprint().widthMm()).isEqualTo(350));
        assertThat(step(expand(dozens), "X1/swirl").handsOn().orElseThrow().minutes()).isEqualTo(14);
        assertThat(step(expand(dozens), "X1/hold-boxed").place().orElseThrow().form().pieces()).isEqualTo(2);
        assertThat(faults(List.of(order(HandOverWay.PICK_UP, cake("abc-layer-cake"))), List.of(), POOLS))
                .singleElement().hasToString("order X, cake X1: has no tier; expected the size of at least one, or a "
                        + "number of pieces");
    }

    @Test
    void the_name_waits_for_the_coat_to_crust_while_the_border_goes_on() {
        var expanded = expand(named(cake("charity-border-cake", round(8, 2)), "X1", "Mia", Map.of(), Set.of()));
        assertThat(expanded.waits()).contains(new Wait("X1/coat", "X1/message", 15, Wait.NO_MOST));
    }

    @Test
    void a_repair_is_made_for_each_tier_and_for_what_the_options_leave() {
        var tiers = expand(cake("paste-tiered-cake", round(10, 3), round(6, 3)));
        var fresh = expand(cake("abc-layer-cake", round(8, 3)));
        var spare = expand(with(cake("abc-layer-cake", round(8, 3)), Map.of("layers", "spare", "settle", "no")));

        assertThat(tiers.repairs()).extracting(Repair::id).containsExactlyInAnyOrder("X1/tier-1/press", "X1/tier-2/press",
                "X1/tier-1/warm-ganache", "X1/tier-2/warm-ganache");
        assertThat(tiers.repairs()).filteredOn(repair -> repair.id().equals("X1/tier-2/press")).singleElement().satisfies(repair -> {
            assertThat(repair.fromStepId()).isEqualTo("X1/tier-2/settle");
            assertThat(repair.toStepId()).isEqualTo("X1/tier-2/coat");
            assertThat(repair.steps()).extracting(Step::name).containsExactly("press the ring in and trim it, tier 2",
                    "let the pressed cake settle, tier 2");
            assertThat(repair.steps().get(0).contains()).contains("egg", "milk", "wheat");
            assertThat(repair.waits()).extracting(Wait::fromStepId, Wait::toStepId).containsExactly(tuple("X1/tier-2/settle", "X1/tier-2/press"),
                    tuple("X1/tier-2/press", "X1/tier-2/settle-pressed"), tuple("X1/tier-2/settle-pressed", "X1/tier-2/coat"));
        });
        assertThat(fresh.repairs()).extracting(Repair::id).containsExactly("X1/press", "X1/stand-out");
        assertThat(spare.repairs()).extracting(Repair::id).containsExactly("X1/spread-layers", "X1/stand-out");
    }
}
