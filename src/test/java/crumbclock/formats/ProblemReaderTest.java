package crumbclock.formats;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.problem.Weights;
import crumbclock.formats.issue.IssueLog;
import crumbclock.units.Span;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a sound example becomes. */
class ProblemReaderTest {

    @TempDir
    private Path folder;
    private TestProblem example;

    @BeforeEach
    void copyTheExample() throws IOException {
        example = new TestProblem(folder);
    }

    @Test
    void should_read_the_example_without_issues() {
        assertThat(example.issues()).isEmpty();
    }

    @Test
    void should_read_clock_and_weights() {
        var problem = example.problem();

        assertThat(problem.title()).isEqualTo("A small weekend");
        assertThat(problem.clock().start()).hasToString("2026-06-04T18:00+01:00[Europe/London]");
        assertThat(problem.clock().horizonMinutes()).isEqualTo(42 * 60);
        assertThat(problem.weights().bufferMinute()).isEqualTo(5);
        assertThat(problem.weights().earlyBefore()).isEqualTo(6 * 60 + 30);
        assertThat(problem.weights().lateMinute()).isEqualTo(Weights.DEFAULT.lateMinute());
    }

    @Test
    void should_read_people_with_shifts_in_minutes_from_the_start() {
        var people = example.problem().kitchen().people();

        var ada = people.get(0);
        assertThat(ada.shifts()).containsExactly(new Span(0, 240), new Span(15 * 60, 19 * 60), new Span(20 * 60, 27 * 60 + 30),
                new Span(36 * 60, 41 * 60));
        assertThat(ada.breaks()).containsExactly(new Span(24 * 60, 24 * 60 + 30));
        assertThat(ada.skills()).containsExactly("piping", "stacking");
        assertThat(ada.paceByWork()).isEqualTo(Map.of("coating", 0.9));
        assertThat(ada.mostMinutesADay()).isEqualTo(600);
        var ben = people.get(1);
        assertThat(ben.name()).isEqualTo("ben");
        assertThat(ben.shifts()).as("over midnight").containsExactly(new Span(24 * 60, 31 * 60));
        assertThat(ben.mostMinutesADay()).isEqualTo(1440);
    }

    @Test
    void should_flatten_ovens_into_cavities() {
        var cavities = example.problem().kitchen().cavities();

        assertThat(cavities).extracting(cavity -> cavity.id() + ": " + cavity.name())
                .containsExactly("oven: Home oven", "deck/upper: deck, upper", "deck/lower: deck, lower");
        assertThat(cavities.get(0).mostC()).as("500 °F").isEqualTo(260);
        assertThat(cavities.get(0).racks()).containsExactly(new Rack(460, 370, 120), new Rack(460, 370, 150));
        assertThat(cavities.get(1).racks()).as("24 × 18 × 7 in").containsExactly(new Rack(610, 457, 178));
        assertThat(cavities).extracting(cavity -> cavity.preheatMinutes()).containsExactly(12, 15, 20);
    }

    @Test
    void should_read_stores_surfaces_and_equipment() {
        var kitchen = example.problem().kitchen();

        var fridge = kitchen.stores().get(0);
        assertThat(fridge.gapMm()).isEqualTo(25);
        assertThat(fridge.humid()).isTrue();
        assertThat(fridge.shelves().get(0).mostMassGrams()).isEqualTo(12_000);
        assertThat(fridge.shelves().get(0).freeFrom()).containsExactly("nuts");
        assertThat(fridge.shelves().get(1).goods().get(0).when()).as("until 09:00 on Saturday").isEqualTo(new Span(0, 39 * 60));
        assertThat(fridge.shelves().get(1).goods().get(0).heightMm()).as("as high as the shelf").isEqualTo(320);
        assertThat(kitchen.surfaces()).extracting(surface -> surface.areaMm2()).containsExactly(500_000, 1_200_000);
        assertThat(kitchen.pools().get(0).capacity()).isEqualTo(4_800);
        assertThat(kitchen.pools().get(0).deepCleanMinutes("nuts")).isEqualTo(20);
        assertThat(kitchen.pools().get(1).away()).containsExactly(new Pool.PoolAway(0, new Span(120, 15 * 60)));
        assertThat(kitchen.opening()).containsExactly(new Span(0, 330), new Span(12 * 60, 31 * 60 + 30), new Span(36 * 60, 42 * 60));
    }

    @Test
    void should_read_orders_from_the_table_and_from_json() {
        var problem = example.problem();

        assertThat(problem.orders()).extracting(order -> order.id() + ": " + order.title())
                .containsExactly("A1: Rosie's eighth", "B2: Two tiers", "C3: Two dozen cupcakes", "D4: Village fair");
        assertThat(problem.cakes()).extracting(cake -> cake.id()).containsExactly("A1", "B2/top", "B2/kitchen", "C3", "D4");
        assertThat(problem.orders()).extracting(order -> order.handOver().way())
                .containsExactly(HandOverWay.PICK_UP, HandOverWay.DELIVERY, HandOverWay.SET_ASIDE, HandOverWay.DELIVERY);
        var first = problem.orders().get(0);
        assertThat(first.handOver().from()).isEqualTo(39 * 60 + 30);
        assertThat(first.handOver().until()).isEqualTo(40 * 60);
        assertThat(problem.orders()).extracting(order -> order.bufferWishMinutes()).as("45 where nothing is said").containsExactly(60, 90, 45, 45);
        assertThat(problem.cakes().get(0).message()).isEqualTo("Happy birthday, Rosie");
        assertThat(problem.batches()).extracting(batch -> batch.title()).containsExactly("White icing");
        assertThat(problem.steps()).isNotEmpty();
    }

    @Test
    void should_read_kitchen_and_orders_that_stand_inside_the_problem() throws IOException {
        // given
        String order = TestProblem.example("orders.json").replaceFirst("(?s).*\"orders\": \\[", "").replaceFirst("(?s)\\]\\s*\\}\\s*$", "");
        example.with("problem.json", "\"kitchen.json\"", TestProblem.example("kitchen.json"))
                .with("problem.json", "\"orders.json\"", order);

        // then
        assertThat(example.problem().orders()).hasSize(4);
    }

    @Test
    void should_give_equal_problems_for_equal_files() {
        assertThat(example.problem()).isEqualTo(example.problem());
    }

    @Test
    void should_add_orders_that_came_in_late() throws IOException {
        // given
        example.whole("late.csv", "order,method,size,layers,hand_over\nE5,abc-layer-cake,6 in,2,Sat 11:30\n");
        var log = new IssueLog();

        // when
        var problem = ProblemReader.read(folder.resolve("problem.json"), List.of(folder.resolve("late.csv")), log).orElseThrow();

        // then
        assertThat(problem.orders()).extracting(order -> order.id()).containsExactly("A1", "B2", "C3", "D4", "E5");
    }

    @Test
    void should_let_a_method_of_the_problem_take_the_place_of_one_in_the_library() throws IOException {
        // given: the library's cupcakes, with every step called otherwise
        String methods;
        try (var stream = getClass().getResourceAsStream("/crumbclock/methods/small-cakes.json")) {
            methods = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
        example.with("problem.json", "\"zone\"", "\"methods\": [\"mine.json\"], \"zone\"")
                .whole("mine.json", methods.replace("\"name\": \"", "\"name\": \"own "));

        // when
        var steps = example.problem().steps();

        // then
        assertThat(steps).filteredOn(step -> step.ownerId().equals("C3")).isNotEmpty().allMatch(step -> step.name().startsWith("own "));
        assertThat(steps).filteredOn(step -> step.ownerId().equals("A1")).isNotEmpty().noneMatch(step -> step.name().startsWith("own "));
    }

    @Test
    void should_read_fixed_steps() throws IOException {
        // given
        String stepId = example.problem().steps().stream().filter(step -> step.handsOn().isPresent()).findFirst().orElseThrow().id();
        example.with("problem.json", "\"bufferMinutes\": 45", """
                "bufferMinutes": 45, "fixed": [{ "step": "%s", "start": 10, "end": 25, "startAt": "2026-06-04T18:10",
                  "work": [{ "person": "ada", "spans": [{ "from": 10, "until": 25 }] }], "surface": "bench" }]""".formatted(stepId));

        // when
        var fixed = example.problem().fixedSteps().get(0);

        // then
        assertThat(fixed.step().stepId()).isEqualTo(stepId);
        assertThat(fixed.step().span()).isEqualTo(new Span(10, 25));
        assertThat(fixed.step().work().get(0).spans()).containsExactly(new Span(10, 25));
    }
}
