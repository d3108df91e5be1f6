package crumbclock.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TemperatureTest {

    /** NIST Special Publication 811, Appendix B.9: °C = (°F − 32) / 1.8, exactly. */
    @ParameterizedTest
    @CsvSource({"32, 0", "41, 5", "212, 100", "-40, -40", "50, 10"})
    void should_convert_both_ways(BigDecimal fahrenheit, BigDecimal celsius) {
        assertThat(Temperature.celsiusOf(fahrenheit)).isEqualByComparingTo(celsius);
        assertThat(Temperature.fahrenheitOf(celsius)).isEqualByComparingTo(fahrenheit);
    }

    /** The same source: a difference has no offset. */
    @Test
    void should_convert_a_difference_without_the_offset() {
        assertThat(Temperature.celsiusDifferenceOf(BigDecimal.TEN).round(new MathContext(4))).isEqualTo(new BigDecimal("5.556"));
    }

    @ParameterizedTest
    @CsvSource({"350 F, 177", "350°F, 177", "350 °f, 177", "175, 175", "175 C, 175", "175 °C, 175", "-18, -18", "'162,5 C', 163"})
    void should_read_text(String text, int celsius) {
        var read = Temperature.parseCelsius(text).orElseThrow();
        assertThat(read.setScale(0, java.math.RoundingMode.HALF_UP)).isEqualByComparingTo(BigDecimal.valueOf(celsius));
    }

    @ParameterizedTest
    @ValueSource(strings = {"hot", "", "350 K", "F", "gas 4", "1-2 C"})
    void should_refuse_what_is_none(String text) {
        assertThat(Temperature.parseCelsius(text)).isEmpty();
    }

    @Test
    void should_show_whole_degrees() {
        assertThat(Temperature.showFahrenheit(175)).isEqualTo("347 °F");
        assertThat(Temperature.showFahrenheit(-18)).isEqualTo("0 °F");
    }
}
