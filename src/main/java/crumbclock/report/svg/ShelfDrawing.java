package crumbclock.report.svg;

import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.work.Footprint;
import crumbclock.report.view.PlanView;
import crumbclock.report.view.ShelfStretch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A shelf from above, its front edge at the bottom, and below it the same from the front with all heights. One
 * millimetre of the kitchen is one unit of the drawing.
 */
public final class ShelfDrawing {

    private static final double PAD = Scale.MARGIN;

    private final PlanView view;
    private final Scale scale;
    private final ShelfStretch stretch;
    private final Shelf shelf;
    private final double small;
    private final double normal;

    private ShelfDrawing(PlanView view, Scale scale, ShelfStretch stretch) {
        this.view = view;
        this.scale = scale;
        this.stretch = stretch;
        this.shelf = stretch.shelf();
        this.small = scale.letters(2.2);
        this.normal = scale.letters(2.9);
    }

    public static String draw(PlanView view, Scale scale, ShelfStretch stretch) {
        return new ShelfDrawing(view, scale, stretch).draw();
    }

    private String draw() {
        double frontText = small * 1.5;
        double sideTop = shelf.depthMm() + frontText + small * 1.4;
        double width = shelf.widthMm() + 2 * PAD;
        double height = sideTop + shelf.clearHeightMm() + frontText + 2 * PAD;
        var svg = new Svg(scale.paper(width), scale.paper(height), Svg.number(-PAD) + " " + Svg.number(-PAD) + " "
                + Svg.number(width) + " " + Svg.number(height), "plan-drawing",
                stretch.store().name() + ", " + shelf.name() + " from above and from the front");
        svg.leaf("rect", "x", 0.0, "y", 0.0, "width", (double) shelf.widthMm(), "height", (double) shelf.depthMm(),
                "class", "floor");
        stretch.goods().forEach(goods -> goodsFromAbove(svg, goods));
        stretch.items().forEach(item -> itemFromAbove(svg, item));
        svg.leaf("line", "x1", 0.0, "y1", (double) shelf.depthMm(), "x2", (double) shelf.widthMm(), "y2",
                (double) shelf.depthMm(), "class", "front-edge");
        svg.open("g", "font-size", small, "text-anchor", "middle")
                .text(shelf.widthMm() / 2.0, shelf.depthMm() + frontText, "quiet", "▲ front (door)").close("g");
        side(svg, sideTop);
        return svg.end();
    }

    private void goodsFromAbove(Svg svg, Goods goods) {
        double top = shelf.depthMm() - goods.yMm() - goods.depthMm();
        svg.open("g", "class", "goods").title(goods.name() + ", not part of the plan");
        svg.leaf("rect", "x", (double) goods.xMm(), "y", top, "width", (double) goods.widthMm(), "height",
                (double) goods.depthMm(), "fill", "url(#p-goods)");
        label(svg, List.of(), Fit.lines(goods.name(), small, goods.widthMm() * 0.94, 2),
                goods.xMm() + goods.widthMm() / 2.0, top + goods.depthMm() / 2.0);
        svg.close("g");
    }

    private void itemFromAbove(Svg svg, ShelfStretch.Item item) {
        var place = item.placement();
        var foot = item.footprint();
        double top = shelf.depthMm() - place.yMm() - foot.depthMm();
        svg.open("g", "class", "item " + tint(item) + (item.cameIn() ? " came-in" : "")
                + (item.goesOut() ? " goes-out" : ""));
        svg.title(item.label() + " " + item.form().name());
        Shapes.footprint(svg, foot, place.xMm(), top, "thing");
        double inner = foot.widthMm() * (foot.round() ? 0.84 : 0.94);
        var name = Fit.lines(view.stepName(place.stepId()), small, inner, foot.depthMm() > 5 * small ? 2 : 1);
        String flags = (item.cameIn() ? "in ▲" : "") + (item.cameIn() && item.goesOut() ? " · " : "")
                + (item.goesOut() ? "out ▼" : "");
        var bold = new ArrayList<>(List.of(Fit.shorten(item.label(), normal, inner + normal)));
        if (!flags.isEmpty() && foot.depthMm() > 4 * small) {
            bold.add(flags);
        }
        label(svg, bold, foot.depthMm() > 3.4 * small ? name : List.of(), place.xMm() + foot.widthMm() / 2.0,
                top + foot.depthMm() / 2.0);
        svg.close("g");
    }

    /** Lines one under another round a middle point: the bold ones first, at normal size, then the small ones. */
    private void label(Svg svg, List<String> bold, List<String> lines, double x, double middle) {
        double whole = bold.size() * normal * 1.1 + lines.size() * small * 1.1;
        double y = middle - whole / 2;
        svg.open("g", "text-anchor", "middle", "font-size", normal);
        for (String line : bold) {
            y += normal * 1.1;
            svg.text(x, y - normal * 0.22, "strong", line);
        }
        svg.close("g").open("g", "text-anchor", "middle", "font-size", small);
        for (String line : lines) {
            y += small * 1.1;
            svg.text(x, y - small * 0.22, "plain", line);
        }
        svg.close("g");
    }

    /** From the front: what stands at the back is drawn first, so that what is nearer covers it. */
    private void side(Svg svg, double top) {
        double clear = shelf.clearHeightMm();
        svg.leaf("rect", "x", 0.0, "y", top, "width", (double) shelf.widthMm(), "height", clear, "class", "air");
        stretch.goods().stream().sorted(Comparator.comparingInt(Goods::yMm).reversed()).forEach(goods ->
                svg.leaf("rect", "x", (double) goods.xMm(), "y", top + clear - goods.heightMm(), "width",
                        (double) goods.widthMm(), "height", (double) goods.heightMm(), "class", "goods-side",
                        "fill", "url(#p-goods)"));
        stretch.items().stream()
                .sorted(Comparator.comparingInt((ShelfStretch.Item item) -> item.placement().yMm()).reversed())
                .forEach(item -> itemFromFront(svg, item, top + clear));
        svg.leaf("line", "x1", 0.0, "y1", top + clear, "x2", (double) shelf.widthMm(), "y2", top + clear, "class",
                "front-edge");
        svg.open("g", "font-size", small, "text-anchor", "middle").text(shelf.widthMm() / 2.0,
                top + clear + small * 1.5, "quiet", "from the front, clear height " + shelf.clearHeightMm() + " mm")
                .close("g");
    }

    private void itemFromFront(Svg svg, ShelfStretch.Item item, double floor) {
        Footprint foot = item.footprint();
        double height = item.form().heightMm();
        svg.open("g", "class", "item " + tint(item)).leaf("rect", "x", (double) item.placement().xMm(), "y",
                floor - height, "width", (double) foot.widthMm(), "height", height, "class", "thing");
        if (height > small) {
            String text = item.label() + " " + item.form().heightMm() + " mm high";
            String fits = Fit.width(text, small) <= foot.widthMm() * 0.92 ? text
                    : Fit.shorten(item.label(), small, foot.widthMm());
            svg.open("g", "font-size", small, "text-anchor", "middle").text(item.placement().xMm()
                    + foot.widthMm() / 2.0, floor - small * 0.35, "plain", fits).close("g");
        }
        svg.close("g");
    }

    private String tint(ShelfStretch.Item item) {
        return Patterns.tint(view.orderIndex(view.ownerId(item.placement().stepId())));
    }
}
