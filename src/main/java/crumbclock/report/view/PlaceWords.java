package crumbclock.report.view;

import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.work.Footprint;
import java.util.ArrayList;
import java.util.List;

/** Says in words where something stands, as somebody would who points at it: "F2, left back". */
public final class PlaceWords {

    private PlaceWords() {
    }

    /**
     * Where a footprint's middle lies among the thirds of an area seen from its front edge. A thing that takes seven
     * tenths of the width or depth has no side there.
     *
     * @param xMm from the area's left edge to the footprint's left edge
     * @param yMm from the area's front edge to the footprint's front edge
     */
    public static String position(int xMm, int yMm, Footprint footprint, int areaWidthMm, int areaDepthMm) {
        String side = third(xMm, footprint.widthMm(), areaWidthMm, "left", "right");
        String depth = third(yMm, footprint.depthMm(), areaDepthMm, "front", "back");
        if (side.equals("whole") && depth.equals("whole")) {
            return "takes the whole area";
        }
        if (side.equals("whole")) {
            return depth.equals("middle") ? "across the middle" : "across the " + depth;
        }
        if (depth.equals("whole")) {
            return side;
        }
        return side.equals("middle") && depth.equals("middle") ? "middle" : side + " " + depth;
    }

    private static String third(int from, int length, int whole, String low, String high) {
        if (length * 10L >= whole * 7L) {
            return "whole";
        }
        long middleTwice = 2L * from + length;
        if (middleTwice * 3 < whole * 2L) {
            return low;
        }
        return middleTwice * 3 > whole * 4L ? high : "middle";
    }

    /** Footprint as it stands, turned or not. */
    public static Footprint standing(Footprint footprint, boolean turned) {
        return turned ? footprint.turned() : footprint;
    }

    /** {@code Fridge: F2, left back}; for several pieces one phrase each, equal ones said once. */
    public static String inStore(PlanView view, String stepId) {
        List<String> phrases = new ArrayList<>();
        for (Placement place : view.placements(stepId)) {
            String phrase = view.findShelf(place.storeId(), place.shelfId())
                    .map(shelf -> shelf.name() + ", " + positionOn(view, place, shelf)).orElse(place.shelfId());
            String whole = view.findStore(place.storeId()).map(store -> store.name() + ": ").orElse("") + phrase;
            if (!phrases.contains(whole)) {
                phrases.add(whole);
            }
        }
        return String.join("; ", phrases);
    }

    private static String positionOn(PlanView view, Placement place, Shelf shelf) {
        return view.findStep(place.stepId()).flatMap(step -> step.place())
                .map(need -> position(place.xMm(), place.yMm(), standing(need.form().footprint(), place.turned()),
                        shelf.widthMm(), shelf.depthMm()))
                .orElse("at " + place.xMm() + ", " + place.yMm() + " mm");
    }

    /** {@code Oven: rack 1, left back and right back}. */
    public static String inOven(PlanView view, String stepId) {
        List<String> phrases = new ArrayList<>();
        String oven = "";
        for (PanPlace pan : view.pans(stepId)) {
            var cavity = view.findCavity(pan.cavityId());
            var use = view.findStep(stepId).flatMap(step -> step.oven());
            if (cavity.isEmpty() || use.isEmpty() || pan.rack() >= cavity.get().racks().size()
                    || pan.pan() >= use.get().pans().size()) {
                continue;
            }
            var rack = cavity.get().racks().get(pan.rack());
            var footprint = standing(use.get().pans().get(pan.pan()).footprint(), pan.turned());
            oven = cavity.get().name();
            phrases.add("rack " + (pan.rack() + 1) + " "
                    + position(pan.xMm(), pan.yMm(), footprint, rack.widthMm(), rack.depthMm()));
        }
        return oven.isEmpty() ? "" : oven + ": " + String.join("; ", phrases);
    }
}
