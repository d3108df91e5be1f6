package crumbclock.problems;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.work.Footprint;
import crumbclock.engine.shelf.SpotFinder;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What makes the problems hard, as geometry and sums: common practice, no source, unless a line says more. */
class ScenarioArithmeticTest {

    @Test
    void should_have_room_for_both_cakes_on_the_wider_shelf_unboxed_only() {
        var five = ShippedProblem.read("five-due-saturday.json");
        var shelf = five.shelf("fridge", "F2");
        var marbled = five.footprint("A1/hold-on-board");
        var drip = five.footprint("A2/hold-on-board");

        assertThat(marbled.widthMm() + drip.widthMm() + five.store("fridge").gapMm()).isEqualTo(254 + 203 + 25);
        assertThat(fit(shelf, shelf.widthMm(), 25, marbled, drip)).isTrue(); // 482 of 490
        assertThat(fit(shelf, 480, 25, marbled, drip)).isFalse();
        // in boxes 25 mm wider they would need 260 + 210 + 25 = 495
        assertThat(fit(shelf, shelf.widthMm(), 25, square(260), square(210))).isFalse();
        assertThat(five.heightMm("A2/hold-on-board")).isEqualTo(165).isLessThanOrEqualTo(shelf.clearHeightMm());
    }

    @Test
    void should_keep_the_door_free_of_customers_while_the_wedding_cake_is_on_the_road() {
        var five = ShippedProblem.read("five-due-saturday.json");
        var wedding = five.problem().orders().get(2);
        int leaves = wedding.handOver().until() - wedding.handOver().offsetMinutes();
        int back = leaves + five.step("A3/hand-over").handsOn().orElseThrow().minutes();

        assertThat(leaves).isEqualTo(five.minute("2026-06-06T12:20"));
        assertThat(five.problem().orders()).filteredOn(order -> order != wedding)
                .allSatisfy(order -> assertThat(order.handOver().until() <= leaves || order.handOver().from() >= back).isTrue());
    }

    /** Batter by the area of the pan, 0.45 oz a square inch (one baker's rule): 640 g for an 8 in layer. */
    @Test
    void should_need_five_bowls_of_batter_and_most_of_the_morning_at_the_mixer() {
        var charity = ShippedProblem.read("charity-day.json");
        var batters = charity.problem().steps().stream().filter(step -> step.id().startsWith("batter-")).toList();
        var icings = charity.problem().steps().stream().filter(step -> step.id().startsWith("icing-")).toList();
        double kilograms = batters.stream().mapToInt(step -> step.equipment().get(0).amount()).sum() / 2.08 / 1000;

        assertThat(batters).hasSize(5);
        assertThat(icings).hasSize(4);
        assertThat(kilograms).isBetween(64 * 0.639, 64 * 0.641);
        assertThat(List.of(batters, icings)).allSatisfy(bowls -> assertThat(bowls)
                .allSatisfy(step -> assertThat(step.equipment().get(0).amount()).isLessThanOrEqualTo(19_000)));
        assertThat(batters.stream().mapToInt(step -> step.handsOn().orElseThrow().minutes()).sum()
                + icings.stream().mapToInt(step -> step.handsOn().orElseThrow().minutes()).sum())
                .isEqualTo(5 * 25 + 4 * 22).isEqualTo(213);
    }

    @Test
    void should_take_four_pans_on_each_rack_of_the_hall_ovens() {
        var charity = ShippedProblem.read("charity-day.json");
        var pan = charity.step("B01/bake").oven().orElseThrow().pans().get(0).footprint();
        int racks = 0;
        for (var cavity : charity.problem().kitchen().cavities()) {
            racks += cavity.racks().size();
            var finder = new SpotFinder(4);
            int pans = 0;
            while (finder.find(cavity.racks().get(0).widthMm(), cavity.racks().get(0).depthMm(), cavity.panGapMm(),
                    cavity.wallGapMm(), pan.round(), pan.widthMm(), pan.depthMm(), false)) {
                finder.addNeighbour(pan.round(), finder.xMm(), finder.yMm(), pan.widthMm(), pan.depthMm());
                pans++;
            }
            assertThat(pans).isEqualTo(4);
        }
        assertThat(racks * 4).as("layers a load").isEqualTo(24);
        assertThat(charity.pool("pan-8in").count()).isEqualTo(36);
    }

    @Test
    void should_leave_a_board_of_300_mm_for_the_late_order() {
        var late = ShippedProblem.read("late-order.json");
        var shelf = late.shelf("reach-in", "5");
        var doughs = shelf.goods().get(0);
        var finder = new SpotFinder(1);
        finder.addNeighbour(false, doughs.xMm(), doughs.yMm(), doughs.widthMm(), doughs.depthMm());

        assertThat(finder.find(shelf.widthMm(), shelf.depthMm(), 25, 0, false, 300, shelf.depthMm(), false)).isTrue();
        assertThat(finder.find(shelf.widthMm(), shelf.depthMm(), 25, 0, false, 301, shelf.depthMm(), false)).isFalse();
    }

    @Test
    void should_not_fit_cream_cake_and_another_board_but_cheesecake_and_another_board() {
        var small = ShippedProblem.read("small-fridge.json");
        var upper = small.shelf("fridge", "R1");
        var lower = small.shelf("fridge", "R2");
        var cream = small.footprint("E1/hold-on-board");
        var tin = small.footprint("E2/chill");
        var mousse = small.footprint("E3/thaw");

        assertThat(cream.widthMm() + mousse.widthMm() + 25).isEqualTo(482).isGreaterThan(lower.widthMm());
        assertThat(tin.widthMm() + mousse.widthMm() + 25).isEqualTo(468).isLessThanOrEqualTo(upper.widthMm());
        assertThat(fit(lower, lower.widthMm(), 25, cream, mousse)).isFalse();
        assertThat(fit(upper, upper.widthMm(), 25, tin, mousse)).isTrue();
        assertThat(fit(lower, lower.widthMm(), 25, small.footprint("E4/hold-on-board"), cream)).isFalse();
        // a 12 in cake's board is 356 mm deep at least
        assertThat(lower.depthMm()).isLessThan(356);
    }

    /** Peonies: form 60, dry 12 h, assemble 60, dry 12 h. */
    @Test
    void should_need_more_hours_for_the_flowers_than_there_are() {
        var shipped = ShippedProblem.read("not-possible.json");
        int flowers = shipped.step("F1/form-petals").handsOn().orElseThrow().minutes() + shipped.step("F1/dry-petals").leastMinutes()
                + shipped.step("F1/assemble-flowers").handsOn().orElseThrow().minutes()
                + shipped.step("F1/dry-flowers").leastMinutes();

        assertThat(flowers).isEqualTo(26 * 60);
        assertThat(shipped.problem().orders().get(0).handOver().until()).isEqualTo(22 * 60).isLessThan(flowers);
    }

    @Test
    void should_have_nobody_at_the_door_while_the_only_baker_drives() {
        var shipped = ShippedProblem.read("not-possible.json");
        var venue = shipped.problem().orders().get(0).handOver();
        var pickUp = shipped.problem().orders().get(1).handOver();
        int leaves = venue.until() - venue.offsetMinutes();
        int back = leaves + shipped.step("F1/hand-over").handsOn().orElseThrow().minutes();

        assertThat(leaves).isEqualTo(shipped.minute("2026-08-08T09:00"));
        assertThat(back).isEqualTo(shipped.minute("2026-08-08T10:40"));
        assertThat(leaves).isLessThan(pickUp.from());
        assertThat(back).isGreaterThan(pickUp.until());
        assertThat(shipped.problem().kitchen().people()).hasSize(1);
    }

    @Test
    void should_not_chill_tin_and_tiers_together() {
        var shipped = ShippedProblem.read("not-possible.json");
        var shelf = shipped.shelf("fridge", "shelf");
        var tier = shipped.footprint("F1/firm-layers");

        assertThat(fit(shelf, shelf.widthMm(), 25, shipped.footprint("F2/chill"), tier)).isFalse(); // 240 + 203 + 25 = 468 > 450
        assertThat(fit(shelf, shelf.widthMm(), 25, tier, tier)).isTrue();
    }

    /** Whether both stand on the shelf, without its goods, the first where the finder puts it. */
    private static boolean fit(Shelf shelf, int widthMm, int gapMm, Footprint first, Footprint second) {
        var finder = new SpotFinder(1);
        assertThat(find(finder, shelf, widthMm, gapMm, first)).as("room for the first alone").isTrue();
        finder.addNeighbour(first.round(), finder.xMm(), finder.yMm(), first.widthMm(), first.depthMm());
        return find(finder, shelf, widthMm, gapMm, second);
    }

    private static boolean find(SpotFinder finder, Shelf shelf, int widthMm, int gapMm, Footprint piece) {
        return finder.find(widthMm, shelf.depthMm(), gapMm, 0, piece.round(), piece.widthMm(), piece.depthMm(), true);
    }

    private static Footprint square(int sideMm) {
        return new Footprint(false, sideMm, sideMm);
    }
}
