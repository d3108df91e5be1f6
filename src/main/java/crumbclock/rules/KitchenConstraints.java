package crumbclock.rules;

import ai.timefold.solver.core.api.score.stream.Constraint;
import ai.timefold.solver.core.api.score.stream.ConstraintFactory;
import ai.timefold.solver.core.api.score.stream.ConstraintProvider;
import java.util.List;
import java.util.function.Function;

/** All rules and wishes, by number. */
public final class KitchenConstraints implements ConstraintProvider {

    static final List<Function<ConstraintFactory, Constraint>> ALL = List.of(
            OrderOfWorkRules::r01LeastWait, OrderOfWorkRules::r01LeastRest,
            OrderOfWorkRules::r02MostWait, OrderOfWorkRules::r02MostRest,
            HandsRules::r03Heads, HandsRules::r03KnownPerson, HandsRules::r03Skill, HandsRules::r03Spans,
            HandsRules::r03InOneGo, HandsRules::r03Minutes,
            HoursRules::r03OnShift, HoursRules::r03OneAtATime, HoursRules::r03MostADay,
            TouchRules::r04Missing, TouchRules::r04Twice, TouchRules::r04Needless, TouchRules::r04Stray,
            TouchRules::r04Due, TouchRules::r04KnownPerson, TouchRules::r04Skill, TouchRules::r04OnShift,
            TouchRules::r04HandsFree, TouchRules::r04OneAtATime,
            HoursRules::r05OvenWatched, HoursRules::r05StepWatched,
            EquipmentRules::r06Pieces, EquipmentRules::r06KnownPiece, EquipmentRules::r06From,
            EquipmentRules::r06Until, EquipmentRules::r06Capacity, EquipmentRules::r06OneUseAtATime,
            EquipmentRules::r06PieceAway, EquipmentRules::r06InUseWhileCleaned, EquipmentRules::r06KnownCleaning,
            SurfaceRules::r06SurfaceGiven, SurfaceRules::r06KnownSurface, SurfaceRules::r06SurfaceArea,
            SurfaceRules::r06SurfaceAway,
            OvenRules::r07Cavity, OvenRules::r07OneTemperature, OvenRules::r07Range, OvenRules::r07BakeAway,
            OvenRules::r07RunAway,
            PanRules::r07PanMissing, PanRules::r07PanTwice, PanRules::r07Stray, PanRules::r07OneCavity,
            PanRules::r07KnownRack, PanRules::r07Height, PanRules::r07Inside, PanRules::r07Apart,
            HeatRules::r08Heated, HeatRules::r08SoundRun, HeatRules::r08OneRunAtATime, HeatRules::r08Preheat,
            HeatRules::r08Change, HeatRules::r08EmptyWhileHeating, HeatRules::r08OffWhileCooling,
            HeatRules::r08AloneWhileCooling,
            OvenRules::r09DoorShut,
            ShelfRules::r10Missing, ShelfRules::r10Twice, ShelfRules::r10Stray, ShelfRules::r10Stays,
            ShelfRules::r10KnownShelf, ShelfRules::r10Inside, ShelfRules::r10Height, ShelfRules::r10Apart,
            ShelfRules::r10Mass, ShelfRules::r10StoreAway,
            StoreClassRules::r11StoreKind, StoreClassRules::r11SurfaceKind, StoreClassRules::r11Warmth,
            StoreClassRules::r11Humid,
            LifeRules::r12OutOfCold, LifeRules::r12Life,
            AllergenRules::r13Equipment, AllergenRules::r13Oven, AllergenRules::r13Surface, AllergenRules::r13Shelf,
            AllergenRules::r13Below, AllergenRules::r13FreeShelf,
            HoursRules::r14Earliest, HoursRules::r14Horizon, HoursRules::r14WorkWhenOpen, HoursRules::r14TouchWhenOpen,
            FixedRules::r15Step, FixedRules::r15Touches, FixedRules::r15Pans, FixedRules::r15Placements,
            HandOverRules::r16Placed, HandOverRules::r16NotTooEarly, HandOverRules::r16Finished,
            HandOverRules::r16TimesTold,
            CompletenessRules::r17Missing, CompletenessRules::r17Twice, CompletenessRules::r17Needless,
            CompletenessRules::r17Stray, CompletenessRules::r17OrderNotTold, CompletenessRules::r17OrderToldTwice,
            CompletenessRules::r17UnknownOrder, CompletenessRules::r17NoReason,
            OrderWishes::lateOrder, OrderWishes::lateNotPossible, OrderWishes::w01Buffer, OrderWishes::w02Freshness,
            PeopleWishes::w03Spread, PeopleWishes::w03OddHours, PeopleWishes::w03Uneven,
            PeopleWishes::w04WorkChange, PeopleWishes::w04CakeChange, PeopleWishes::w04ExtraFinisher,
            KitchenWishes::w05Oven, KitchenWishes::w06Behind, KitchenWishes::w07End,
            KeptWishes::w08Moved, KeptWishes::w08OtherHands, KeptWishes::w08OtherTouch);

    @Override
    public Constraint[] defineConstraints(ConstraintFactory factory) {
        return ALL.stream().map(constraint -> constraint.apply(factory)).toArray(Constraint[]::new);
    }
}
