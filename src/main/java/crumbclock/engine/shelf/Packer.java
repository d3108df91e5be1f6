package crumbclock.engine.shelf;

import java.util.List;
import java.util.Optional;

/**
 * Places several pieces at once in one or several bays (all pans of a bake that go in together, rule R07).
 *
 * <p>Depth first over the places at which a piece touches two things, largest pieces first. What it finds is exactly
 * valid. For rectangles without a gap it finds a packing whenever there is one, given nodes enough. For circles and gaps
 * it may miss one in which pieces hold each other up in a ring, as the tightest do: eight equal circles in a square are
 * found at 99 % of the best known radius, not at 99.5 %. It may also stop at its limit ({@link #gaveUp()}).
 *
 * <p>Deterministic: the limit is in nodes, not in time. Not thread-safe.
 */
public final class Packer {
    private int nodes;
    private boolean gaveUp;

    /** {@link #pack(List, List, List, int, int, int)} in empty bays. */
    public Optional<List<Spot>> pack(List<Bay> bays, List<Piece> pieces, int gapMm, int wallGapMm, int mostNodes) {
        return pack(bays, List.of(), pieces, gapMm, wallGapMm, mostNodes);
    }

    /**
     * Looks for places for all pieces.
     *
     * @param bays      where to place; a piece stands in one of them
     * @param standing  what is there already
     * @param pieces    all are placed, or none
     * @param gapMm     least distance between two pieces, at least 0
     * @param wallGapMm least distance to a bay's edges, at least 0
     * @param mostNodes how many placements to try at most, at least 1
     * @return one spot for each piece, in the pieces' order; or empty when none was found
     * @throws IllegalArgumentException for a length or limit out of range
     * @throws IndexOutOfBoundsException when something stands in a bay that there is not
     */
    public Optional<List<Spot>> pack(List<Bay> bays, List<Standing> standing, List<Piece> pieces, int gapMm, int wallGapMm,
            int mostNodes) {
        SpotFinder.checkGaps(gapMm, wallGapMm);
        if (mostNodes < 1) {
            throw new IllegalArgumentException("at least 1 node: " + mostNodes);
        }
        nodes = 0;
        gaveUp = false;
        if (areaIsTooSmall(bays, pieces, gapMm, wallGapMm)) {
            return Optional.empty();
        }
        PackSearch search = new PackSearch(bays, standing, pieces, gapMm, wallGapMm, mostNodes);
        Optional<List<Spot>> spots = search.run();
        nodes = search.nodes();
        gaveUp = search.gaveUp();
        return spots;
    }

    /** Placements tried by the last call. */
    public int nodes() {
        return nodes;
    }

    /** Whether the last call stopped at its limit rather than at the end of its search. */
    public boolean gaveUp() {
        return gaveUp;
    }

    /** Pieces grown by half the gap do not overlap, and lie in bays grown by as much. */
    private static boolean areaIsTooSmall(List<Bay> bays, List<Piece> pieces, int gapMm, int wallGapMm) {
        double room = 0;
        for (Bay bay : bays) {
            double width = Math.max(0.0, bay.widthMm() - 2 * wallGapMm + gapMm);
            double depth = Math.max(0.0, bay.depthMm() - 2 * wallGapMm + gapMm);
            room += width * depth;
        }
        double need = pieces.stream().mapToDouble(piece -> piece.areaWithGap(gapMm)).sum();
        return need > room * (1 + 1e-9);
    }
}
