package crumbclock.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Units that people may write, each as an exact number of base units. Inside the program there are base units only.
 *
 * <p>Factors of inch, foot, pound, ounce and the US liquid measures are exact by definition: NIST Special
 * Publication 811, Appendix B.8. The cup is the US customary one (8 fluid ounces), neither the label cup of 240 mL nor the
 * metric cup of 250 mL.
 */
public enum Unit {
    MILLIMETRE(Dimension.LENGTH, "1", "mm"),
    CENTIMETRE(Dimension.LENGTH, "10", "cm"),
    METRE(Dimension.LENGTH, "1000", "m"),
    INCH(Dimension.LENGTH, "25.4", "in", "in.", "inch", "inches", "\"", "″", "”", "''"),
    FOOT(Dimension.LENGTH, "304.8", "ft", "ft.", "foot", "feet", "'", "′"),

    SQUARE_MILLIMETRE(Dimension.AREA, "1", "mm²", "mm2"),
    SQUARE_CENTIMETRE(Dimension.AREA, "100", "cm²", "cm2"),
    SQUARE_METRE(Dimension.AREA, "1000000", "m²", "m2"),
    SQUARE_INCH(Dimension.AREA, "645.16", "in²", "in2", "sq in"),
    SQUARE_FOOT(Dimension.AREA, "92903.04", "ft²", "ft2", "sq ft"),

    MILLILITRE(Dimension.VOLUME, "1", "mL"),
    CENTILITRE(Dimension.VOLUME, "10", "cL"),
    LITRE(Dimension.VOLUME, "1000", "L", "litre", "litres", "liter", "liters"),
    TEASPOON(Dimension.VOLUME, "4.92892159375", "tsp", "teaspoon", "teaspoons"),
    TABLESPOON(Dimension.VOLUME, "14.78676478125", "tbsp", "tablespoon", "tablespoons"),
    FLUID_OUNCE(Dimension.VOLUME, "29.5735295625", "fl oz", "fluid ounce", "fluid ounces"),
    CUP(Dimension.VOLUME, "236.5882365", "cup", "cups"),
    PINT(Dimension.VOLUME, "473.176473", "pt", "pint", "pints"),
    QUART(Dimension.VOLUME, "946.352946", "qt", "quart", "quarts"),
    GALLON(Dimension.VOLUME, "3785.411784", "gal", "gallon", "gallons"),
    CUBIC_INCH(Dimension.VOLUME, "16.387064", "in³", "in3", "cu in"),

    GRAM(Dimension.MASS, "1", "g", "gram", "grams"),
    KILOGRAM(Dimension.MASS, "1000", "kg"),
    OUNCE(Dimension.MASS, "28.349523125", "oz", "ounce", "ounces"),
    POUND(Dimension.MASS, "453.59237", "lb", "lbs", "pound", "pounds");

    private final Dimension dimension;
    private final BigDecimal factor;
    private final List<String> words;

    Unit(Dimension dimension, String factor, String... words) {
        this.dimension = dimension;
        this.factor = new BigDecimal(factor);
        this.words = List.of(words);
    }

    public Dimension dimension() {
        return dimension;
    }

    /** How it is written out: the first of its words. */
    public String symbol() {
        return words.get(0);
    }

    /** So many of this unit in base units, exactly. */
    public BigDecimal toBase(BigDecimal count) {
        return count.multiply(factor);
    }

    /** So many base units in this unit, to 34 digits. */
    public BigDecimal fromBase(BigDecimal count) {
        return count.divide(factor, MathContext.DECIMAL128);
    }

    /**
     * Base units as people read them in this unit: {@code INCH.show(203, 1)} is "8 in".
     *
     * @param decimals most digits after the point, at least 0; trailing zeros are left out
     */
    public String show(long base, int decimals) {
        BigDecimal shown = fromBase(BigDecimal.valueOf(base)).setScale(decimals, RoundingMode.HALF_UP);
        shown = shown.signum() == 0 ? BigDecimal.ZERO : shown.stripTrailingZeros();
        return shown.toPlainString() + " " + symbol();
    }

    /** The unit that goes by this word, in any case; empty when there is none. */
    public static Optional<Unit> findByWord(String word) {
        String sought = word.strip().toLowerCase(Locale.ROOT);
        for (Unit unit : values()) {
            if (unit.words.stream().anyMatch(known -> known.toLowerCase(Locale.ROOT).equals(sought))) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
