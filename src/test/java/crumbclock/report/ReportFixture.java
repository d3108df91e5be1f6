package crumbclock.report;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.kitchen.Surface;
import crumbclock.domain.order.Batch;
import crumbclock.domain.order.Cake;
import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.ProblemClock;
import crumbclock.domain.problem.Weights;
import crumbclock.domain.work.ColdLimit;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Pan;
import crumbclock.domain.work.PlaceNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Touch;
import crumbclock.domain.work.Wait;
import crumbclock.units.Span;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A Friday evening and Saturday morning made by hand: three orders (one on time, one late, one not possible), two
 * people, an oven with two racks, a fridge with two shelves and a cupboard. All names and figures are invented.
 */
public final class ReportFixture {

    /** Title that would break a page which forgets to escape. */
    public static final String NASTY_TITLE = "<b>\"Juno & Pip\"</b> are 'six'";

    private ReportFixture() {
    }

    /** Minute of a clock time on Friday 12 June 2026; the problem starts at noon. */
    public static int fri(int hour, int minute) {
        return (hour - 12) * 60 + minute;
    }

    /** Minute of a clock time on Saturday 13 June 2026. */
    public static int sat(int hour, int minute) {
        return fri(hour + 24, minute);
    }

    static Span span(int from, int until) {
        return new Span(from, until);
    }

    public static Problem problem() {
        var clock = new ProblemClock(ZonedDateTime.of(2026, 6, 12, 12, 0, 0, 0, ZoneId.of("Europe/Dublin")), 36 * 60);
        return new Problem("Three for Saturday", clock, kitchen(), orders(),
                List.of(new Batch("B1", "vanilla buttercream")), steps(), waits(),
                List.of(new ColdLimit("A1-cold", "filled cake", "A1/1", "A1/1/fill", "A1/hand-over",
                        List.of("A1/1/chill", "A1/1/hold"), 240)),
                List.of(), List.of(), List.of(), Weights.DEFAULT);
    }

    private static Kitchen kitchen() {
        var odette = new Person("odette", "Odette", List.of(span(fri(17, 0), fri(22, 0)), span(sat(6, 0), sat(13, 30))),
                List.of(span(sat(9, 30), sat(10, 0))), Set.of("writing"), Map.of(), 600);
        var pell = new Person("pell", "Pell", List.of(span(fri(18, 0), fri(21, 0))), List.of(), Set.of(), Map.of(), 600);
        var oven = new Cavity("oven", "Oven", List.of(new Rack(460, 360, 150), new Rack(460, 360, 150)), 50, 250, 15,
                6, 9, 30, 15, 20, List.of());
        var f1 = new Shelf("F1", "F1", 490, 340, 190, 8_000, Set.of(),
                List.of(new Goods("milk & eggs", 0, 0, 160, 340, 180, 3_000, span(fri(0, 0), sat(8, 0)))));
        var f2 = new Shelf("F2", "F2", 490, 340, 280, Integer.MAX_VALUE, Set.of("nuts"), List.of());
        var fridge = new Store("fridge", "Fridge", PlaceKind.FRIDGE, 25, 0, 30, true, List.of(f1, f2), List.of());
        var cupboard = new Store("cupboard", "Hall cupboard", PlaceKind.COOL_ROOM, 25, 10, 60, false,
                List.of(new Shelf("C1", "C1", 900, 450, 500, Integer.MAX_VALUE, Set.of(), List.of())), List.of());
        return new Kitchen("Marlow kitchen", List.of(odette, pell), List.of(oven), List.of(fridge, cupboard),
                List.of(new Surface("rack", "Cooling racks", PlaceKind.RACK, 450_000, List.of())),
                List.of(new Pool("bowl", "Mixer bowl", 2, 4_800, 5, 25, Map.of(), List.of()),
                        new Pool("car", "Car", 1, Integer.MAX_VALUE, 0, 0, Map.of(), List.of())),
                List.of(span(0, 36 * 60)));
    }

    private static List<Order> orders() {
        var a1 = new Cake("A1/1", "A1", "8 in vanilla, marbled", 20, "Juno is 6", Set.of("egg", "milk", "wheat"),
                Set.of("nuts"), "A1/1/box", List.of("B1"));
        var a2 = new Cake("A2/1", "A2", "10 in under sugar paste", 50, "", Set.of("egg", "milk", "wheat"), Set.of(),
                "A2/1/box", List.of());
        var a3 = new Cake("A3/1", "A3", "6 in with three sugar peonies", 12, "", Set.of("egg"), Set.of(), "A3/1/box",
                List.of());
        return List.of(
                new Order("A1", NASTY_TITLE, List.of(a1), new HandOver(HandOverWay.PICK_UP, "A1/hand-over", 0,
                        sat(10, 0), sat(10, 30)), 1, 60),
                new Order("A2", "Wedding tier", List.of(a2), new HandOver(HandOverWay.DELIVERY, "A2/deliver", 35,
                        sat(12, 0), sat(12, 30)), 3, 120),
                new Order("A3", "=Peonies", List.of(a3), new HandOver(HandOverWay.SET_ASIDE, "", 0, sat(9, 0),
                        sat(9, 0)), 1, 0));
    }

    private static List<Step> steps() {
        var tin = new Pan(new Footprint(true, 216, 216), 55);
        var big = new Pan(new Footprint(true, 266, 266), 80);
        return List.of(
                hands("A1/1/mix", "mix batter", "A1/1", 20, bowl("A1/1/mix")),
                bake("A1/1/bake", "A1/1", 30, 32, new OvenUse(175, List.of(tin, tin, tin), 15, 0)),
                rest("A1/1/cool", "cool on the rack", "A1/1", 60, 240, 0, onRack(216, 3, "bare layer")),
                hands("A1/1/fill", "level and fill", "A1/1", 25, List.of()),
                rest("A1/1/chill", "chill the thin coat", "A1/1", 20, 40, 1, inFridge(254, 150, "cake on its board")),
                hands("A1/1/coat", "final coat", "A1/1", 15, List.of()),
                rest("A1/1/hold", "hold overnight", "A1/1", 60, Wait.NO_MOST, 2,
                        inFridge(254, 150, "cake on its board")),
                hands("A1/1/write", "write", "A1/1", 30, List.of()),
                hands("A1/1/box", "box", "A1/1", 6, List.of()),
                rest("A1/1/stand", "stand boxed", "A1/1", 0, 480, 1, new PlaceNeed(new Form("boxed cake",
                        new Footprint(false, 260, 260), 260, 2_100, 1, 20, false, false),
                        List.of(PlaceKind.COOL_ROOM))),
                hands("A1/hand-over", "hand over", "A1", 5, List.of()),
                hands("A2/1/mix", "mix batter", "A2/1", 25, bowl("A2/1/mix")),
                bake("A2/1/bake", "A2/1", 42, 44, new OvenUse(165, List.of(big, big), 15, 0)),
                rest("A2/1/cool", "cool on the rack", "A2/1", 90, 240, 0, onRack(266, 2, "bare layer")),
                pair("A2/1/coat", "ganache coat", "A2/1", 20),
                rest("A2/1/set", "let the ganache set", "A2/1", 480, 900, 2,
                        new PlaceNeed(new Form("tier on its drum", new Footprint(true, 305, 305), 125, 3_400, 1, 20,
                                true, false), List.of(PlaceKind.FRIDGE))),
                hands("A2/1/cover", "cover with paste", "A2/1", 50, List.of()),
                hands("A2/1/box", "box", "A2/1", 10, List.of()),
                away("A2/deliver", "deliver and set up", "A2", 70),
                hands("A3/1/box", "box", "A3/1", 5, List.of()),
                hands("B1/whip", "whip buttercream", "B1", 20, bowl("B1/whip")),
                rest("B1/keep", "keep the tub", "B1", 0, 2_880, 1, new PlaceNeed(new Form("tub",
                        new Footprint(true, 180, 180), 150, 2_000, 1, 22, false, false), List.of(PlaceKind.FRIDGE))));
    }

    private static List<Wait> waits() {
        return List.of(new Wait("A1/1/mix", "A1/1/bake", 0, 20), new Wait("A1/1/bake", "A1/1/cool", 0, 0),
                new Wait("A1/1/cool", "A1/1/fill", 0, 0), new Wait("A1/1/fill", "A1/1/chill", 0, 15),
                new Wait("A1/1/chill", "A1/1/coat", 0, 10), new Wait("A1/1/coat", "A1/1/hold", 0, 30),
                new Wait("A1/1/hold", "A1/1/write", 0, 60), new Wait("A1/1/write", "A1/1/box", 0, Wait.NO_MOST),
                new Wait("A1/1/box", "A1/1/stand", 0, 0), new Wait("A1/1/stand", "A1/hand-over", 0, 0),
                new Wait("A2/1/mix", "A2/1/bake", 0, 20), new Wait("A2/1/bake", "A2/1/cool", 0, 0),
                new Wait("A2/1/cool", "A2/1/coat", 0, 0), new Wait("A2/1/coat", "A2/1/set", 0, 30),
                new Wait("A2/1/set", "A2/1/cover", 30, 90), new Wait("A2/1/cover", "A2/1/box", 60, Wait.NO_MOST),
                new Wait("A2/1/box", "A2/deliver", 0, Wait.NO_MOST), new Wait("B1/whip", "B1/keep", 0, 30),
                new Wait("B1/keep", "A1/1/coat", 0, 60));
    }

    private static List<EquipmentNeed> bowl(String stepId) {
        return List.of(new EquipmentNeed("bowl", 1, 2_000, stepId));
    }

    private static Step hands(String id, String name, String owner, int minutes, List<EquipmentNeed> equipment) {
        return handsOn(id, name, owner, new HandsOn(minutes, 1, "", "work", minutes > 40, false, false), equipment);
    }

    private static Step pair(String id, String name, String owner, int minutes) {
        return handsOn(id, name, owner, new HandsOn(minutes, 2, "", "coating", false, false, true), List.of());
    }

    private static Step away(String id, String name, String owner, int minutes) {
        return handsOn(id, name, owner, new HandsOn(minutes, 1, "", "", false, true, false),
                List.of(new EquipmentNeed("car", 1, 0, id)));
    }

    private static Step handsOn(String id, String name, String owner, HandsOn handsOn, List<EquipmentNeed> equipment) {
        return new Step(id, name, owner, "", StepKind.HANDS_ON, Optional.of(handsOn), 0, 0, Optional.empty(),
                Optional.empty(), false, equipment, Optional.empty(), Optional.empty(), Set.of("egg"),
                id.equals("A1/1/mix") ? Set.of("nuts") : Set.of(), 0);
    }

    private static Step bake(String id, String owner, int least, int most, OvenUse oven) {
        return new Step(id, "bake", owner, "", StepKind.UNATTENDED, Optional.empty(), least, most,
                Optional.of(new Touch(2, "")), Optional.of(new Touch(2, "")), true, List.of(), Optional.of(oven),
                Optional.empty(), Set.of("egg"), Set.of(), 0);
    }

    /** A step without hands; with touches of so many minutes at both ends, or with none. */
    private static Step rest(String id, String name, String owner, int least, int most, int touchMinutes,
            PlaceNeed place) {
        var touch = touchMinutes == 0 ? Optional.<Touch>empty() : Optional.of(new Touch(touchMinutes, ""));
        return new Step(id, name, owner, "", StepKind.UNATTENDED, Optional.empty(), least, most, touch, touch, false,
                List.of(), Optional.empty(), Optional.of(place), Set.of("egg"), Set.of(), 0);
    }

    private static PlaceNeed onRack(int diameterMm, int pieces, String name) {
        return new PlaceNeed(new Form(name, new Footprint(true, diameterMm, diameterMm), 55, 700, pieces, 80, true,
                false), List.of(PlaceKind.RACK));
    }

    private static PlaceNeed inFridge(int boardMm, int heightMm, String name) {
        return new PlaceNeed(new Form(name, new Footprint(false, boardMm, boardMm), heightMm, 2_000, 1, 20, true,
                false), List.of(PlaceKind.FRIDGE));
    }
}
