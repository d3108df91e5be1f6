package crumbclock.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Temperatures in °C inside, °F on the way in and out: °C = (°F − 32) / 1.8, exact by definition (NIST Special Publication 811,
 * Appendix B.9). A difference has no offset, so it has methods of its own.
 */
public final class Temperature {

    private static final BigDecimal OFFSET = new BigDecimal(32);
    private static final BigDecimal FAHRENHEIT_PER_CELSIUS = new BigDecimal("1.8");
    private static final Pattern TEXT = Pattern.compile("([+-]?[0-9][0-9.,]*)\\s*(?:°|º|deg)?\\s*([cCfF])?");

    private Temperature() {
    }

    public static BigDecimal celsiusOf(BigDecimal fahrenheit) {
        return fahrenheit.subtract(OFFSET).divide(FAHRENHEIT_PER_CELSIUS, MathContext.DECIMAL128);
    }

    public static BigDecimal fahrenheitOf(BigDecimal celsius) {
        return celsius.multiply(FAHRENHEIT_PER_CELSIUS).add(OFFSET);
    }

    /** A difference of so many °F in °C. */
    public static BigDecimal celsiusDifferenceOf(BigDecimal fahrenheitDifference) {
        return fahrenheitDifference.divide(FAHRENHEIT_PER_CELSIUS, MathContext.DECIMAL128);
    }

    /** Whole °F as people read them: {@code showFahrenheit(175)} is "347 °F". */
    public static String showFahrenheit(int celsius) {
        return fahrenheitOf(BigDecimal.valueOf(celsius)).setScale(0, RoundingMode.HALF_UP).toPlainString() + " °F";
    }

    /** Reads "350 F", "175 °C" or a bare number of °C; empty for anything else. */
    public static Optional<BigDecimal> parseCelsius(String text) {
        var parts = TEXT.matcher(text.strip());
        if (!parts.matches()) {
            return Optional.empty();
        }
        boolean fahrenheit = "f".equalsIgnoreCase(parts.group(2));
        return Numeral.parse(parts.group(1)).map(number -> fahrenheit ? celsiusOf(number) : number);
    }
}
