package crumbclock.formats.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.AbsoluteIri;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.PathType;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaValidatorsConfig;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.resource.InputStreamSource;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** The schemas that ship with the program. They come from the class path; nothing is ever fetched. */
final class Schemas {

    /** A name that no network knows (RFC 2606): the schemas are found by it, not fetched from it. */
    static final String BASE = "https://crumbclock.example/schema/";

    private static final String FOLDER = "/crumbclock/schema/";
    private static final ObjectMapper MAPPER = new ObjectMapper();
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012,
            builder -> builder.schemaLoaders(loaders -> loaders.add(Schemas::load)));
    private static final SchemaValidatorsConfig CONFIG = SchemaValidatorsConfig.builder()
            .pathType(PathType.JSON_POINTER).locale(Locale.ROOT).build();
    private static final Map<String, JsonSchema> BY_NAME = new ConcurrentHashMap<>();
    private static final Map<String, JsonNode> TEXT_BY_NAME = new ConcurrentHashMap<>();

    private Schemas() {
    }

    /** The schema called {@code kitchen}, {@code orders}, {@code problem}, {@code plan}, {@code method}. */
    static JsonSchema named(String name) {
        return BY_NAME.computeIfAbsent(name, unseen -> at(BASE + unseen + ".schema.json"));
    }

    /**
     * The schema with this {@code $id}.
     *
     * @throws IllegalArgumentException when it is none that ships with the program
     */
    static JsonSchema at(String id) {
        return FACTORY.getSchema(SchemaLocation.of(id), CONFIG);
    }

    /** A part of a shipped schema by its location, such as {@code https://.../kitchen.schema.json#/properties/name}. */
    static JsonNode part(String location) {
        int hash = location.indexOf('#');
        String file = location.substring(BASE.length(), hash < 0 ? location.length() : hash);
        return text(file).at(hash < 0 ? "" : location.substring(hash + 1));
    }

    private static JsonNode text(String file) {
        return TEXT_BY_NAME.computeIfAbsent(file, unseen -> {
            try (InputStream stream = open(unseen)) {
                return MAPPER.readTree(stream);
            } catch (IOException broken) {
                throw new UncheckedIOException("schema " + unseen, broken);
            }
        });
    }

    private static InputStreamSource load(AbsoluteIri iri) {
        String name = iri.toString();
        if (name.startsWith(BASE)) {
            return () -> open(name.substring(BASE.length()));
        }
        if (name.startsWith("classpath:") || name.startsWith("resource:")) {
            return null; // the validator's own copy of the meta-schema
        }
        throw new IllegalArgumentException("a schema names " + name + ", and nothing is fetched");
    }

    private static InputStream open(String file) {
        var stream = Schemas.class.getResourceAsStream(FOLDER + file);
        if (stream == null) {
            throw new IllegalArgumentException("no schema " + file + " ships with the program");
        }
        return stream;
    }
}
