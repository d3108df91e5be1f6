package crumbclock.app.promise;

import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Timetable;
import crumbclock.domain.plan.TouchEnd;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Where two timetables begin to differ for the people who work by them. */
final class PlanDifference {

    private PlanDifference() {
    }

    /** What people see of one step. Which of several like pieces it takes is no difference. */
    private record Seen(PlacedStep step, List<PersonWork> work, String place, List<Spot> spots, List<PanPlace> pans, String putIn, String takeOut) {

        boolean beginsLike(Seen other) {
            return step.start() == other.step.start() && work.equals(other.work) && place.equals(other.place) && spots.equals(other.spots)
                    && pans.equals(other.pans) && putIn.equals(other.putIn);
        }

        boolean endsLike(Seen other) {
            return step.end() == other.step.end() && takeOut.equals(other.takeOut);
        }
    }

    private record Spot(int piece, String storeId, String shelfId, int x, int y, boolean turned) {
    }

    /** The first minute at which somebody does, or something stands, otherwise; {@code none} when the two are alike. */
    static int first(Timetable known, Timetable other, int none) {
        Map<String, Seen> before = seen(known);
        Map<String, Seen> after = seen(other);
        int first = none;
        for (Map.Entry<String, Seen> entry : before.entrySet()) {
            Seen then = entry.getValue();
            Seen now = after.get(entry.getKey());
            if (now == null) {
                first = Math.min(first, then.step.start());
            } else if (!then.beginsLike(now)) {
                first = Math.min(first, Math.min(then.step.start(), now.step.start()));
            } else if (!then.endsLike(now)) {
                first = Math.min(first, Math.min(then.step.end(), now.step.end()));
            }
        }
        for (Map.Entry<String, Seen> entry : after.entrySet()) {
            if (!before.containsKey(entry.getKey())) {
                first = Math.min(first, entry.getValue().step.start());
            }
        }
        return first;
    }

    private static Map<String, Seen> seen(Timetable timetable) {
        Map<String, List<PlacedTouch>> touches = by(timetable.touches(), PlacedTouch::stepId);
        Map<String, List<Placement>> placements = by(timetable.placements(), Placement::stepId);
        Map<String, List<PanPlace>> pans = by(timetable.pans(), PanPlace::stepId);
        Map<String, Seen> seen = new LinkedHashMap<>();
        for (PlacedStep step : timetable.steps()) {
            String id = step.stepId();
            seen.put(id, new Seen(step, step.work(), step.surfaceId() + "/" + step.cavityId(),
                    placements.getOrDefault(id, List.of()).stream().map(one -> new Spot(one.piece(), one.storeId(), one.shelfId(), one.xMm(),
                            one.yMm(), one.turned())).toList(), pans.getOrDefault(id, List.of()),
                    toucher(touches, id, TouchEnd.PUT_IN), toucher(touches, id, TouchEnd.TAKE_OUT)));
        }
        return seen;
    }

    private static String toucher(Map<String, List<PlacedTouch>> touches, String stepId, TouchEnd at) {
        return touches.getOrDefault(stepId, List.of()).stream().filter(one -> one.at() == at).map(PlacedTouch::personId).findFirst().orElse("");
    }

    private static <T> Map<String, List<T>> by(List<T> all, Function<T, String> id) {
        Map<String, List<T>> by = new LinkedHashMap<>();
        for (T one : all) {
            by.computeIfAbsent(id.apply(one), key -> new ArrayList<>()).add(one);
        }
        return by;
    }
}
