package crumbclock.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** An amount with its unit, as text: "8 in", "20 cm", "4.8 L", or a bare number of base units. */
public final class Quantity {

    private static final Pattern NUMBER_THEN_WORD = Pattern.compile("([+-]?[0-9][0-9.,/\\s½¼¾]*?|[½¼¾])\\s*([^0-9.,/\\s½¼¾+-].*)");

    private Quantity() {
    }

    /**
     * Reads an amount into base units, exactly (fractions to 34 digits).
     *
     * @param allowed dimensions that a unit may have; a bare number counts in the base unit of whichever is meant
     * @return empty when the number is none or the unit is unknown or measures something else
     */
    public static Optional<BigDecimal> parse(String text, Set<Dimension> allowed) {
        var bare = Numeral.parse(text);
        var parts = NUMBER_THEN_WORD.matcher(text.strip());
        if (bare.isPresent() || !parts.matches()) {
            return bare;
        }
        return Unit.findByWord(parts.group(2))
                .filter(unit -> allowed.contains(unit.dimension()))
                .flatMap(unit -> Numeral.parse(parts.group(1)).map(unit::toBase));
    }
}
