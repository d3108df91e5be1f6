package crumbclock.formats.order;

import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.Footprint;
import crumbclock.units.Dimension;
import crumbclock.units.Numeral;
import crumbclock.units.Quantity;
import crumbclock.units.Unit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Sizes and layers of tiers as people write them, bottom up: "10 in + 6 in", "9x13 in", "3+2". */
final class TierText {

    static final String SIZE_EXPECTED =
            "sizes such as 8 in, 20 cm, 10 in + 6 in or 9x13 in, each side from 20 to 2,000 mm";
    static final String LAYERS_EXPECTED = "layers from 1 to 20, such as 3, or 3+2 from the bottom tier up";

    private static final int LEAST_MM = 20;
    private static final int MOST_MM = 2_000;
    private static final Pattern TIER_BREAK = Pattern.compile("\\s*\\+\\s*");
    private static final Pattern SIDE_BREAK = Pattern.compile("\\s*[x×X]\\s*|\\s+by\\s+");
    private static final Pattern UNIT_AT_END = Pattern.compile("[^0-9.,/\\s½¼¾]+\\.?$");

    private TierText() {
    }

    /** Footprints from the bottom up; a unit at the end holds for sides and tiers before it that have none. Empty when unclear. */
    static Optional<List<Footprint>> sizes(String text) {
        List<Footprint> sizes = new ArrayList<>();
        String unit = unitOf(text);
        for (String tier : TIER_BREAK.split(text.strip(), -1)) {
            String tierUnit = unitOf(tier).isEmpty() ? unit : unitOf(tier);
            var sides = Arrays.stream(SIDE_BREAK.split(tier, -1)).map(side -> millimetres(side, tierUnit)).toList();
            if (sides.size() > 2 || sides.stream().anyMatch(Optional::isEmpty)) {
                return Optional.empty();
            }
            int width = sides.get(0).orElseThrow();
            int depth = sides.get(sides.size() - 1).orElseThrow();
            sizes.add(new Footprint(sides.size() == 1, width, depth));
        }
        return Optional.of(sizes);
    }

    /**
     * Layers of each tier: one number for all, or as many numbers as tiers. Empty when unclear or not matching.
     *
     * @param tiers how many there are, at least 1
     */
    static Optional<List<Integer>> layers(String text, int tiers) {
        var parts = TIER_BREAK.split(text.strip(), -1);
        if (parts.length != 1 && parts.length != tiers) {
            return Optional.empty();
        }
        List<Integer> layers = new ArrayList<>();
        for (int i = 0; i < tiers; i++) {
            var count = WholeNumber.parse(parts[parts.length == 1 ? 0 : i], 1, 20);
            if (count.isEmpty()) {
                return Optional.empty();
            }
            layers.add(count.getAsInt());
        }
        return Optional.of(layers);
    }

    static List<TierRequest> tiers(List<Footprint> sizes, List<Integer> layers) {
        List<TierRequest> tiers = new ArrayList<>();
        for (int i = 0; i < sizes.size(); i++) {
            tiers.add(new TierRequest(sizes.get(i), layers.get(i)));
        }
        return tiers;
    }

    private static String unitOf(String text) {
        var end = UNIT_AT_END.matcher(text.strip());
        return end.find() && Unit.findByWord(end.group()).isPresent() ? end.group() : "";
    }

    private static Optional<Integer> millimetres(String side, String unit) {
        boolean bare = Numeral.parse(side).isPresent();
        return Quantity.parse(bare && !unit.isEmpty() ? side + " " + unit : side, Set.of(Dimension.LENGTH))
                .map(exact -> exact.setScale(0, RoundingMode.HALF_UP))
                .filter(mm -> mm.compareTo(BigDecimal.valueOf(LEAST_MM)) >= 0 && mm.compareTo(BigDecimal.valueOf(MOST_MM)) <= 0)
                .map(BigDecimal::intValueExact);
    }
}
