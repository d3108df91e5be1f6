package crumbclock.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Numbers as people write them: 8, 8.5, 8,5 (decimal comma), 1/2, 8 1/2, 8½. A comma or point before exactly three digits with
 * nothing behind ("1,200") might part thousands, so the comma is refused there rather than guessed.
 */
public final class Numeral {

    private static final Pattern DECIMAL = Pattern.compile("[+-]?[0-9]{1,15}([.,][0-9]{1,15})?");
    private static final Pattern SCIENTIFIC = Pattern.compile("[+-]?[0-9]{1,15}(\\.[0-9]{1,15})?[eE][+-]?[0-9]{1,2}");
    private static final Pattern MAYBE_THOUSANDS = Pattern.compile("[+-]?[1-9][0-9]{0,2},[0-9]{3}");
    private static final Pattern FRACTION = Pattern.compile("(?:([0-9]{1,6})\\s+)?([0-9]{1,6})/([0-9]{1,6})");

    private Numeral() {
    }

    /** The number that the text stands for, to 34 digits for fractions; empty when it is none or not plain. */
    public static Optional<BigDecimal> parse(String text) {
        String plain = text.strip().replace("½", " 1/2").replace("¼", " 1/4").replace("¾", " 3/4").strip();
        if (MAYBE_THOUSANDS.matcher(plain).matches()) {
            return Optional.empty();
        }
        if (DECIMAL.matcher(plain).matches()) {
            return Optional.of(new BigDecimal(plain.replace(',', '.')));
        }
        if (SCIENTIFIC.matcher(plain).matches()) {
            return Optional.of(new BigDecimal(plain));
        }
        var fraction = FRACTION.matcher(plain);
        if (!fraction.matches() || Integer.parseInt(fraction.group(3)) == 0) {
            return Optional.empty();
        }
        var whole = fraction.group(1) == null ? BigDecimal.ZERO : new BigDecimal(fraction.group(1));
        var part = new BigDecimal(fraction.group(2)).divide(new BigDecimal(fraction.group(3)), MathContext.DECIMAL128);
        return Optional.of(whole.add(part));
    }
}
