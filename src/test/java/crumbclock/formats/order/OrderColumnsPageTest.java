package crumbclock.formats.order;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.docs.Page;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every column and key that the reader understands stands in the table of the page. */
class OrderColumnsPageTest {

    @ParameterizedTest
    @EnumSource(Field.class)
    void stands_in_the_table_with_its_column_and_key(Field field) {
        String row = "\n| `" + field.column() + "` | `" + field.key() + "` | " + (field.ofOrder() ? "order" : "cake") + " |";

        assertThat(Page.of("formats-orders.md").text()).contains(row);
    }
}
