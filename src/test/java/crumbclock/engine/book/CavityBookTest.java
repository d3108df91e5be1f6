package crumbclock.engine.book;

import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.StepBuilder.resting;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.OvenRun;
import crumbclock.domain.plan.PanPlace;
import crumbclock.engine.model.CompiledProblem;
import crumbclock.engine.model.Journal;
import crumbclock.engine.model.Task;
import crumbclock.fixture.OvenBuilder;
import crumbclock.fixture.PersonBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.StepBuilder;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * One oven with 20 minutes to heat up, 2 up and 4 down for each 10 °C, kept hot over 60 minutes at the most, and two racks
 * of 500 × 400 mm; asked in real time, by both directions.
 */
class CavityBookTest {

    private final Journal journal = new Journal();
    private CompiledProblem compiled;
    private CavityBook book;
    private PresenceBook presence;

    private void given(boolean mirrored, StepBuilder... bakes) {
        given(mirrored, oven(), aPerson("ann").onShift(0, 2880), bakes);
    }

    private void given(boolean mirrored, OvenBuilder oven, PersonBuilder person, StepBuilder... bakes) {
        ProblemBuilder problem = aProblem().oven(oven).person(person);
        for (StepBuilder bake : bakes) {
            problem.step(bake);
        }
        compiled = CompiledProblem.of(problem.build(), mirrored);
        presence = new PresenceBook(compiled, journal);
        presence.reset();
        book = new CavityBook(compiled, 0, journal, presence);
        book.reset();
    }

    private static OvenBuilder oven() {
        return anOven("oven").rack(500, 400, 150).rack(500, 400, 90);
    }

    /** A bake of one pan, with touches of two minutes. */
    private static StepBuilder bake(String id, int rest, int celsius) {
        return resting(id, rest, rest).putIn(2).takeOut(2).bakesAt(celsius).pan(240, 190, 60);
    }

    private boolean isFree(int bake, int from, int until) {
        Task task = compiled.tasks[bake];
        int start = compiled.realStart(from, until);
        int answer = book.blockedUntil(task, start, start + until - from);
        assertThat(answer).as("either free, or a later minute").matches(minute -> minute == -1 || minute > start);
        return answer < 0;
    }

    private void put(int bake, int from, int until) {
        assertThat(isFree(bake, from, until)).isTrue();
        book.book();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_heat_up_from_cold_before_the_first_load(boolean mirrored) {
        given(mirrored, bake("c/a", 36, 180));

        assertThat(isFree(0, 19, 59)).isFalse();
        put(0, 20, 60);
        assertThat(book.runs()).containsExactly(new OvenRun("oven", 180, 0, 20, 60));
        assertThat(book.minutesOn()).isEqualTo(60);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_change_its_temperature_up_in_two_and_down_in_four_minutes_for_each_ten_degrees(boolean mirrored) {
        given(mirrored, bake("c/a", 36, 180), bake("c/up", 36, 195), bake("c/down", 36, 165));
        put(0, 100, 140);

        // 15 degrees count as two begun tens
        assertThat(isFree(1, 143, 183)).isFalse();
        assertThat(isFree(1, 144, 184)).isTrue();
        assertThat(isFree(2, 147, 187)).isFalse();
        assertThat(isFree(2, 148, 188)).isTrue();
        // and before it: up to 180 from 165, down to it from 195
        assertThat(isFree(2, 57, 97)).isFalse();
        assertThat(isFree(2, 56, 96)).isTrue();
        assertThat(isFree(1, 53, 93)).isFalse();
        assertThat(isFree(1, 52, 92)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_never_have_two_temperatures_at_once(boolean mirrored) {
        given(mirrored, bake("c/a", 36, 180), bake("c/b", 36, 181));
        put(0, 100, 140);

        assertThat(isFree(1, 100, 140)).isFalse();
        assertThat(isFree(1, 139, 179)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_stay_on_over_a_short_gap_and_go_cold_over_a_long_one(boolean mirrored) {
        given(mirrored, bake("c/a", 36, 180), bake("c/b", 36, 180));
        put(0, 100, 140);
        int mark = journal.mark();

        put(1, 200, 240);
        assertThat(book.runs()).containsExactly(new OvenRun("oven", 180, 80, 100, 240));

        journal.undoTo(mark);
        put(1, 201, 241);
        assertThat(book.runs()).containsExactly(new OvenRun("oven", 180, 80, 100, 140), new OvenRun("oven", 180, 181, 201, 241));
        assertThat(book.runCount()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_keep_the_door_shut_to_the_minute(boolean mirrored) {
        // given a's door shut from 102 to 127, while it bakes until 138
        given(mirrored, bake("c/a", 36, 180).doorShut(25), bake("c/b", 36, 180));
        put(0, 100, 140);

        assertThat(isFree(1, 126, 166)).isFalse();
        assertThat(isFree(1, 127, 167)).isTrue();
        assertThat(isFree(1, 101, 141)).isFalse();
        assertThat(isFree(1, 100, 140)).isTrue();
        // b comes out before a's door is shut, or after
        assertThat(isFree(1, 62, 102)).isTrue();
        assertThat(isFree(1, 63, 103)).isFalse();
        assertThat(isFree(1, 88, 128)).isFalse();
        assertThat(isFree(1, 89, 129)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_not_shut_the_door_on_a_bake_that_is_to_come_out(boolean mirrored) {
        // given a that comes out from 138 to 140, and b whose door is shut for 25 minutes from its put-in on
        given(mirrored, bake("c/a", 36, 180), bake("c/b", 36, 180).doorShut(25));
        put(0, 100, 140);

        assertThat(isFree(1, 111, 151)).isTrue();
        assertThat(isFree(1, 112, 152)).isFalse();
        assertThat(isFree(1, 137, 177)).isFalse();
        assertThat(isFree(1, 138, 178)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_take_pans_together_until_the_racks_are_full(boolean mirrored) {
        // given racks for four pans of 240 × 190 each
        StepBuilder four = resting("c/four", 36, 36).putIn(2).takeOut(2).bakesAt(180)
                .pan(240, 190, 60).pan(240, 190, 60).pan(240, 190, 60).pan(240, 190, 60);
        StepBuilder otherFour = resting("c/other", 36, 36).putIn(2).takeOut(2).bakesAt(180)
                .pan(240, 190, 60).pan(240, 190, 60).pan(240, 190, 60).pan(240, 190, 60);
        given(mirrored, four, otherFour, bake("c/one", 36, 180));
        put(0, 100, 140);
        assertThat(isFree(2, 110, 150)).isTrue();
        put(1, 110, 150);

        assertThat(isFree(2, 111, 151)).isFalse();
        assertThat(isFree(2, 139, 179)).isFalse();
        assertThat(isFree(2, 140, 180)).isTrue();
        assertThat(book.pans(compiled.tasks[0])).extracting(PanPlace::rack).containsOnly(0);
        assertThat(book.pans(compiled.tasks[1])).extracting(PanPlace::rack).containsOnly(1);
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_put_a_tall_pan_under_the_clear_height_alone(boolean mirrored) {
        given(mirrored, resting("c/tall", 36, 36).bakesAt(180).pan(500, 400, 91), resting("c/second", 36, 36).bakesAt(180).pan(500, 400, 91),
                resting("c/low", 36, 36).bakesAt(180).pan(500, 400, 90), resting("c/huge", 36, 36).bakesAt(180).pan(501, 401, 50));
        put(0, 100, 136);

        assertThat(isFree(1, 100, 136)).isFalse();
        assertThat(isFree(2, 100, 136)).isTrue();
        assertThat(isFree(3, 200, 236)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_leave_what_cools_in_the_oven_alone_and_unheated(boolean mirrored) {
        // given a bake from 102 to 142 that then cools until 172
        given(mirrored, bake("c/a", 70, 150).coolsInOven(30), bake("c/b", 36, 150));
        put(0, 100, 174);

        assertThat(book.runs()).containsExactly(new OvenRun("oven", 150, 80, 100, 142));
        assertThat(isFree(1, 102, 142)).isTrue();
        assertThat(isFree(1, 103, 143)).isFalse();
        assertThat(isFree(1, 142, 182)).isFalse();
        // nor may it heat up again before that is out
        assertThat(isFree(1, 193, 233)).isFalse();
        assertThat(isFree(1, 250, 290)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_neither_bake_nor_heat_up_while_the_oven_is_away(boolean mirrored) {
        given(mirrored, oven().away(200, 300), aPerson("ann").onShift(0, 2880), bake("c/a", 36, 180));

        assertThat(isFree(0, 160, 200)).isTrue();
        assertThat(isFree(0, 161, 201)).isFalse();
        assertThat(isFree(0, 319, 359)).isFalse();
        assertThat(isFree(0, 320, 360)).isTrue();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_be_on_only_while_somebody_is_there(boolean mirrored) {
        // given heating up from 100 at the earliest, and off by 400
        given(mirrored, oven(), aPerson("ann").onShift(100, 400), bake("c/a", 36, 180));

        assertThat(isFree(0, 119, 159)).isFalse();
        assertThat(isFree(0, 120, 160)).isTrue();
        assertThat(isFree(0, 360, 400)).isTrue();
        assertThat(isFree(0, 361, 401)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_stay_within_its_range_and_keep_allergens_apart(boolean mirrored) {
        given(mirrored, oven().between(150, 200), aPerson("ann").onShift(0, 2880), bake("c/nuts", 36, 200).contains("nuts"),
                bake("c/free", 36, 200).freeFrom("nuts"), bake("c/cold", 36, 149), bake("c/hot", 36, 201));
        put(0, 100, 140);

        assertThat(isFree(1, 139, 179)).isFalse();
        assertThat(isFree(1, 140, 180)).isTrue();
        assertThat(isFree(2, 500, 540)).isFalse();
        assertThat(isFree(3, 500, 540)).isFalse();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_be_empty_again_when_all_is_taken_back(boolean mirrored) {
        given(mirrored, bake("c/a", 36, 180).doorShut(30), bake("c/b", 36, 200));
        int mark = journal.mark();
        put(0, 100, 140);
        put(1, 200, 240);

        // when
        journal.undoTo(mark);

        // then
        assertThat(book.runs()).isEmpty();
        assertThat(book.pans(compiled.tasks[0])).isEmpty();
        assertThat(isFree(1, 100, 140)).isTrue();
        assertThat(presence.neededUntil(new int[] {0}, 1, 0, 2880)).isEqualTo(-1);
        assertThat(List.of(book.runCount(), book.minutesOn())).containsExactly(0, 0);
    }

    /** Four rectangles round a hole: one after the other from the back they leave no room for the last. */
    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void should_exchange_places_when_pans_do_not_fit_one_after_the_other(boolean mirrored) {
        // given 100 × 100 mm for four pans of 60 × 40
        given(mirrored, anOven("oven").rack(100, 100, 90), aPerson("ann").onShift(0, 2880),
                resting("c/four", 36, 36).bakesAt(180).pan(60, 40, 50).pan(60, 40, 50).pan(60, 40, 50).pan(60, 40, 50),
                resting("c/five", 36, 36).bakesAt(180).pan(60, 40, 50).pan(60, 40, 50).pan(60, 40, 50).pan(60, 40, 50)
                        .pan(60, 40, 50));

        // then
        assertThat(isFree(1, 600, 636)).isFalse();
        put(0, 600, 636);
        assertThat(book.pans(compiled.tasks[0])).hasSize(4);
    }
}
