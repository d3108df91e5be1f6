package crumbclock.rules;

import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.TimetableBuilder.aTimetable;
import static crumbclock.rules.RuleCheck.check;

import crumbclock.fixture.PoolBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** R06, the equipment. */
class EquipmentRulesTest {

    @Test
    void should_take_as_many_pieces_as_needed() {
        var problem = aProblem().pool(aPool("pan", 4)).step(resting("A/fill", 10).takes("pan", 2));

        check(EquipmentRules::r06Pieces).on(problem, aTimetable().step("A/fill", 0, 10).with("pan", 0)).costs(1);
        check(EquipmentRules::r06Pieces)
                .on(problem, aTimetable().step("A/fill", 0, 10).with("pan", 0).with("pan", 1)).costs(0);
        check(EquipmentRules::r06Pieces)
                .on(problem, aTimetable().step("A/fill", 0, 10).with("pan", 0).with("pan", 1).with("pan", 2)).costs(1)
                .because(new Cause(List.of("A/fill"), "pan", new Span(0, 10),
                        "A/fill takes 3 pieces of pan; it needs 2"));
    }

    @Test
    void should_take_nothing_that_is_not_needed() {
        check(EquipmentRules::r06Pieces)
                .on(aProblem().pool(aPool("pan", 4)).step(resting("A/fill", 10)),
                        aTimetable().step("A/fill", 0, 10).with("pan", 0))
                .costs(1);
    }

    @ParameterizedTest
    @CsvSource({"bowl, -1, 1", "bowl, 0, 0", "bowl, 1, 0", "bowl, 2, 1", "drum, 0, 1"})
    void should_take_a_piece_that_there_is(String pool, int unit, int findings) {
        check(EquipmentRules::r06KnownPiece)
                .on(bowls(aPool("bowl", 2)), aTimetable().step("A/mix", 0, 10).with(pool, unit)).costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"99, 1", "100, 0", "101, 1"})
    void should_hold_from_the_start(int from, int findings) {
        check(EquipmentRules::r06From)
                .on(bowls(aPool("bowl", 1)), aTimetable().step("A/mix", 100, 110).with("bowl", 0, from, 110))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"110, 1", "299, 1", "300, 0", "301, 1"})
    void should_hold_to_the_end_of_the_step_that_gives_back(int until, int findings) {
        check(EquipmentRules::r06Until)
                .on(aProblem().pool(aPool("pan", 2)).step(resting("A/fill", 10).takes("pan", 1, 0, "A/empty"))
                        .step(resting("A/empty", 10)),
                        aTimetable().step("A/fill", 100, 110).with("pan", 0, 100, until).step("A/empty", 290, 300))
                .costs(findings);
    }

    @Test
    void should_tell_needs_of_one_pool_apart_by_their_ends() {
        var problem = aProblem().pool(aPool("pan", 3)).step(resting("A/empty", 10))
                .step(resting("A/fill", 10).takes("pan", 2, 0, "A/empty").takes("pan", 1));

        check(EquipmentRules::r06Until).on(problem, aTimetable().step("A/empty", 290, 300).step("A/fill", 100, 110)
                .with("pan", 0, 100, 300).with("pan", 1, 100, 110).with("pan", 2, 100, 300)).costs(0);
        check(EquipmentRules::r06Until).on(problem, aTimetable().step("A/empty", 290, 300).step("A/fill", 100, 110)
                .with("pan", 0, 100, 300).with("pan", 1, 100, 110).with("pan", 2, 100, 110)).costs(1);
    }

    @Test
    void should_not_give_back_with_a_step_that_is_not_placed() {
        check(EquipmentRules::r06Until)
                .on(aProblem().pool(aPool("pan", 2)).step(resting("A/fill", 10).takes("pan", 1, 0, "A/empty"))
                        .step(resting("A/empty", 10)), aTimetable().step("A/fill", 100, 110).with("pan", 0))
                .costs(1);
    }

    @ParameterizedTest
    @CsvSource({"4999, 0", "5000, 0", "5001, 1"})
    void should_not_overfill_a_bowl(int amount, int findings) {
        check(EquipmentRules::r06Capacity)
                .on(aProblem().pool(aPool("bowl", 1).holding(5000)).step(resting("A/mix", 10).takes("bowl", 1, amount, "A/mix")),
                        aTimetable().step("A/mix", 0, 10).with("bowl", 0))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, 109, 1", "0, 0, 110, 0", "5, 0, 114, 1", "5, 0, 115, 0", "5, 1, 100, 0", "5, 0, 86, 1", "5, 0, 85, 0"})
    void should_clean_between_two_uses(int cleanMinutes, int unit, int start, int findings) {
        check(EquipmentRules::r06OneUseAtATime)
                .on(bowls(aPool("bowl", 2).cleanedIn(cleanMinutes)).step(resting("B/mix", 10).takes("bowl", 1)),
                        aTimetable().step("A/mix", 100, 110).with("bowl", 0).step("B/mix", start, start + 10).with("bowl", unit))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"0, 149, 1", "0, 150, 0", "0, 90, 0", "0, 91, 1", "1, 120, 0"})
    void should_not_use_a_piece_that_is_away(int unit, int start, int findings) {
        check(EquipmentRules::r06PieceAway)
                .on(bowls(aPool("bowl", 2).away(0, 100, 150)), aTimetable().step("A/mix", start, start + 10).with("bowl", unit))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"0, 109, 1", "0, 110, 0", "1, 100, 0"})
    void should_not_use_a_piece_while_it_is_cleaned(int unit, int from, int findings) {
        check(EquipmentRules::r06InUseWhileCleaned)
                .on(bowls(aPool("bowl", 2)),
                        aTimetable().step("A/mix", 100, 110).with("bowl", 0).cleaning("bowl", unit, from, from + 20))
                .costs(findings);
    }

    @ParameterizedTest
    @CsvSource({"bowl, 1, 0", "bowl, 2, 1", "drum, 0, 1"})
    void should_clean_a_piece_that_there_is(String pool, int unit, int findings) {
        check(EquipmentRules::r06KnownCleaning)
                .on(bowls(aPool("bowl", 2)), aTimetable().cleaning(pool, unit, 0, 20)).costs(findings);
    }

    private static ProblemBuilder bowls(PoolBuilder pool) {
        return aProblem().pool(pool).step(resting("A/mix", 10).takes("bowl", 1));
    }
}
