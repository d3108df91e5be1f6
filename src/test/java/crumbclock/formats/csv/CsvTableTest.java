package crumbclock.formats.csv;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.Issue;
import crumbclock.formats.issue.IssueLog;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CsvTableTest {

    private final IssueLog log = new IssueLog();

    private List<List<String>> cells(String text) {
        var table = CsvTable.read(SourceFile.ofText("orders.csv", text), log);
        assertThat(log.sorted()).isEmpty();
        return table.orElseThrow().rows().stream().map(CsvTable.Row::cells).toList();
    }

    private List<String> messages(String text) {
        CsvTable.read(SourceFile.ofText("orders.csv", text), log);
        return log.sorted().stream().map(Issue::toString).toList();
    }

    /** RFC 4180, section 2, numbers 1 and 2: CR LF, and the last line may lack it; LF alone is a habit outside the RFC. */
    @ParameterizedTest
    @ValueSource(strings = {"a,b\r\n1,2\r\n", "a,b\r\n1,2", "a,b\n1,2\n", "a,b\n1,2", "a,b\r1,2\r"})
    void should_take_any_line_end(String text) {
        assertThat(cells(text)).containsExactly(List.of("1", "2"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"a;b\n1;2\n", "a\tb\n1\t2\n", "\uFEFFa,b\n1,2\n", "sep=;\na;b\n1;2\n", "\uFEFFsep=;\r\na;b\r\n1;2", "\n\na,b\n1,2", "\"a;a;a\",b\n1,2"})
    void should_understand_what_spreadsheets_do(String text) {
        assertThat(cells(text)).containsExactly(List.of("1", "2"));
    }

    @Test
    void should_leave_out_blank_rows_and_blank_columns_to_the_right() {
        assertThat(cells("a,b,,\n1,2,,\n,,,\n\n3,4,,\n,,,\n")).containsExactly(List.of("1", "2"), List.of("3", "4"));
    }

    /** RFC 4180, section 2, numbers 5 to 7. */
    @Test
    void should_read_quoted_separators_quotes_and_line_breaks() {
        assertThat(cells("a,b\n\"x, y\",\"He said \"\"hi\"\"\"\n\"two\nlines\",  kept\n"))
                .containsExactly(List.of("x, y", "He said \"hi\""), List.of("two\nlines", "  kept"));
    }

    @Test
    void should_know_on_which_line_each_row_starts() {
        var table = CsvTable.read(SourceFile.ofText("t.csv", "sep=,\na,b\n\"x\ny\",2\n\n3,4"), log).orElseThrow();

        assertThat(table.rows()).extracting(CsvTable.Row::line).containsExactly(3, 6);
    }

    @Test
    void should_report_rows_that_are_too_long_or_too_short_with_their_lines() {
        assertThat(messages("a,b\n1,2,3\n4,5\n6\n")).containsExactly(
                "orders.csv, line 2: read 3 fields; expected 2 fields, as many as the header has. A field that holds a separator needs quotes around it.",
                "orders.csv, line 4: read 1 fields; expected 2 fields, as many as the header has. Look for a missing separator or an open quote.");
    }

    @Test
    void should_report_a_quote_that_is_never_closed() {
        assertThat(messages("a,b\n1,2\n\"3,4\n5,6\n")).containsExactly(
                "orders.csv, line 3: read a quote that is not closed, or text behind a closing quote; "
                        + "expected a field in quotes that ends with a quote. A quote inside such a field is written twice.");
    }

    @Test
    void should_report_an_empty_table() {
        assertThat(messages("\n \n")).containsExactly(
                "orders.csv, line 1: read an empty table; expected a first line with the names of the columns.");
    }

    @Test
    void should_come_back_as_it_was_written() {
        // given
        var header = List.of("name", "text");
        List<List<String>> rows = List.of(List.of("a, b", "He said \"hi\", twice"), List.of("two\r\nlines", "  leading"),
                List.of("=1+1", "@home"), List.of("-5", "+3.5"), List.of("'tis", "'=quoted"), List.of("-dash", ""), List.of("ü", "蛋糕"));

        // when
        String text = OutCells.table(header, rows.stream().map(row -> List.<Object>copyOf(row)).toList());

        // then
        assertThat(text).startsWith("name,text\r\n\"a, b\",\"He said \"\"hi\"\", twice\"\r\n").endsWith("\r\n");
        assertThat(text).contains("\r\n'=1+1,'@home\r\n'-5,'+3.5\r\n");
        assertThat(cells(text)).isEqualTo(rows);
    }
}
