package crumbclock.report.svg;

import crumbclock.domain.work.Footprint;

/** Outlines that several drawings share. */
final class Shapes {

    private Shapes() {
    }

    /** A circle or rectangle whose surrounding box has its upper left corner at the point. */
    static void footprint(Svg svg, Footprint footprint, double x, double y, String cssClass) {
        if (footprint.round()) {
            double radius = footprint.widthMm() / 2.0;
            svg.leaf("circle", "cx", x + radius, "cy", y + radius, "r", radius, "class", cssClass);
        } else {
            svg.leaf("rect", "x", x, "y", y, "width", (double) footprint.widthMm(), "height",
                    (double) footprint.depthMm(), "class", cssClass);
        }
    }
}
