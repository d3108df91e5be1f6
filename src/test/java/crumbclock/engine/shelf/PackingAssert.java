package crumbclock.engine.shelf;

import crumbclock.engine.shelf.PlainSpotFinder.Item;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.assertj.core.api.AbstractAssert;

/** Checks a packing by the plain twin's measure, not by the code under test. */
final class PackingAssert extends AbstractAssert<PackingAssert, Optional<List<Spot>>> {

    private PackingAssert(Optional<List<Spot>> actual) {
        super(actual, PackingAssert.class);
    }

    static PackingAssert assertThatPacking(Optional<List<Spot>> actual) {
        return new PackingAssert(actual);
    }

    PackingAssert isEmpty() {
        if (actual.isPresent()) {
            failWithMessage("expected no packing but found %s", actual.get());
        }
        return this;
    }

    PackingAssert places(List<Bay> bays, List<Standing> standing, List<Piece> pieces, int gap, int wallGap) {
        if (actual.isEmpty()) {
            throw failure("expected a packing of %d pieces but found none", pieces.size());
        }
        List<Spot> spots = actual.get();
        if (spots.size() != pieces.size()) {
            failWithMessage("expected %d spots but found %s", pieces.size(), spots);
        }
        for (int bay = 0; bay < bays.size(); bay++) {
            List<Item> there = new ArrayList<>();
            for (Standing s : standing) {
                if (s.bay() == bay) {
                    there.add(new Item(s.round(), s.xMm(), s.yMm(), s.widthMm(), s.depthMm()));
                }
            }
            for (int i = 0; i < spots.size(); i++) {
                if (spots.get(i).bay() == bay) {
                    Item item = item(pieces.get(i), spots.get(i));
                    if (!PlainSpotFinder.fits(bays.get(bay).widthMm(), bays.get(bay).depthMm(), gap, wallGap, there, item)) {
                        failWithMessage("piece %d may not stand at %s beside %s", i, item, there);
                    }
                    there.add(item);
                }
            }
        }
        for (int i = 0; i < spots.size(); i++) {
            if (spots.get(i).bay() < 0 || spots.get(i).bay() >= bays.size()
                    || spots.get(i).turned() && !pieces.get(i).mayTurn()) {
                failWithMessage("piece %d has the impossible spot %s", i, spots.get(i));
            }
        }
        return this;
    }

    private static Item item(Piece piece, Spot spot) {
        return new Item(piece.round(), spot.xMm(), spot.yMm(), spot.turned() ? piece.depthMm() : piece.widthMm(),
                spot.turned() ? piece.widthMm() : piece.depthMm());
    }
}
