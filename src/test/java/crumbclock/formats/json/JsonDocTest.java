package crumbclock.formats.json;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import java.util.List;
import org.junit.jupiter.api.Test;

class JsonDocTest {

    private final IssueLog log = new IssueLog();

    private List<String> messages(String text) {
        JsonDoc.parse(SourceFile.ofText("kitchen.json", text), log);
        return log.sorted().stream().map(Issue::toString).toList();
    }

    @Test
    void should_know_the_line_of_each_value() {
        var doc = JsonDoc.parse(SourceFile.ofText("k.json", "{\n \"a\": [\n  1,\n  {\"b/c\":\n   2}\n ]\n}"), log).orElseThrow();

        assertThat(doc.line("")).isEqualTo(1);
        assertThat(doc.line("/a")).isEqualTo(2);
        assertThat(doc.line("/a/0")).isEqualTo(3);
        assertThat(doc.line("/a/1")).isEqualTo(4);
        assertThat(doc.line("/a/1/b~1c")).isEqualTo(4);
        assertThat(doc.line("/a/1/missing/below")).isEqualTo(4);
        assertThat(Spot.root(doc).child("a").child(1).child("b/c").node().asInt()).isEqualTo(2);
    }

    @Test
    void should_report_a_syntax_error_with_its_line() {
        assertThat(messages("{\n \"a\": 1\n \"b\": 2\n}")).containsExactly(
                "kitchen.json, line 3: read unexpected character '\"': was expecting comma to separate Object entries; "
                        + "expected JSON. Look here and just above for a missing comma, quote or bracket.");
    }

    @Test
    void should_report_every_key_that_stands_twice() {
        assertThat(messages("{\n \"a\": 1,\n \"b\": {\"c\": 1,\n \"c\": 2},\n \"a\": 3\n}")).containsExactly(
                "kitchen.json, line 4, /b/c: read the key \"c\" again; expected each key once in an object. The first one is on line 3.",
                "kitchen.json, line 5, /a: read the key \"a\" again; expected each key once in an object. The first one is on line 2.");
    }

    @Test
    void should_report_an_empty_file_and_text_behind_the_end() {
        assertThat(messages(" ")).containsExactly("kitchen.json, line 1: read an empty file; expected a JSON object.");
        assertThat(messages("{}\n}")).anyMatch(message -> message.startsWith("kitchen.json, line 2: read "));
        assertThat(messages("{}\n{}")).contains("kitchen.json, line 2: read more text after the closing bracket; "
                + "expected the end of the file. Look for a bracket too many above.");
    }
}
