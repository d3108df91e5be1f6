package crumbclock.formats.order;

import crumbclock.units.Numeral;
import java.math.BigDecimal;
import java.util.OptionalInt;

/** Whole numbers as spreadsheets write them: 24, 24.0, 24,0. */
final class WholeNumber {

    private WholeNumber() {
    }

    /** The number within {@code [least, most]}; empty when it is none, has a fraction or lies outside. */
    static OptionalInt parse(String text, int least, int most) {
        var number = Numeral.parse(text);
        if (number.isEmpty() || number.get().stripTrailingZeros().scale() > 0
                || number.get().compareTo(BigDecimal.valueOf(least)) < 0 || number.get().compareTo(BigDecimal.valueOf(most)) > 0) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(number.get().intValueExact());
    }
}
