package crumbclock.formats.json;

import crumbclock.formats.issue.IssueLog;
import crumbclock.units.Dimension;
import crumbclock.units.Quantity;
import crumbclock.units.Temperature;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.Set;

/**
 * Measures as text to whole mm, g, mL, mm² and °C, with an issue for each that is none. A faulty measure yields the least allowed
 * value, so that reading can go on; the log then holds an issue and nothing is planned.
 */
public record MeasureReader(IssueLog log) {

    private static final int LONGEST_MM = 100_000;
    private static final int MOST_MM2 = 1_000_000_000;
    private static final int MOST_AMOUNT = 1_000_000;

    /** What a message says is expected of a length. */
    public static final String LENGTH_EXPECTED = "a length such as 203, \"203 mm\", \"20 cm\" or \"8 in\", from 1 to 100,000 mm";

    public int length(Spot spot, String text) {
        return whole(spot, text, Set.of(Dimension.LENGTH), 1, LONGEST_MM, LENGTH_EXPECTED);
    }

    public int position(Spot spot, String text) {
        return whole(spot, text, Set.of(Dimension.LENGTH), 0, LONGEST_MM,
                "a distance such as 25, \"2.5 cm\" or \"1 in\", from 0 to 100,000 mm");
    }

    public int mass(Spot spot, String text) {
        return whole(spot, text, Set.of(Dimension.MASS), 0, MOST_AMOUNT,
                "a mass such as 800, \"2.5 kg\" or \"3 lb\", from 0 to 1,000,000 g");
    }

    public int amount(Spot spot, String text) {
        return whole(spot, text, Set.of(Dimension.VOLUME, Dimension.MASS), 0, MOST_AMOUNT,
                "a volume or mass such as 4800, \"4.8 L\", \"5 qt\" or \"3 kg\", from 0 to 1,000,000 mL or g");
    }

    public int area(Spot spot, String text) {
        return whole(spot, text, Set.of(Dimension.AREA), 1, MOST_MM2,
                "an area such as 800000, \"0.8 m2\" or \"9 ft2\", above 0 and at most 1,000 m²");
    }

    public int temperature(Spot spot, String text) {
        return within(spot, Temperature.parseCelsius(text), -60, 400,
                "a temperature such as 175, \"175 C\" or \"350 F\", from -60 to 400 °C");
    }

    private int whole(Spot spot, String text, Set<Dimension> allowed, int least, int most, String expected) {
        return within(spot, Quantity.parse(text, allowed), least, most, expected);
    }

    private int within(Spot spot, Optional<BigDecimal> value, int least, int most, String expected) {
        var rounded = value.map(exact -> exact.setScale(0, RoundingMode.HALF_UP));
        if (rounded.isEmpty() || rounded.get().compareTo(BigDecimal.valueOf(least)) < 0
                || rounded.get().compareTo(BigDecimal.valueOf(most)) > 0) {
            spot.fault(log, expected, "");
            return least;
        }
        return rounded.get().intValueExact();
    }
}
