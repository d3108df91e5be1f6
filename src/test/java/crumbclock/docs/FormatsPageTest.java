package crumbclock.docs;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import crumbclock.domain.plan.Rule;
import crumbclock.domain.plan.Wish;
import crumbclock.domain.problem.Weights;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every field, every value with a name, every weight, rule and wish stands on its page. */
class FormatsPageTest {

    private static final String SCHEMAS = "/crumbclock/schema/";

    @ParameterizedTest
    @CsvSource({"common, formats.md", "kitchen, formats-kitchen.md", "orders, formats-orders.md", "problem, formats-problem.md",
        "method, formats-methods.md", "plan, formats-plan.md", "changes, formats-changes.md"})
    void everyFieldAndNamedValueOfASchemaStandsOnItsPage(String schema, String pageName) throws IOException {
        Page page = Page.of(pageName);
        var words = new TreeSet<String>();
        collectWords(schema(schema), words);

        assertThat(words).isNotEmpty().allSatisfy(word -> assertThat(page.names(word)).as("%s in %s", word, pageName).isTrue());
    }

    private static JsonNode schema(String name) throws IOException {
        try (var stream = FormatsPageTest.class.getResourceAsStream(SCHEMAS + name + ".schema.json")) {
            return new ObjectMapper().readTree(stream);
        }
    }

    private static void collectWords(JsonNode node, TreeSet<String> words) {
        if (node.path("properties").isObject()) {
            node.path("properties").fieldNames().forEachRemaining(words::add);
        }
        node.path("enum").forEach(value -> words.add(value.asText()));
        if (node.path("const").isTextual()) {
            words.add(node.path("const").asText());
        }
        node.forEach(child -> collectWords(child, words));
    }

    @ParameterizedTest
    @MethodSource("weights")
    void everyWeightStandsInTheTableWithItsDefault(RecordComponent weight) throws ReflectiveOperationException {
        int usual = (int) weight.getAccessor().invoke(Weights.DEFAULT);
        boolean timeOfDay = List.of("earlyBefore", "lateAfter").contains(weight.getName());
        String shown = timeOfDay ? String.format(Locale.ROOT, "`%02d:%02d`", usual / 60, usual % 60)
                : String.format(Locale.ROOT, "%,d", usual);

        assertThat(Page.of("formats-problem.md").text()).contains("| `" + weight.getName() + "` | " + shown + " |");
    }

    static Stream<RecordComponent> weights() {
        return Arrays.stream(Weights.class.getRecordComponents());
    }

    @ParameterizedTest
    @EnumSource(Rule.class)
    void everyRuleStandsInTheTable(Rule rule) {
        assertThat(Page.of("formats-rules.md").text()).contains("\n| " + rule + " | " + rule.title() + " |");
    }

    @ParameterizedTest
    @EnumSource(Wish.class)
    void everyWishStandsInTheTable(Wish wish) {
        assertThat(Page.of("formats-rules.md").text()).contains("\n| " + wish + " " + wish.title() + " |");
    }

    @Test
    void theIndexNamesEveryPage() {
        String index = Page.of("formats.md").text();

        assertThat(Page.formats()).hasSizeGreaterThan(5).filteredOn(page -> !page.name().equals("formats.md"))
                .allSatisfy(page -> assertThat(index).contains("](" + page.name() + ")"));
    }
}
