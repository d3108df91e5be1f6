package crumbclock.formats.pace;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.DecimalNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.file.WholeFile;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.JsonDoc;
import crumbclock.formats.json.Spot;
import crumbclock.formats.problem.NamedFiles;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The file that holds a problem's kitchen, in which paces can be changed; every other letter of it stays. */
public final class KitchenPaces {

    private static final String MARK = "\uFEFF";
    /** Numbers are equal by value, however they are written. */
    private static final Comparator<JsonNode> NUMBERS = (one, other) -> one.isNumber() && other.isNumber()
            ? one.decimalValue().compareTo(other.decimalValue()) : one.equals(other) ? 0 : 1;

    private final Path file;
    private final String before;
    private final JsonDoc doc;
    private final Spot kitchen;

    /**
     * One figure.
     *
     * @param before empty where the file had none, which stands for 1
     */
    public record Changed(String personId, String workKind, Optional<BigDecimal> before, BigDecimal after) {
    }

    /** The file with other paces. */
    public record Edited(String text, List<Changed> changes) {
    }

    private KitchenPaces(Path file, String before, JsonDoc doc, Spot kitchen) {
        this.file = file;
        this.before = before;
        this.doc = doc;
        this.kitchen = kitchen;
    }

    /** The kitchen's own file, or the problem file when it stands in there; empty, with an issue, when it cannot be read. */
    public static Optional<KitchenPaces> of(Path problemFile, IssueLog log) {
        return SourceFile.read(problemFile, log).flatMap(source -> JsonDoc.parse(source, log)).flatMap(problem -> {
            Spot at = Spot.root(problem).child("kitchen");
            return at.node().isTextual() ? NamedFiles.open(at, log).flatMap(source -> JsonDoc.parse(source, log))
                    .flatMap(own -> in(own, Spot.root(own))) : in(problem, at);
        });
    }

    private static Optional<KitchenPaces> in(JsonDoc doc, Spot kitchen) {
        Path file = Path.of(doc.source().name());
        String mark;
        try (var bytes = Files.newInputStream(file)) {
            mark = bytes.read() == 0xEF ? MARK : "";
        } catch (IOException gone) {
            throw new IllegalStateException("a file that was read cannot be read again: " + file, gone);
        }
        return Optional.of(new KitchenPaces(file, mark, doc, kitchen));
    }

    /** As it was named: by the user, or by the problem file. */
    public Path file() {
        return file;
    }

    /**
     * The file's text with other paces.
     *
     * @param paces by person and kind of work; people whom the file does not know are passed over
     */
    public Edited with(Map<String, Map<String, Double>> paces) {
        String text = doc.source().text();
        var places = new JsonPlaces(text);
        List<Changed> changes = new ArrayList<>();
        List<Edit> edits = new ArrayList<>();
        JsonNode expected = doc.root().deepCopy();
        for (int i = 0; i < kitchen.child("people").node().size(); i++) {
            Spot person = kitchen.child("people").child(i);
            Map<String, Double> own = paces.getOrDefault(person.child("id").node().asText(), Map.of());
            if (!own.isEmpty()) {
                person(person, own, places, edits, changes);
                ((ObjectNode) expected.at(person.pointer())).withObjectProperty("pace").setAll(numbers(own));
            }
        }
        var edited = new StringBuilder(text);
        edits.stream().sorted(Comparator.comparingInt(Edit::from).reversed()).forEach(edit -> edited.replace(edit.from(), edit.until(), edit.text()));
        verify(edited.toString(), expected);
        return new Edited(before + edited, changes);
    }

    /** A stretch of the text and what comes in its place. */
    private record Edit(int from, int until, String text) {
    }

    private void person(Spot person, Map<String, Double> own, JsonPlaces places, List<Edit> edits, List<Changed> changes) {
        Spot pace = person.child("pace");
        List<String> added = new ArrayList<>();
        own.forEach((kind, value) -> {
            Spot at = pace.child(kind);
            boolean there = !at.node().isMissingNode();
            BigDecimal number = number(value);
            changes.add(new Changed(person.child("id").node().asText(), kind,
                    there ? Optional.of(at.node().decimalValue().stripTrailingZeros()) : Optional.empty(), number));
            if (there) {
                var place = places.at(at.pointer());
                edits.add(new Edit(place.from(), place.until(), number.toPlainString()));
            } else {
                added.add('"' + kind + "\": " + number.toPlainString());
            }
        });
        if (pace.node().isMissingNode()) {
            edits.add(member(places.at(person.pointer()), List.of("\"pace\": { " + String.join(", ", added) + " }")));
        } else if (pace.node().isEmpty()) {
            var place = places.at(pace.pointer());
            edits.add(new Edit(place.from(), place.until(), "{ " + String.join(", ", added) + " }"));
        } else if (!added.isEmpty()) {
            edits.add(member(places.at(pace.pointer()), added));
        }
    }

    /** New members behind the last one, on lines of their own when that one has its own line. */
    private Edit member(JsonPlaces.Place object, List<String> members) {
        String text = doc.source().text();
        int end = object.until() - 1;
        while (Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        int blank = object.lastKey();
        while (blank > object.from() + 1 && " \t".indexOf(text.charAt(blank - 1)) >= 0) {
            blank--;
        }
        boolean ownLine = text.charAt(blank - 1) == '\n';
        int line = ownLine && text.charAt(blank - 2) == '\r' ? blank - 2 : blank - 1;
        String between = ownLine ? text.substring(line, object.lastKey()) : " ";
        var added = new StringBuilder();
        members.forEach(member -> added.append(',').append(between).append(member));
        return new Edit(end, end, added.toString());
    }

    private static BigDecimal number(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros();
    }

    private static ObjectNode numbers(Map<String, Double> own) {
        var numbers = JsonNodeFactory.instance.objectNode();
        own.forEach((kind, value) -> numbers.set(kind, DecimalNode.valueOf(number(value))));
        return numbers;
    }

    /** What was changed says just that, read again. */
    private void verify(String text, JsonNode expected) {
        var log = new IssueLog();
        var read = JsonDoc.parse(new SourceFile(file.toString(), text, file), log);
        if (read.isEmpty() || !log.isEmpty() || !read.get().root().equals(NUMBERS, expected)) {
            throw new IllegalStateException("the changed kitchen does not read as it should; " + file + " stays as it was");
        }
    }

    /**
     * Writes it whole or not at all.
     *
     * @throws IOException when it cannot be written; the old file is then untouched
     */
    public void write(Edited edited) throws IOException {
        WholeFile.write(file.toRealPath(), edited.text());
    }
}
