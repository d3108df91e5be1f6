package crumbclock.methods;

import static crumbclock.methods.LibraryFixture.LIBRARY;
import static crumbclock.methods.LibraryFixture.cake;
import static crumbclock.methods.LibraryFixture.expand;
import static crumbclock.methods.LibraryFixture.order;
import static crumbclock.methods.LibraryFixture.round;
import static crumbclock.methods.LibraryFixture.step;
import static crumbclock.methods.LibraryFixture.with;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Pan;
import crumbclock.domain.work.Repair;
import crumbclock.domain.work.StepKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.util.List;
import java.util.Map;

/** Figures of the trade, as the library has them. Where nothing else is said: common practice, no source. */
class TradeFactsTest {

    private static final double CUP_ML = 236.5882365; // NIST Handbook 44, Appendix C

    @Test
    void thin_coat_is_firm_after_twenty_minutes_in_the_fridge() { // common practice, no source
        var chill = step(expand(cake("smbc-drip-cake", round(8, 3))), "X1/chill-thin-coat");
        assertThat(chill.leastMinutes()).isGreaterThanOrEqualTo(20);
        assertThat(chill.place().orElseThrow().allowed()).containsExactly(PlaceKind.FRIDGE);
        assertThat(LIBRARY.values().stream().flatMap(m -> m.sections().stream()).flatMap(s -> s.steps().stream())
                .filter(s -> s.id().equals("chill-thin-coat"))).hasSizeGreaterThan(5)
                .allSatisfy(s -> assertThat(s.rest().leastMinutes().get("any")).isGreaterThanOrEqualTo(20));
    }

    @Test
    void marbled_coat_is_scraped_after_about_fifteen_minutes_not_before_and_not_much_later() { // common practice, no source
        var expanded = expand(cake("smbc-marbled-cake", round(8, 3)));
        var chill = step(expanded, "X1/chill-marble");
        assertThat(chill.leastMinutes()).isEqualTo(15);
        assertThat(chill.mostMinutes()).isBetween(20, 30);
        assertThat(expanded.waits()).filteredOn(wait -> wait.toStepId().equals("X1/scrape")).singleElement()
                .satisfies(wait -> {
                    assertThat(wait.fromStepId()).isEqualTo("X1/chill-marble");
                    assertThat(wait.mostMinutes()).isLessThanOrEqualTo(5);
                });
        assertThat(step(expanded, "X1/chill-coat").leastMinutes()).isEqualTo(20); // and 20 more before piping
    }

    @Test
    void about_a_cup_of_filling_between_two_eight_inch_layers() { // common practice, no source
        assertThat(Geometry.fillingMl(round(8, 2))).isCloseTo(259, within(1.0)); // area × 8 mm
        assertThat(Geometry.fillingMl(round(8, 2)) / CUP_ML).isBetween(0.9, 1.15);
    }

    @ParameterizedTest
    @CsvSource({"6,400", "8,580", "9,680", "10,780", "12,1010"}) // geometry: 6 mm on top and sides, 100 mm tall
    void coat_by_size(int inches, int ml) {
        assertThat(Geometry.coatMl(round(inches, 2))).isCloseTo(ml, within(6.0));
    }

    @Test
    void a_full_round_tin_of_eight_by_two_inches_holds_1647_ml() { // geometry: 100.53 in³
        assertThat(Geometry.areaMm2(new Footprint(true, 203, 203))).isCloseTo(32365, within(1.0));
        assertThat(Math.PI * 203.2 * 203.2 / 4 * 50.8 / 1000).isCloseTo(1647.4, within(0.1));
        assertThat(Geometry.tinMl(new Footprint(true, 203, 203), 50.8)).isCloseTo(1647.4, within(4.0)); // 203 for 203.2
        // a square of the same side holds 4/π as much
        assertThat(Geometry.tinMl(new Footprint(false, 203, 203), 50.8)
                / Geometry.tinMl(new Footprint(true, 203, 203), 50.8)).isCloseTo(1.2732, within(0.0001));
    }

    @ParameterizedTest
    @CsvSource({"6,360", "7,490", "8,640", "9,810", "10,1000", "12,1440", "14,1960"}) // 0.45 oz per in²: one baker's rule
    void batter_for_one_layer(int inches, int grams) {
        assertThat(Geometry.batterGrams(round(inches, 1))).isCloseTo(grams, within(10.0));
    }

    @ParameterizedTest
    @CsvSource({"6,25,30", "8,30,35", "10,35,40", "12,35,40"}) // pan-makers' charts, 2 in pans
    void bake_times_by_pan(int inches, int least, int most) {
        for (String method : List.of("abc-layer-cake", "smbc-marbled-cake", "smbc-drip-cake")) {
            var bake = step(expand(cake(method, round(inches, 2))), "X1/bake");
            assertThat(bake.leastMinutes()).isBetween(least, most);
            assertThat(bake.mostMinutes()).isLessThanOrEqualTo(most);
            assertThat(bake.oven().orElseThrow().temperatureC()).isEqualTo(175);
        }
    }

    @Test
    void pans_are_wider_than_their_name_and_the_door_stays_shut_for_most_of_the_bake() {
        var oven = step(expand(cake("abc-layer-cake", round(8, 3))), "X1/bake").oven().orElseThrow();
        assertThat(oven.pans()).hasSize(3).containsOnly(new Pan(new Footprint(true, 216, 216), 51)); // geometry: + 13 mm
        assertThat(oven.doorShutMinutes()).isEqualTo(21); // 70 % of 30
        var cheesecake = step(expand(cake("cheesecake", round(9, 1))), "X1/bake").oven().orElseThrow();
        assertThat(cheesecake.doorShutMinutes()).isEqualTo(70); // all of the 70 of its bake
        assertThat(cheesecake.coolInOvenMinutes()).isEqualTo(55);
    }

    @Test
    void peonies_take_twenty_six_hours() { // form 60, dry 12 h, assemble 60, dry 12 h
        var expanded = expand(cake("paste-peony-cake", round(8, 2), round(6, 2)));
        var graph = new WaitGraph(expanded.steps(), expanded.waits());
        assertThat(graph.leastMinutesTo("X1/dry-flowers")).isEqualTo(26 * 60);
        assertThat(graph.leastMinutesTo("X1/box")).isEqualTo(26 * 60 + 10);
    }

    @Test
    void the_two_tier_paste_cake_without_its_flowers_takes_1008_minutes() {
        // 20+33+10+75+60+25+120+45+480+50+60+20+10, touches not counted
        var expanded = expand(with(cake("paste-peony-cake", round(8, 2), round(6, 2)), Map.of("flowers", "ready")));
        assertThat(new WaitGraph(expanded.steps(), expanded.waits()).leastMinutesTo("X1/box")).isEqualTo(1008);
    }

    @Test
    void a_drip_cake_in_one_go_takes_277_minutes() {
        // 20+32+10+75+20+8+20+15+35+8+12+16+6, touches not counted: unwrapped and without settling
        var ready = with(cake("smbc-drip-cake", round(8, 3)), Map.of("wrap", "no", "settle", "no"));
        var expanded = expand(LibraryFixture.named(ready, "X1", "Happy 40 Ravi", Map.of(), java.util.Set.of()));
        assertThat(new WaitGraph(expanded.steps(), expanded.waits()).leastMinutesTo("X1/box")).isEqualTo(277);
    }

    @Test
    void three_eight_inch_layers_serve_at_least_ten() { // common practice, no source: the most generous chart says 12
        double squareInches = Geometry.areaMm2(round(8, 3).size()) / (25.4 * 25.4);
        assertThat(squareInches / 4).isGreaterThan(10); // 2 × 2 in pieces, the most generous slice
    }

    @Test
    void eight_inch_on_ten_needs_two_people_and_six_on_ten_one() { // from memory of the trade
        var three = expand(cake("paste-tiered-cake", round(10, 2), round(8, 2), round(6, 2)));
        assertThat(step(three, "X1/stack").handsOn().orElseThrow().people()).isEqualTo(2);
        var two = expand(cake("paste-tiered-cake", round(10, 2), round(6, 2)));
        assertThat(step(two, "X1/stack").handsOn().orElseThrow().people()).isEqualTo(1);
    }

    @Test
    void footprints_on_the_shelf() { // packaging charts: board + 2 in, 9 in tin 240 mm
        assertThat(step(expand(cake("smbc-marbled-cake", round(8, 3))), "X1/hold-on-board").place().orElseThrow()
                .form()).satisfies(form -> {
                    assertThat(form.footprint()).isEqualTo(new Footprint(false, 254, 254));
                    assertThat(form.heightMm()).isEqualTo(150);
                    assertThat(form.massGrams()).isBetween(2000, 3000); // 0.6 g/mL
                });
        var tin = step(expand(cake("cheesecake", round(9, 1))), "X1/chill").place().orElseThrow().form();
        assertThat(tin.footprint()).isEqualTo(new Footprint(true, 240, 240));
        assertThat(tin.heightMm()).isEqualTo(80);
        var stacked = step(expand(cake("paste-tiered-cake", round(10, 2), round(6, 2))), "X1/hold-finished").place()
                .orElseThrow().form();
        assertThat(stacked.footprint()).isEqualTo(new Footprint(false, 305, 305));
        assertThat(stacked.heightMm()).isEqualTo(245);
    }

    @Test
    void a_rest_as_long_as_an_evening_may_go_on_until_the_morning() { // nobody gets up for a touch at night
        for (String method : List.of("paste-tiered-cake", "paste-peony-cake", "mousse-glaze-cake")) {
            var longRests = expand(List.of(order(HandOverWay.PICK_UP, cake(method, round(8, 2)))), List.of()).steps()
                    .stream().filter(s -> s.kind() == StepKind.UNATTENDED && s.leastMinutes() > 240).toList();
            assertThat(longRests).isNotEmpty().allSatisfy(rest ->
                    assertThat(rest.mostMinutes() - rest.leastMinutes()).as(rest.id()).isGreaterThanOrEqualTo(480));
        }
    }

    /** Bowl in mL and the largest cakes that a kitchen with it makes; loads per litre from mixer manuals. */
    @ParameterizedTest
    @CsvSource({"4800,smbc-marbled-cake,8,3", "4800,fruit-smbc-cake,10,2", "4800,praline-cake,9,2",
            "7600,smbc-marbled-cake,10,3", "3000,whipped-cream-fruit-cake,8,2", "3000,abc-layer-cake,8,2"})
    void usual_bowls_hold_usual_cakes(int bowlMl, String method, int inches, int layers) {
        assertThat(mostInMixer(method, inches, layers)).isBetween(bowlMl / 2, bowlMl);
    }

    @ParameterizedTest
    @CsvSource({"4800,smbc-marbled-cake,10,3", "3000,whipped-cream-fruit-cake,8,3"})
    void larger_cakes_overflow_them(int bowlMl, String method, int inches, int layers) {
        assertThat(mostInMixer(method, inches, layers)).isGreaterThan(bowlMl);
    }

    private static int mostInMixer(String method, int inches, int layers) {
        return expand(cake(method, round(inches, layers))).steps().stream().flatMap(s -> s.equipment().stream())
                .filter(need -> need.poolId().equals("mixer")).mapToInt(EquipmentNeed::amount).max().orElseThrow();
    }

    @Test
    void rock_hard_thin_coat_stands_out_for_ten_to_twenty_minutes() { // common practice, no source
        var coats = LIBRARY.values().stream().filter(m -> m.sections().stream().flatMap(s -> s.steps().stream())
                .anyMatch(s -> s.id().equals("chill-thin-coat") || s.id().equals("chill-first-coat"))).toList();
        assertThat(coats).hasSizeGreaterThan(5).allSatisfy(method -> assertThat(method.repairs())
                .filteredOn(repair -> repair.missed().contains(Repair.Missed.REST_TOO_LONG) && repair.to().equals("coat")).singleElement()
                .satisfies(repair -> {
                    assertThat(repair.steps()).extracting(StepTemplate::id).containsExactly("stand-out");
                    assertThat(repair.steps().get(0).work()).isNull();
                    assertThat(repair.steps().get(0).rest().leastMinutes()).isEqualTo(Map.of("any", 10));
                    assertThat(repair.steps().get(0).rest().mostMinutes()).isEqualTo(Map.of("any", 20));
                }));
    }

    @Test
    void ganache_set_in_its_bowl_takes_five_minutes_of_warming_and_five_to_ten_of_standing() { // from memory of the trade, no source
        var repair = LIBRARY.get("smbc-drip-cake").repairs().stream().filter(one -> one.to().equals("drip")).findFirst().orElseThrow();
        assertThat(repair.missed()).containsExactly(Repair.Missed.REST_TOO_LONG, Repair.Missed.WAIT_TOO_LONG);
        assertThat(repair.steps().get(0).work().minutes()).isEqualTo(Map.of("any", 5));
        assertThat(repair.steps().get(1).rest().leastMinutes()).isEqualTo(Map.of("any", 5));
        assertThat(repair.steps().get(1).rest().mostMinutes()).isEqualTo(Map.of("any", 10));
    }

    @Test
    void layers_that_have_not_thawed_are_cut_thinner_and_take_half_an_hour_to_an_hour() { // a few bakers, no source
        var repair = LIBRARY.get("abc-layer-cake").repairs().stream().filter(one -> one.from().equals("thaw")).findFirst().orElseThrow();
        assertThat(repair.missed()).containsExactly(Repair.Missed.REST_TOO_SHORT);
        assertThat(repair.steps().get(0).work().minutes()).isEqualTo(Map.of("any", 5));
        assertThat(repair.steps().get(1).rest().leastMinutes()).isEqualTo(Map.of("any", 30));
        assertThat(repair.steps().get(1).rest().mostMinutes()).isEqualTo(Map.of("any", 60));
    }

    @Test
    void cake_that_has_not_settled_is_pressed_and_stands_half_an_hour() { // a few bakers, no source
        var repair = LIBRARY.get("paste-tiered-cake").repairs().stream().filter(one -> one.from().equals("settle")).findFirst().orElseThrow();
        assertThat(repair.to()).isEqualTo("coat");
        assertThat(repair.steps().get(0).work().minutes().values()).allMatch(minutes -> minutes >= 15 && minutes <= 30);
        assertThat(repair.steps().get(1).rest().leastMinutes()).isEqualTo(Map.of("any", 30));
    }

    @Test
    void half_thawed_ring_is_frozen_again_for_four_hours() { // from memory of the trade, no source
        var repair = LIBRARY.get("mousse-glaze-cake").repairs().get(0);
        assertThat(repair.from()).isEqualTo("freeze");
        assertThat(repair.missed()).containsExactly(Repair.Missed.WAIT_TOO_LONG);
        assertThat(repair.steps().get(0).work().minutes()).isEqualTo(Map.of("any", 10));
        assertThat(repair.steps().get(1).rest().leastMinutes()).isEqualTo(Map.of("any", 240));
        assertThat(repair.steps().get(1).place().allowed()).containsExactly(PlaceKind.FREEZER);
    }
}
