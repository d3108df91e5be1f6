package crumbclock.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UnitTest {

    /** NIST Special Publication 811 (2008), Appendix B.8; all exact by definition. */
    @ParameterizedTest
    @CsvSource({
        "in, 25.4", "ft, 304.8", "gal, 3785.411784", "qt, 946.352946", "pt, 473.176473", "cup, 236.5882365",
        "fl oz, 29.5735295625", "tbsp, 14.78676478125", "tsp, 4.92892159375", "in³, 16.387064", "lb, 453.59237",
        "oz, 28.349523125", "ft², 92903.04", "in², 645.16"})
    void should_hold_the_exact_factor(String word, BigDecimal base) {
        assertThat(Unit.findByWord(word).orElseThrow().toBase(BigDecimal.ONE)).isEqualByComparingTo(base);
    }

    /** NIST Handbook 44, Appendix C: how the US customary units follow from each other. */
    @Test
    void should_agree_with_the_definitions_among_customary_units() {
        assertThat(base("231 in3")).isEqualByComparingTo(base("1 gal"));
        assertThat(base("4 qt")).isEqualByComparingTo(base("1 gal"));
        assertThat(base("2 pt")).isEqualByComparingTo(base("1 qt"));
        assertThat(base("8 fl oz")).isEqualByComparingTo(base("1 cup"));
        assertThat(base("16 tbsp")).isEqualByComparingTo(base("1 cup"));
        assertThat(base("48 tsp")).isEqualByComparingTo(base("1 cup"));
        assertThat(base("16 oz")).isEqualByComparingTo(base("1 lb"));
        assertThat(base("12 in")).isEqualByComparingTo(base("1 ft"));
        assertThat(base("144 in2")).isEqualByComparingTo(base("1 ft2"));
    }

    /** The label cup of 21 CFR 101.9(b)(5)(viii) has 240 mL and is not the customary cup. */
    @Test
    void should_not_take_the_label_cup_for_the_customary_one() {
        assertThat(base("1 cup")).isNotEqualByComparingTo(new BigDecimal(240));
    }

    @ParameterizedTest
    @CsvSource({"INCH, 203, 1, 8 in", "INCH, 203, 2, 7.99 in", "FOOT, 305, 1, 1 ft", "POUND, 454, 2, 1 lb", "CUP, 1647, 2, 6.96 cup",
        "QUART, 0, 1, 0 qt", "KILOGRAM, 12000, 0, 12 kg"})
    void should_show_base_units_in_another_unit(Unit unit, long base, int decimals, String shown) {
        assertThat(unit.show(base, decimals)).isEqualTo(shown);
    }

    @Test
    void should_go_there_and_back_within_34_digits() {
        for (Unit unit : Unit.values()) {
            var there = unit.fromBase(new BigDecimal(1000));
            assertThat(unit.toBase(there).subtract(new BigDecimal(1000)).abs()).isLessThan(new BigDecimal("1e-28"));
        }
    }

    private static BigDecimal base(String text) {
        return Quantity.parse(text, java.util.EnumSet.allOf(Dimension.class)).orElseThrow();
    }
}
