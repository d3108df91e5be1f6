package crumbclock.engine.shelf;

import crumbclock.engine.shelf.TouchPoints.Point;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One run of the packer. Three things keep the tree small and lose no packing it could build: a node is dead when some
 * piece that is left finds no whole-mm place at all; a placement that failed is not tried again by its later brothers or
 * below them (whatever could be completed with it later could have been completed with it then); and of bays that are
 * equal and empty only the first is tried, the first piece in it in one corner only, the other corners being mirror images.
 */
final class PackSearch {
    private record Choice(int kind, int bay, int xMm, int yMm, boolean turned) {
    }

    private final List<Bay> bays;
    private final int gapMm;
    private final int wallGapMm;
    private final int mostNodes;
    private final List<Piece> kinds = new ArrayList<>();
    /** For each kind, the pieces of that kind, by index. */
    private final List<List<Integer>> pieceOfKind = new ArrayList<>();
    private final int[] left;
    private int leftInAll;
    private final SpotFinder[] finders;
    private final List<Choice> placed = new ArrayList<>();
    /** Asked for membership only, so its order decides nothing. */
    private final Set<Choice> failed = new HashSet<>();
    private int nodes;
    private boolean gaveUp;

    PackSearch(List<Bay> bays, List<Standing> standing, List<Piece> pieces, int gapMm, int wallGapMm, int mostNodes) {
        this.bays = List.copyOf(bays);
        this.gapMm = gapMm;
        this.wallGapMm = wallGapMm;
        this.mostNodes = mostNodes;
        for (Piece piece : pieces.stream().distinct().sorted(largestFirst()).toList()) {
            List<Integer> same = new ArrayList<>();
            for (int i = 0; i < pieces.size(); i++) {
                if (pieces.get(i).equals(piece)) {
                    same.add(i);
                }
            }
            kinds.add(piece);
            pieceOfKind.add(same);
        }
        left = pieceOfKind.stream().mapToInt(List::size).toArray();
        leftInAll = pieces.size();
        finders = new SpotFinder[bays.size()];
        Arrays.setAll(finders, i -> new SpotFinder(pieces.size()));
        for (Standing thing : standing) {
            finders[thing.bay()].addNeighbour(thing.round(), thing.xMm(), thing.yMm(), thing.widthMm(), thing.depthMm());
        }
    }

    private static Comparator<Piece> largestFirst() {
        return Comparator.comparingLong((Piece p) -> -(long) p.widthMm() * p.depthMm())
                .thenComparing(Piece::round).thenComparingInt(Piece::widthMm).thenComparing(Piece::mayTurn);
    }

    int nodes() {
        return nodes;
    }

    boolean gaveUp() {
        return gaveUp;
    }

    Optional<List<Spot>> run() {
        return search() ? Optional.of(spots()) : Optional.empty();
    }

    private boolean search() {
        if (leftInAll == 0) {
            return true;
        }
        Choice only = null;
        for (int kind = 0; kind < kinds.size(); kind++) {
            if (left[kind] > 0) {
                only = anyPlace(kind);
                if (only == null) {
                    return false;
                }
            }
        }
        if (leftInAll == 1) {
            place(only);
            return true;
        }
        List<Choice> tried = new ArrayList<>();
        boolean success = false;
        for (Choice choice : choices()) {
            if (failed.contains(choice)) {
                continue;
            }
            if (nodes >= mostNodes) {
                gaveUp = true;
                break;
            }
            nodes++;
            place(choice);
            if (search()) {
                success = true;
                break;
            }
            takeBack();
            failed.add(choice);
            tried.add(choice);
        }
        failed.removeAll(tried);
        return success;
    }

    private Choice anyPlace(int kind) {
        Piece piece = kinds.get(kind);
        for (int bay = 0; bay < finders.length; bay++) {
            SpotFinder finder = finders[bay];
            if (finder.find(bays.get(bay).widthMm(), bays.get(bay).depthMm(), gapMm, wallGapMm, piece.round(),
                    piece.widthMm(), piece.depthMm(), piece.mayTurn())) {
                return new Choice(kind, bay, finder.xMm(), finder.yMm(), finder.turned());
            }
        }
        return null;
    }

    private List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        for (int kind = 0; kind < kinds.size(); kind++) {
            if (left[kind] == 0) {
                continue;
            }
            for (int bay = 0; bay < finders.length; bay++) {
                if (!isLikeEarlierEmptyBay(bay)) {
                    addChoices(choices, kind, bay, false);
                    if (kinds.get(kind).mayTurn()) {
                        addChoices(choices, kind, bay, true);
                    }
                }
            }
        }
        return choices;
    }

    private void addChoices(List<Choice> choices, int kind, int bay, boolean turned) {
        Piece piece = kinds.get(kind);
        int width = piece.widthMm(turned);
        int depth = piece.depthMm(turned);
        NoGoZones zones = finders[bay].zones();
        zones.shapeFor(piece.round(), width, depth, gapMm);
        List<Point> points = TouchPoints.of(zones, wallGapMm, bays.get(bay).widthMm() - wallGapMm - width,
                wallGapMm, bays.get(bay).depthMm() - wallGapMm - depth);
        int most = zones.count() == 0 ? Math.min(1, points.size()) : points.size();
        for (Point point : points.subList(0, most)) {
            choices.add(new Choice(kind, bay, point.xMm(), point.yMm(), turned));
        }
    }

    private boolean isLikeEarlierEmptyBay(int bay) {
        if (finders[bay].zones().count() > 0) {
            return false;
        }
        for (int earlier = 0; earlier < bay; earlier++) {
            if (finders[earlier].zones().count() == 0 && bays.get(earlier).equals(bays.get(bay))) {
                return true;
            }
        }
        return false;
    }

    private void place(Choice choice) {
        Piece piece = kinds.get(choice.kind());
        finders[choice.bay()].addNeighbour(piece.round(), choice.xMm(), choice.yMm(), piece.widthMm(choice.turned()),
                piece.depthMm(choice.turned()));
        placed.add(choice);
        left[choice.kind()]--;
        leftInAll--;
    }

    private void takeBack() {
        Choice choice = placed.remove(placed.size() - 1);
        finders[choice.bay()].zones().removeLast();
        left[choice.kind()]++;
        leftInAll++;
    }

    private List<Spot> spots() {
        Spot[] spots = new Spot[placed.size()];
        int[] next = new int[kinds.size()];
        for (Choice choice : placed) {
            int piece = pieceOfKind.get(choice.kind()).get(next[choice.kind()]++);
            spots[piece] = new Spot(choice.bay(), choice.xMm(), choice.yMm(), choice.turned());
        }
        return List.of(spots);
    }
}
