package crumbclock.methods;

import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.Footprint;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;

/**
 * What one step is about: one tier, or all tiers of a cake, and how many pieces.
 *
 * @param tiers       from the bottom up, at least one
 * @param pieces      small cakes made by the dozen, 1 for a single cake
 * @param batchAmount what a batch was asked to hold; 0 for a cake
 */
record Scope(List<TierRequest> tiers, int pieces, int batchAmount) {

    /** More than the longest problem has. */
    static final int MOST_MINUTES = 100_000;
    /** Batches and small cakes have no size of their own; their tables by size should say {@code any}. */
    private static final TierRequest NO_SIZE = new TierRequest(new Footprint(true, 1, 1), 1);

    Scope {
        tiers = List.copyOf(tiers);
    }

    static Scope ofBatch(int amount) {
        return new Scope(List.of(NO_SIZE), 1, amount);
    }

    static Scope ofPieces(int pieces) {
        return new Scope(List.of(NO_SIZE), pieces, 0);
    }

    /** The same cake, one tier of it. */
    Scope only(int tier) {
        return new Scope(List.of(tiers.get(tier)), pieces, batchAmount);
    }

    TierRequest largest() {
        return tiers.stream().max(Comparator.comparingDouble(tier -> Geometry.areaMm2(tier.size()))).orElseThrow();
    }

    double largestMm() {
        return Geometry.nominalMm(largest().size());
    }

    int layers() {
        return tiers.stream().mapToInt(TierRequest::layers).sum();
    }

    int dozens() {
        return (pieces + 11) / 12;
    }

    int count(Count count) {
        return switch (count) {
            case ONE -> 1;
            case TIERS -> tiers.size();
            case LAYERS -> layers();
            case DOZENS -> dozens();
        };
    }

    /**
     * Minutes of a table by size, as often as they come.
     *
     * @throws IllegalArgumentException when they are more than any step may take, or a size cannot be read
     */
    int minutes(Map<String, Integer> bySize, Times times) {
        var table = SizeTable.of(bySize);
        double minutes = switch (times) {
            case ONCE -> table.at(largestMm());
            case TIERS -> sum(tiers, tier -> table.at(Geometry.nominalMm(tier.size())));
            case JOINTS -> sum(upperTiers(), tier -> table.at(Geometry.nominalMm(tier.size())));
            case LAYERS -> sum(tiers, tier -> tier.layers() * table.at(Geometry.nominalMm(tier.size())));
            case PIECES -> pieces * table.at(largestMm());
            case DOZENS -> dozens() * table.at(largestMm());
        };
        if (minutes > MOST_MINUTES) {
            throw new IllegalArgumentException(String.format(Locale.ROOT, "comes to %,.0f minutes; expected at most %,d", minutes, MOST_MINUTES));
        }
        return SizeTable.whole(minutes);
    }

    /** An amount in a pool's measure, rounded up: a bowl has to hold all of it. */
    int amount(AmountTemplate amount) {
        double quantity = switch (amount.of()) {
            case BATTER_G -> sum(tiers, Geometry::batterGrams);
            case COAT_ML -> sum(tiers, Geometry::coatMl);
            case FILLING_ML -> sum(tiers, Geometry::fillingMl);
            case COAT_AND_FILLING_ML -> sum(tiers, tier -> Geometry.coatMl(tier) + Geometry.fillingMl(tier));
            case PIECES -> pieces;
            case BATCH -> batchAmount;
        };
        return (int) Math.ceil(quantity * amount.percent() / 100 - 1e-9);
    }

    List<TierRequest> upperTiers() {
        return tiers.subList(1, tiers.size());
    }

    private static double sum(List<TierRequest> tiers, ToDoubleFunction<TierRequest> of) {
        return tiers.stream().mapToDouble(of).sum();
    }
}
