package crumbclock.formats.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SchemasTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static JsonNode text(String name) throws IOException {
        try (var stream = SchemasTest.class.getResourceAsStream("/crumbclock/schema/" + name + ".schema.json")) {
            return MAPPER.readTree(stream);
        }
    }

    /** JSON Schema 2020-12, core, section 8.1.1: the meta-schema describes every schema that names it. */
    @ParameterizedTest
    @ValueSource(strings = {"common", "kitchen", "orders", "problem", "plan", "method", "changes"})
    void should_obey_the_meta_schema(String name) throws IOException {
        var metaSchema = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(SchemaLocation.of(SchemaId.V202012));

        assertThat(text(name).path("$schema").asText()).isEqualTo(SchemaId.V202012);
        assertThat(text(name).path("$id").asText()).isEqualTo(Schemas.BASE + name + ".schema.json");
        assertThat(metaSchema.validate(text(name))).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"common", "kitchen", "orders", "problem", "plan", "changes"})
    void should_close_every_object_that_lists_its_keys(String name) throws IOException {
        List<String> open = new ArrayList<>();
        collectOpen(text(name), "", open);

        assertThat(open).isEmpty();
    }

    private static void collectOpen(JsonNode schema, String at, List<String> open) {
        if (schema.path("type").asText().equals("object") && schema.has("properties")
                && !schema.path("additionalProperties").equals(MAPPER.getNodeFactory().booleanNode(false))) {
            open.add(at);
        }
        schema.properties().forEach(entry -> collectOpen(entry.getValue(), at + "/" + entry.getKey(), open));
        for (int i = 0; schema.isArray() && i < schema.size(); i++) {
            collectOpen(schema.get(i), at + "/" + i, open);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"kitchen", "orders", "problem", "plan", "method", "changes"})
    void should_resolve_all_that_they_refer_to(String name) {
        Schemas.named(name).initializeValidators();

        assertThat(Schemas.named(name).validate(MAPPER.createObjectNode())).isNotEmpty();
    }

    @Test
    void should_fetch_nothing() {
        assertThatThrownBy(() -> Schemas.at("https://elsewhere.example/kitchen.schema.json"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("a schema names https://elsewhere.example/kitchen.schema.json, and nothing is fetched");
        assertThatThrownBy(() -> Schemas.named("kitchn")).hasMessageContaining("no schema kitchn.schema.json ships with the program");
    }

    /** JSON Schema 2020-12, validation, section 6.1.1: an integer is any number without a fraction. */
    @Test
    void should_take_a_whole_number_with_a_point_but_no_fraction() throws IOException {
        var orders = Schemas.named("orders");
        String text = "{\"orders\":[{\"id\":\"A\",\"handOver\":\"x\",\"doorMinutes\":%s,\"cakes\":[{\"method\":\"m\",\"size\":\"8 in\"}]}]}";

        assertThat(orders.validate(MAPPER.readTree(text.formatted("30.0")))).isEmpty();
        assertThat(orders.validate(MAPPER.readTree(text.formatted("30.5")))).isNotEmpty();
    }
}
