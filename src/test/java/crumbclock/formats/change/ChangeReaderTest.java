package crumbclock.formats.change;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.Pool.PoolAway;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.order.Order;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.TestProblem;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.problem.ProblemDraft;
import crumbclock.units.Span;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each kind of change against the example problem, which starts on Thursday, 4 June 2026, at 18:00: minute 0. */
class ChangeReaderTest {

    private static final int FRIDAY = 6 * 60;
    private static final int SATURDAY = 30 * 60;

    @TempDir
    private Path folder;
    private ProblemDraft draft;
    private Problem base;

    @BeforeEach
    void read() throws IOException {
        new TestProblem(folder);
        var log = new IssueLog();
        draft = ProblemReader.draft(folder.resolve("problem.json"), List.of(), log).orElseThrow();
        base = ProblemReader.read(folder.resolve("problem.json"), log).orElseThrow();
        assertThat(log.sorted()).isEmpty();
    }

    private Problem with(String... changes) {
        var log = new IssueLog();
        var scenario = ChangeReader.read(Arrays.asList(changes), draft, log);
        assertThat(log.sorted()).isEmpty();
        return scenario.orElseThrow().problem();
    }

    private List<String> issues(String... changes) {
        var log = new IssueLog();
        var scenario = ChangeReader.read(Arrays.asList(changes), draft, log);
        assertThat(scenario.isPresent()).isEqualTo(log.isEmpty());
        return log.sorted().stream().map(Issue::toString).map(text -> text.replace(folder + "/", "")).toList();
    }

    private String file(String name, String... changes) throws IOException {
        return Files.writeString(folder.resolve(name), "{\"title\": \"" + name + "\", \"changes\": [\n" + String.join(",\n", changes)
                + "\n]}").toString();
    }

    private static Order order(Problem problem, String id) {
        return problem.orders().stream().filter(order -> order.id().equals(id)).findFirst().orElseThrow();
    }

    private static Step step(Problem problem, String id) {
        return problem.steps().stream().filter(step -> step.id().equals(id)).findFirst().orElseThrow();
    }

    private static Person person(Problem problem, String id) {
        return problem.kitchen().people().stream().filter(person -> person.id().equals(id)).findFirst().orElseThrow();
    }

    private static Shelf bottom(Problem problem) {
        return problem.kitchen().stores().get(0).shelves().get(1);
    }

    @Test
    void without_changes_the_problem_is_the_base() {
        assertThat(with()).isEqualTo(base);
    }

    @Test
    void an_order_dropped_and_added_again_makes_the_base() throws IOException {
        // given the last order, which is added at the end again
        String json = "{ \"addFrom\": \"orders.json\" }";

        // when
        var changed = with("drop D4", file("again.json", json));

        // then
        assertThat(with("drop D4").orders()).extracting(Order::id).containsExactly("A1", "B2", "C3");
        assertThat(with("drop D4").steps()).hasSizeLessThan(base.steps().size());
        assertThat(changed.title()).isEqualTo("A small weekend, with: drop D4; again.json");
        assertThat(changed).usingRecursiveComparison().ignoringFields("title").isEqualTo(base);
    }

    @Test
    void a_batch_goes_with_the_last_order_that_takes_from_it() {
        assertThat(with("drop A1; drop B2").batches()).hasSize(1);
        assertThat(with("drop A1; drop B2; drop D4").batches()).isEmpty();
    }

    @Test
    void a_hand_over_takes_its_window_along() {
        HandOver before = order(base, "A1").handOver();

        HandOver moved = order(with("move A1 to Sat 09:00"), "A1").handOver();

        assertThat(before.until() - before.from()).isEqualTo(30);
        assertThat(moved).isEqualTo(new HandOver(before.way(), before.stepId(), 0, SATURDAY + 8 * 60 + 30, SATURDAY + 9 * 60));
        assertThat(order(with("move A1 to Sat 09:00 from Sat 08:00"), "A1").handOver().from()).isEqualTo(SATURDAY + 8 * 60);
    }

    @Test
    void an_edit_says_only_what_differs() {
        var edited = with("edit C3 pieces=36 message=\"Well done\"");

        assertThat(order(edited, "C3").cakes().get(0)).extracting("servings", "message").containsExactly(36, "Well done");
        assertThat(edited.orders().get(0)).isEqualTo(base.orders().get(0));
        assertThat(order(edited, "C3").handOver()).isEqualTo(order(base, "C3").handOver());
        assertThat(edited.steps().stream().filter(one -> !one.ownerId().equals("C3")))
                .containsExactlyElementsOf(base.steps().stream().filter(one -> !one.ownerId().equals("C3")).toList());
    }

    @Test
    void an_edit_that_repeats_what_is_changes_nothing() {
        var same = with("edit A1 size=\"8 in\" layers=3 options.wrap=no way=pick-up; edit B2 roadMinutes=20; edit D4 freeFrom=nuts");

        assertThat(same.orders()).isEqualTo(base.orders());
        assertThat(same.steps()).isEqualTo(base.steps());
        assertThat(same.waits()).isEqualTo(base.waits());
    }

    @Test
    void another_method_brings_its_own_options() {
        var edited = with("edit A1 method=cream-cheese-sheet-cake size=\"9x13 in\" layers=1 options.nuts=none");

        assertThat(step(edited, "A1/firm-icing").leastMinutes()).isPositive();
        assertThat(edited.steps()).noneMatch(one -> one.id().equals("A1/thin-coat"));
    }

    @Test
    void a_cake_of_several_is_edited_by_its_own_id() {
        var edited = with("edit B2/kitchen options.nuts=inside");

        assertThat(order(edited, "B2").cakes().get(1).contains()).contains("nuts");
        assertThat(order(edited, "B2").cakes().get(0)).isEqualTo(order(base, "B2").cakes().get(0));
        assertThat(issues("edit B2 size=\"6 in\"")).containsExactly("change \"edit B2 size=\"6 in\"\", edit: read \"B2\"; expected a cake by "
                + "its whole id, since order \"B2\" has several. Known: B2/kitchen, B2/top.");
    }

    @Test
    void a_copied_order_has_cakes_of_its_own() {
        var copied = with("copy B2 as E5 handOver=\"Sat 11:30\"");

        assertThat(order(copied, "E5").cakes()).extracting("id").containsExactly("E5/top", "E5/kitchen");
        assertThat(order(copied, "E5").handOver().until()).isEqualTo(SATURDAY + 11 * 60 + 30);
        assertThat(copied.orders().subList(0, 4)).isEqualTo(base.orders());
    }

    @Test
    void a_person_is_away_or_there_longer() {
        assertThat(person(base, "ben").shifts()).containsExactly(new Span(FRIDAY + 18 * 60, FRIDAY + 25 * 60));
        assertThat(person(with("away ben"), "ben").shifts()).isEmpty();
        assertThat(person(with("away ben from Fri 20:00 to Fri 21:00"), "ben").shifts())
                .containsExactly(new Span(FRIDAY + 18 * 60, FRIDAY + 20 * 60), new Span(FRIDAY + 21 * 60, FRIDAY + 25 * 60));
        assertThat(person(with("hours ben from Fri 16:00 to Fri 19:00"), "ben").shifts())
                .containsExactly(new Span(FRIDAY + 16 * 60, FRIDAY + 25 * 60));
    }

    @Test
    void ovens_stores_surfaces_and_pieces_are_away() {
        int end = base.clock().horizonMinutes();
        var from = new Span(FRIDAY + 9 * 60, end);

        var kitchen = with("away deck from Fri 9:00; away fridge to Fri 9:00; away bench; away mixer pieces 1 from Fri 9:00;"
                + " away turntable from Thu 23:00 to Fri 10:00").kitchen();

        assertThat(kitchen.cavities()).extracting("away").containsExactly(List.of(), List.of(from), List.of(from));
        assertThat(kitchen.stores().get(0).away()).containsExactly(new Span(0, FRIDAY + 9 * 60));
        assertThat(kitchen.surfaces().get(1).away()).containsExactly(new Span(0, end));
        assertThat(kitchen.pools().get(0).away()).containsExactly(new PoolAway(1, from));
        // it is away from Thursday 20:00 to Friday 9:00 anyway
        assertThat(kitchen.pools().get(1).away()).containsExactly(new PoolAway(0, new Span(120, FRIDAY + 10 * 60)));
    }

    @Test
    void a_shelf_that_is_away_is_full_and_what_stood_there_is_out_of_the_way() {
        var away = new Span(FRIDAY + 9 * 60, FRIDAY + 21 * 60);

        var shelf = bottom(with("away fridge/bottom from Fri 9:00 to Fri 21:00"));

        assertThat(shelf.goods()).extracting(Goods::when).containsExactly(new Span(0, away.start()),
                new Span(away.end(), SATURDAY + 9 * 60), away);
        assertThat(shelf.goods().get(2)).extracting("widthMm", "depthMm", "heightMm").containsExactly(520, 420, 320);
    }

    @Test
    void goods_stand_where_they_are_said_to_stand() {
        var goods = bottom(with("goods \"a big cheese\" on fridge/bottom 200x150x100 at 300,0 from Fri 9:00")).goods();

        assertThat(goods.get(1)).isEqualTo(new Goods("a big cheese", 300, 0, 200, 150, 100, 0,
                new Span(FRIDAY + 9 * 60, base.clock().horizonMinutes())));
        assertThat(issues("goods cheese on fridge/bottom 600x150")).containsExactly("change \"goods cheese on fridge/bottom 600x150\": "
                + "read \"cheese\" reaching 600 × 150 mm, 320 mm high; expected goods that stand wholly on the shelf of 520 × 420 mm, "
                + "320 mm high.");
    }

    @Test
    void more_things_come() throws IOException {
        String parts = file("parts.json", "{\"bring\": {\"people\": [{\"id\": \"cleo\", \"shifts\": {\"friday\": \"9:00-12:00\"}}],"
                + " \"stores\": [{\"id\": \"spare-fridge\", \"kind\": \"fridge\","
                + " \"shelves\": [{\"id\": \"one\", \"width\": \"20 in\", \"depth\": 400, \"clearHeight\": 300}]}]}}",
                "{\"away\": \"cleo\", \"from\": \"Fri 11:00\"}");

        var kitchen = with(parts, "copy fridge/bottom as third; copy deck/lower as small-oven; copy ada as dora; more mixer 2").kitchen();

        assertThat(kitchen.people()).extracting(Person::id).containsExactly("ada", "ben", "cleo", "dora");
        assertThat(kitchen.people().get(2).shifts()).containsExactly(new Span(FRIDAY + 9 * 60, FRIDAY + 11 * 60));
        assertThat(kitchen.people().get(3).skills()).isEqualTo(Set.of("piping", "stacking"));
        assertThat(kitchen.cavities().get(3)).extracting("id", "preheatMinutes").containsExactly("small-oven", 20);
        assertThat(kitchen.stores()).extracting("id").containsExactly("fridge", "spare-fridge");
        assertThat(kitchen.stores().get(0).shelves().get(2)).isEqualTo(new Shelf("third", "third", 520, 420, 320, 20_000, Set.of(), List.of()));
        assertThat(kitchen.stores().get(1).shelves().get(0).widthMm()).isEqualTo(508);
        assertThat(kitchen.pools().get(0).count()).isEqualTo(4);
    }

    @Test
    void a_component_in_stock_is_not_made_nor_what_goes_into_it() {
        var plain = with("stock layers of B2/kitchen");

        assertThat(plain.steps()).noneMatch(one -> Set.of("B2/kitchen/mix", "B2/kitchen/bake", "B2/kitchen/line").contains(one.id()));
        assertThat(step(plain, "B2/kitchen/first-coat").contains()).isEqualTo(step(base, "B2/kitchen/first-coat").contains());
        assertThat(plain.waits()).allMatch(wait -> plain.steps().stream().anyMatch(one -> one.id().equals(wait.fromStepId())));
        // frozen spare layers are thawed, where the method knows of them
        var thawed = with("stock layers of A1");
        assertThat(thawed.steps()).anyMatch(one -> one.id().equals("A1/thaw")).noneMatch(one -> one.id().equals("A1/bake"));
    }

    @Test
    void a_batch_in_stock_is_not_made_and_keeps_its_allergens() {
        var changed = with("stock icing-1");

        assertThat(changed.batches()).isEmpty();
        assertThat(changed.steps()).noneMatch(one -> one.ownerId().equals("icing-1"));
        assertThat(order(changed, "A1").cakes().get(0).batchIds()).isEmpty();
        assertThat(order(changed, "A1").cakes().get(0).contains()).isEqualTo(order(base, "A1").cakes().get(0).contains());
    }

    @Test
    void steps_take_longer_by_name_and_kind_of_work() {
        var slow = with("time chill* 150% of A1; time coating +5 min; time bake of A1 110%; time firm-coat -5 min");

        assertThat(step(base, "A1/chill-thin-coat")).extracting("leastMinutes", "mostMinutes").containsExactly(20, 60);
        assertThat(step(slow, "A1/chill-thin-coat")).extracting("leastMinutes", "mostMinutes").containsExactly(30, 70);
        assertThat(step(slow, "D4/chill-thin-coat")).isEqualTo(step(base, "D4/chill-thin-coat"));
        assertThat(step(base, "A1/coat").handsOn().orElseThrow().minutes()).isEqualTo(15);
        assertThat(step(slow, "A1/coat").handsOn().orElseThrow().minutes()).isEqualTo(20);
        assertThat(step(base, "A1/bake")).extracting("leastMinutes", "mostMinutes").containsExactly(30, 35);
        assertThat(step(slow, "A1/bake")).extracting("leastMinutes", "mostMinutes").containsExactly(33, 38);
        int before = step(base, "A1/bake").oven().orElseThrow().doorShutMinutes();
        assertThat(step(slow, "A1/bake").oven().orElseThrow().doorShutMinutes()).isEqualTo((before * 33 + 29) / 30);
        assertThat(step(slow, "A1/firm-coat").leastMinutes()).isEqualTo(15);
    }

    @Test
    void windows_after_steps_shrink() {
        var damp = with("window chill* 80%");

        assertThat(base.waits()).contains(new Wait("A1/chill-thin-coat", "A1/coat", 0, 5));
        assertThat(damp.waits()).contains(new Wait("A1/chill-thin-coat", "A1/coat", 0, 4)).hasSameSizeAs(base.waits());
        assertThat(damp.steps()).isEqualTo(base.steps());
    }

    @Test
    void all_faults_are_told_at_once_with_the_nearest_names() throws IOException {
        String file = file("faults.json", "{\"drop\": \"A9\"}", "{\"away\": \"ovn\", \"from\": \"Thu 20:00\"}", "{\"time\": \"chil\", \"percent\": 120}",
                "{\"drop\": \"A1\", \"away\": \"ben\"}", "{\"hours\": \"ben\", \"from\": \"Fri 9:00\"}", "{\"edit\": \"B2\"}",
                "{\"dropp\": \"A1\"}", "{\"more\": \"mixr\", \"pieces\": 0}", "{\"away\": \"mixer\", \"pieces\": 3}",
                "{\"away\": \"ben\", \"from\": \"Sat 20:00\"}");

        assertThat(issues(file)).containsExactly(
                "faults.json, line 2, /changes/0/drop: read \"A9\"; expected the id of an order of this problem. Did you mean \"A1\"?",
                "faults.json, line 3, /changes/1/away: read \"ovn\"; expected the id of a person, oven, store, shelf, surface or equipment of "
                        + "this problem. Did you mean \"oven\"?",
                "faults.json, line 4, /changes/2/time: read \"chil\"; expected the name of a step, or a kind of work. "
                        + "Did you mean \"chil*\", which is chill-first-coat, chill-thin-coat?",
                "faults.json, line 5, /changes/3: read drop and away; expected exactly one of the keys drop, add, addFrom, edit, copy, away, "
                        + "hours, more, bring, goods, stock, time, window.",
                "faults.json, line 6, /changes/4: read no key \"until\"; expected the key \"until\" beside \"hours\".",
                "faults.json, line 7, /changes/5: read nothing to edit; expected at least one key of an order or cake, such as handOver or size.",
                "faults.json, line 8, /changes/6/dropp: read the key \"dropp\"; expected a key that is known here. Did you mean \"drop\"?",
                "faults.json, line 9, /changes/7/pieces: read 0; expected at least 1.",
                "faults.json, line 10, /changes/8/pieces: read 3; expected at most 2, all that there are.",
                "faults.json, line 11, /changes/9: read a time outside the problem; expected a time that reaches into it, "
                        + "2026-06-04T18:00 to 2026-06-06T12:00.");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "remove A1 | change 'remove A1': read 'remove'; expected drop, add, move, edit",
        "add none.csv | addFrom: read 'none.csv'; expected the path of a file",
        "copy A1 as B2 | as: read 'B2'; expected an id that no other order has",
        "copy ben as ada | as: read 'ada'; expected an id that is not taken",
        "edit A1 options.wrap=maybe | options: read option wrap: read 'maybe'; expected one of yes, no.",
        "move A1 to 25:10 | handOver: read '25:10'; expected a date and time",
        "stock layer of A1 | stock: read 'layer'; expected a component that is made for it. Did you mean 'layers'?",
        "stock icing | stock: read 'icing'; expected the id of a shared batch, or a component with the cake 'of' which it is",
        "edit D4 freeFrom=nutz | freeFrom/0: read 'nutz'; expected an allergen as the methods name it. Nothing contains 'nutz'.",
        "edit D4 freeFrom=milk | must be free from milk, but",
        "goods cheese on fridge/botom | on: read 'fridge/botom'; expected the id of a shelf of this problem. Did you mean 'fridge/bottom'?"})
    void each_fault_in_words_says_what_is_expected(String words, String expected) {
        assertThat(issues(words)).isNotEmpty().anySatisfy(issue -> assertThat(issue.replace('"', '\'')).contains(expected)
                .startsWith("change '" + words + "'"));
    }

    @Test
    void a_name_of_several_kinds_asks_for_its_kind() throws IOException {
        String same = file("same.json", "{\"bring\": {\"equipment\": [{\"id\": \"ben\"}]}}");

        assertThat(issues(same, "away ben")).containsExactly("change \"away ben\", away: read \"ben\"; expected a name with its kind, "
                + "such as \"person ben\". Kinds that have it: person, equipment.");
        assertThat(person(with(same, "away person ben"), "ben").shifts()).isEmpty();
    }

    @Test
    void what_cannot_be_read_brings_no_further_faults() throws IOException {
        String file = file("brought.json", "{\"copy\": \"ben\", \"as\": \"not a name\"}", "{\"away\": \"not a name\"}");

        assertThat(issues(file)).hasSize(1);
    }
}
