package crumbclock.report.svg;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Rack;
import crumbclock.report.view.OvenMoment;
import crumbclock.report.view.PlaceWords;
import crumbclock.report.view.PlanView;

/** One rack of an oven cavity from above, the door at the bottom, the air along the walls as a dashed line. */
public final class RackDrawing {

    private static final double PAD = Scale.MARGIN;

    private RackDrawing() {
    }

    /** @param rackIndex index into the cavity's racks */
    public static String draw(PlanView view, Scale scale, OvenMoment moment, int rackIndex) {
        Cavity cavity = moment.cavity();
        Rack rack = cavity.racks().get(rackIndex);
        double small = scale.letters(2.2);
        double width = rack.widthMm() + 2 * PAD;
        double height = rack.depthMm() + small * 1.8 + 2 * PAD;
        var svg = new Svg(scale.paper(width), scale.paper(height), Svg.number(-PAD) + " " + Svg.number(-PAD) + " "
                + Svg.number(width) + " " + Svg.number(height), "plan-drawing",
                cavity.name() + ", rack " + (rackIndex + 1) + " from above");
        svg.leaf("rect", "x", 0.0, "y", 0.0, "width", (double) rack.widthMm(), "height", (double) rack.depthMm(),
                "class", "floor");
        double gap = cavity.wallGapMm();
        if (2 * gap < Math.min(rack.widthMm(), rack.depthMm())) {
            svg.leaf("rect", "x", gap, "y", gap, "width", rack.widthMm() - 2 * gap, "height",
                    rack.depthMm() - 2 * gap, "class", "wall-gap");
        }
        moment.pans().stream().filter(pan -> pan.place().rack() == rackIndex)
                .forEach(pan -> pan(svg, view, scale, rack, pan));
        svg.leaf("line", "x1", 0.0, "y1", (double) rack.depthMm(), "x2", (double) rack.widthMm(), "y2",
                (double) rack.depthMm(), "class", "front-edge");
        svg.open("g", "font-size", small, "text-anchor", "middle").text(rack.widthMm() / 2.0,
                rack.depthMm() + small * 1.5, "quiet", "▲ front (door)").close("g");
        return svg.end();
    }

    private static void pan(Svg svg, PlanView view, Scale scale, Rack rack, OvenMoment.PanIn pan) {
        var foot = PlaceWords.standing(pan.pan().footprint(), pan.place().turned());
        double top = rack.depthMm() - pan.place().yMm() - foot.depthMm();
        double x = pan.place().xMm() + foot.widthMm() / 2.0;
        double middle = top + foot.depthMm() / 2.0;
        double small = scale.letters(2.2);
        double normal = scale.letters(2.9);
        int order = view.orderIndex(view.ownerId(pan.place().stepId()));
        svg.open("g", "class", "item " + Patterns.tint(order) + (pan.cameIn() ? " came-in" : "")
                + (pan.goesOut() ? " goes-out" : "")).title(pan.label());
        Shapes.footprint(svg, foot, pan.place().xMm(), top, "thing");
        svg.open("g", "font-size", normal, "text-anchor", "middle").text(x, middle - normal * 0.1, "strong",
                Fit.shorten(pan.label(), normal, foot.widthMm() + normal)).close("g");
        String flags = (pan.cameIn() ? "in ▲" : "") + (pan.cameIn() && pan.goesOut() ? " · " : "")
                + (pan.goesOut() ? "out ▼" : "");
        String size = foot.round() ? "ø " + foot.widthMm() : foot.widthMm() + " × " + foot.depthMm();
        svg.open("g", "font-size", small, "text-anchor", "middle").text(x, middle + small * 1.1, "plain", size)
                .text(x, middle + small * 2.3, "strong", flags).close("g").close("g");
    }
}
