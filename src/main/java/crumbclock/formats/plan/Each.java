package crumbclock.formats.plan;

import crumbclock.formats.json.Spot;
import java.util.ArrayList;
import java.util.List;

/** Turns one entry of a list at its place. */
interface Each<T, R> {

    R turn(Spot spot, T entry);

    /** Turns all entries of the list at {@code spot}. */
    static <T, R> List<R> of(Spot spot, List<T> entries, Each<? super T, ? extends R> each) {
        List<R> turned = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            turned.add(each.turn(spot.child(i), entries.get(i)));
        }
        return turned;
    }
}
