package crumbclock.report.svg;

/** Hatchings, defined once in a page and named by all its drawings, so that nothing depends on colour alone. */
public final class Patterns {

    private Patterns() {
    }

    /** An invisible drawing that holds the definitions; goes before the first drawing that uses them. */
    public static String definitions() {
        var svg = new Svg("0", "0", "0 0 1 1", "defs", "patterns");
        svg.open("defs");
        hatch(svg, "p-off", 7, 45, "#c9c4ba", 1.2);
        hatch(svg, "p-break", 5, 135, "#a49d90", 1.2);
        hatch(svg, "p-heat", 5, 45, "#a5501f", 1.6);
        hatch(svg, "p-clean", 4, 0, "#4b6b86", 1);
        // the drawings to scale count in millimetres, about half a pixel each
        hatch(svg, "p-goods", 22, 45, "#8b8377", 3.2);
        svg.open("pattern", "id", "p-stock", "width", 6.0, "height", 6.0, "patternUnits", "userSpaceOnUse")
                .leaf("rect", "width", 6.0, "height", 6.0, "fill", "#f3f0e9")
                .leaf("path", "d", "M0 0L6 6M6 0L0 6", "stroke", "#a49d90", "stroke-width", 0.8)
                .close("pattern");
        svg.close("defs");
        return svg.end();
    }

    private static void hatch(Svg svg, String id, double step, double degrees, String colour, double strokeWidth) {
        svg.open("pattern", "id", id, "width", step, "height", step, "patternUnits", "userSpaceOnUse",
                        "patternTransform", "rotate(" + Svg.number(degrees) + ")")
                .leaf("rect", "width", step, "height", step, "fill", "#f6f3ec")
                .leaf("line", "x1", 0.0, "y1", 0.0, "x2", 0.0, "y2", step, "stroke", colour, "stroke-width",
                        strokeWidth)
                .close("pattern");
    }

    /** Class that tints a thing of one order; a batch, which belongs to several, has its own. */
    public static String tint(int orderIndex) {
        return orderIndex < 0 ? "tb" : "t" + orderIndex % 8;
    }
}
