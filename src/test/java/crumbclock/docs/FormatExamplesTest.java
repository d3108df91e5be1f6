package crumbclock.docs;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Pan;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.Wait;
import crumbclock.formats.ProblemReader;
import crumbclock.formats.change.ChangeReader;
import crumbclock.formats.csv.FridgeCsv;
import crumbclock.formats.csv.TimetableCsv;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.plan.PlanJson;
import crumbclock.rules.Audit;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The examples on the pages about file formats, read with the real readers and compared with what the program makes of them. */
class FormatExamplesTest {

    @TempDir
    private Path folder;
    private Map<String, String> files;

    @BeforeEach
    void writeExamples() throws IOException {
        files = Page.writeFormatExamples(folder);
    }

    @Test
    void everyProblemIsReadWithoutAFault() {
        List<String> problems = files.keySet().stream().filter(name -> name.endsWith("-problem.json")).toList();

        assertThat(problems).hasSizeGreaterThan(3).allSatisfy(name -> assertThat(problem(name).steps()).isNotEmpty());
    }

    @Test
    void everyInputFileIsNamedByAProblem() {
        String problems = files.entrySet().stream().filter(file -> file.getKey().endsWith("-problem.json")).map(Map.Entry::getValue)
                .collect(Collectors.joining());
        List<String> inputs = files.keySet().stream()
                .filter(name -> name.matches(".*-(kitchen|methods|orders)\\.(json|csv)")).toList();

        assertThat(inputs).hasSizeGreaterThan(5).allSatisfy(name -> assertThat(problems).contains('"' + name + '"'));
    }

    @Test
    void ordersAsTableAndAsJsonAreEqual() {
        Problem table = problem("shop-problem.json");
        Problem json = problem("shop-json-problem.json");

        assertThat(table.orders()).isEqualTo(json.orders());
        assertThat(table.steps()).isEqualTo(json.steps());
        assertThat(table.cakes()).extracting("id").containsExactly("B1", "B2/big", "B2/small");
    }

    @Test
    void theExpandedStepsAreThoseOfThePage() {
        Problem problem = problem("tiers-problem.json");
        List<String> lines = new ArrayList<>();
        problem.steps().forEach(step -> lines.add(line(step)));
        problem.waits().forEach(wait -> lines.add(line(wait)));

        assertThat(String.join("\n", lines) + "\n").isEqualTo(files.get("tiers-steps.txt"));
    }

    @Test
    void thePlanIsWrittenAsItStandsThereAndCostsWhatItSays() {
        Problem problem = problem("loaf-problem.json");
        Plan plan = plan(problem, "loaf-plan.json");

        var audit = Audit.audit(problem, plan.timetable());

        assertThat(PlanJson.write(problem, plan)).isEqualTo(files.get("loaf-plan.json"));
        assertThat(audit.findings()).isEmpty();
        assertThat(audit.cost()).isEqualTo(plan.cost());
    }

    @Test
    void theTablesAreThoseOfThePlanAndEveryColumnIsExplained() {
        Problem problem = problem("loaf-problem.json");
        Plan plan = plan(problem, "loaf-plan.json");
        Map<String, String> tables = Map.of("loaf-timetable.csv", TimetableCsv.write(problem, plan),
                "loaf-fridge.csv", FridgeCsv.write(problem, plan));

        assertThat(tables).allSatisfy((name, table) -> {
            assertThat(table.replace("\r\n", "\n")).as(name).isEqualTo(files.get(name));
            assertThat(table.lines().findFirst().orElseThrow().split(",")).allSatisfy(
                    column -> assertThat(Page.of("formats-plan.md").names(column)).as(column).isTrue());
        });
    }

    @Test
    void everyFileOfChangesFitsItsProblem() {
        List<String> changes = files.keySet().stream().filter(name -> name.endsWith("-changes.json")).toList();

        assertThat(changes).hasSizeGreaterThan(1).allSatisfy(name -> {
            var log = new IssueLog();
            var draft = ProblemReader.draft(folder.resolve("shop-problem.json"), List.of(), log).orElseThrow();
            var changed = ChangeReader.read(List.of(folder.resolve(name).toString()), draft, log);
            assertThat(log.sorted()).as(name).isEmpty();
            assertThat(changed.orElseThrow().problem().steps()).as(name).isNotEmpty();
        });
    }

    private Problem problem(String name) {
        var log = new IssueLog();
        var problem = ProblemReader.read(folder.resolve(name), log);
        assertThat(log.sorted()).as(name).isEmpty();
        return problem.orElseThrow();
    }

    private Plan plan(Problem problem, String name) {
        var log = new IssueLog();
        var plan = PlanJson.read(name, files.get(name), problem, log);
        assertThat(log.sorted()).as(name).isEmpty();
        return plan.orElseThrow();
    }

    private static String line(Step step) {
        String doing = step.handsOn().map(work -> "work " + work.minutes())
                .orElseGet(() -> "rest " + step.leastMinutes() + " to " + step.mostMinutes() + ", touches " + step.putInMinutes()
                        + " and " + step.takeOutMinutes());
        String needs = step.equipment().stream().map(FormatExamplesTest::words).collect(Collectors.joining());
        String contains = step.contains().isEmpty() ? "nothing" : words(step.contains());
        return step.id() + ": " + doing + needs + step.oven().map(FormatExamplesTest::words).orElse("") + "; contains " + contains;
    }

    private static String words(EquipmentNeed need) {
        return "; " + need.poolId() + " " + need.units() + " piece with " + need.amount();
    }

    private static String words(OvenUse oven) {
        return "; " + oven.temperatureC() + " °C, door shut " + oven.doorShutMinutes() + ", pans "
                + words(oven.pans().stream().map(FormatExamplesTest::words).toList());
    }

    private static String words(Pan pan) {
        return pan.footprint().widthMm() + " x " + pan.footprint().depthMm() + (pan.footprint().round() ? " round" : "");
    }

    private static String words(Collection<String> words) {
        return String.join(", ", words);
    }

    private static String line(Wait wait) {
        return wait.fromStepId() + " -> " + wait.toStepId() + ": " + wait.leastMinutes()
                + (wait.hasMost() ? " to " + wait.mostMinutes() : " or more");
    }
}
