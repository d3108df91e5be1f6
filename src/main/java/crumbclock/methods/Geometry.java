package crumbclock.methods;

import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.Footprint;

import java.util.Locale;

/**
 * Quantities from sizes. All inside measures are mm, mL and g; a coat is 6 mm thick (thin coat included), a filling
 * 8 mm, a cake 100 mm tall with two layers and 20 mm taller for each one more.
 */
final class Geometry {

    private static final double MM_PER_INCH = 25.4;
    /** Batter by area of the pan, for two-inch pans: 0.45 oz a square inch (one baker's rule; 8 in gives 640 g). */
    private static final double BATTER_G_PER_MM2 = 0.45 * 28.349523125 / (MM_PER_INCH * MM_PER_INCH);
    private static final double COAT_MM = 6;
    private static final double FILLING_MM = 8;
    private static final int LAYER_MM = 45;

    private Geometry() {
    }

    static double areaMm2(Footprint size) {
        return size.round() ? Math.PI * size.widthMm() * size.widthMm() / 4 : (double) size.widthMm() * size.depthMm();
    }

    /** Volume of a tin filled to the brim, mL. */
    static double tinMl(Footprint size, double heightMm) {
        return areaMm2(size) * heightMm / 1000;
    }

    /**
     * The size by which tables are read: a round one's diameter, a rectangle's by the round of equal area. Whole
     * millimetres within half of one of a whole inch count as that inch: 203 mm is 8 in, not a little less.
     */
    static double nominalMm(Footprint size) {
        double mm = size.round() ? size.widthMm() : Math.sqrt(4 * areaMm2(size) / Math.PI);
        double inches = Math.round(mm / MM_PER_INCH) * MM_PER_INCH;
        return size.round() && Math.abs(mm - inches) <= 0.5 ? inches : mm;
    }

    static double batterGrams(TierRequest tier) {
        return areaMm2(tier.size()) * tier.layers() * BATTER_G_PER_MM2;
    }

    /** Icing for top and sides, mL. */
    static double coatMl(TierRequest tier) {
        var size = tier.size();
        double tallMm = 60 + 20 * tier.layers();
        double around = size.round() ? Math.PI * size.widthMm() : 2.0 * (size.widthMm() + size.depthMm());
        return (around * tallMm + areaMm2(size)) * COAT_MM / 1000;
    }

    /** Fillings between the layers, mL. */
    static double fillingMl(TierRequest tier) {
        return areaMm2(tier.size()) * (tier.layers() - 1) * FILLING_MM / 1000;
    }

    /** Volume of the cake itself, mL, for its weight. */
    static double cakeMl(TierRequest tier) {
        return oneLayerMl(tier) * tier.layers();
    }

    static double oneLayerMl(TierRequest tier) {
        return areaMm2(tier.size()) * LAYER_MM / 1000;
    }

    /** The size as pools are named by it: {@code 8in}, {@code 9x13in}, or {@code 200mm} where inches do not fit. */
    static String poolSize(Footprint size) {
        int small = Math.min(size.widthMm(), size.depthMm());
        int large = Math.max(size.widthMm(), size.depthMm());
        boolean inches = isWholeInches(small) && isWholeInches(large);
        String first = inches ? inches(small) : Integer.toString(small);
        String second = inches ? inches(large) : Integer.toString(large);
        String unit = inches ? "in" : "mm";
        return String.format(Locale.ROOT, size.round() ? "%1$s%3$s" : "%1$sx%2$s%3$s", first, second, unit);
    }

    private static boolean isWholeInches(int mm) {
        return Math.abs(mm - Math.round(mm / MM_PER_INCH) * MM_PER_INCH) <= 1;
    }

    private static String inches(int mm) {
        return Long.toString(Math.round(mm / MM_PER_INCH));
    }
}
