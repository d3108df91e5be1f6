package crumbclock.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "203|203", "203 mm|203", "20 cm|200", "0.4 m|400", "8 in|203.2", "8in|203.2", "8\"|203.2", "8″|203.2", "8”|203.2", "8 INCHES|203.2",
        "8.5 in|215.9", "8,5 in|215.9", "8 1/2 in|215.9", "8½ in|215.9", "8½\"|215.9", "1/2 in|12.7", "½ in|12.7", "2 ft|609.6", "2E+2|200"})
    void should_read_a_length(String text, BigDecimal millimetres) {
        assertThat(Quantity.parse(text, Set.of(Dimension.LENGTH)).orElseThrow()).isEqualByComparingTo(millimetres);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "in", "8 parsec", "8 kg", "8 in 3", "8..5 in", "1/0 in", "1,200 mm", "eight in", "- 8 in", "8 in in"})
    void should_refuse_what_is_no_clear_length(String text) {
        assertThat(Quantity.parse(text, Set.of(Dimension.LENGTH))).isEmpty();
    }

    @Test
    void should_read_volumes_and_masses_where_both_are_allowed() {
        var both = Set.of(Dimension.VOLUME, Dimension.MASS);
        assertThat(Quantity.parse("4.8 L", both).orElseThrow()).isEqualByComparingTo(new BigDecimal(4800));
        assertThat(Quantity.parse("5 qt", both).orElseThrow()).isEqualByComparingTo(new BigDecimal("4731.76473"));
        assertThat(Quantity.parse("3 kg", both).orElseThrow()).isEqualByComparingTo(new BigDecimal(3000));
        assertThat(Quantity.parse("3 in", both)).isEmpty();
    }

    @Test
    void should_refuse_a_comma_that_may_part_thousands_but_read_a_decimal_comma() {
        assertThat(Numeral.parse("1,200")).isEmpty();
        assertThat(Numeral.parse("0,250")).hasValueSatisfying(value -> assertThat(value).isEqualByComparingTo(new BigDecimal("0.25")));
        assertThat(Numeral.parse("1.200")).hasValueSatisfying(value -> assertThat(value).isEqualByComparingTo(new BigDecimal("1.2")));
    }
}
