package crumbclock.formats.csv;

import crumbclock.domain.kitchen.Goods;
import crumbclock.domain.kitchen.Shelf;
import crumbclock.domain.kitchen.Store;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The fridge-loading plan as a table for spreadsheets: one row for each piece that stands on a shelf, and one for each
 * thing that is not part of the plan; store by store and shelf by shelf as the kitchen lists them, then by time.
 * Lengths in mm from the shelf's front left corner; width and depth as the thing stands, turned or not.
 */
public final class FridgeCsv {

    private static final List<String> HEADER = List.of("store", "shelf", "from", "until", "from_minute",
            "until_minute", "kind", "orders", "item", "title", "step_id", "step", "piece", "form", "x_mm", "y_mm",
            "width_mm", "depth_mm", "height_mm", "mass_g", "round", "turned", "sound");

    private final Problem problem;
    private final Plan plan;
    private final OutCells cells;

    private FridgeCsv(Problem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        this.cells = new OutCells(problem);
    }

    /** @return RFC 4180 text with a header, ends of lines CR LF */
    public static String write(Problem problem, Plan plan) {
        return new FridgeCsv(problem, plan).write();
    }

    private String write() {
        List<List<Object>> rows = new ArrayList<>();
        for (Store store : problem.kitchen().stores()) {
            for (Shelf shelf : store.shelves()) {
                plan.timetable().placements().stream()
                        .filter(one -> one.storeId().equals(store.id()) && one.shelfId().equals(shelf.id()))
                        .sorted(Comparator.comparing(Placement::when).thenComparing(Placement::stepId)
                                .thenComparing(Placement::piece))
                        .forEach(one -> rows.add(row(store, shelf, one)));
                shelf.goods().forEach(goods -> rows.add(row(store, shelf, goods)));
            }
        }
        return OutCells.table(HEADER, rows);
    }

    private List<Object> row(Store store, Shelf shelf, Placement place) {
        Optional<Step> step = problem.steps().stream().filter(one -> one.id().equals(place.stepId())).findFirst();
        Optional<Form> form = step.flatMap(Step::place).map(need -> need.form());
        String owner = step.map(Step::ownerId).orElse("");
        List<Object> row = start(store, shelf, place.when(), "plan");
        row.addAll(List.of(cells.orders(owner), owner, cells.title(owner), place.stepId(),
                step.map(Step::name).orElse(""), place.piece() + 1, form.map(Form::name).orElse(""), place.xMm(),
                place.yMm()));
        var footprint = form.map(one -> place.turned() ? one.footprint().turned() : one.footprint());
        row.add(footprint.<Object>map(one -> one.widthMm()).orElse(""));
        row.add(footprint.<Object>map(one -> one.depthMm()).orElse(""));
        row.add(form.<Object>map(Form::heightMm).orElse(""));
        row.add(form.<Object>map(Form::massGrams).orElse(""));
        row.add(footprint.map(one -> yesNo(one.round())).orElse(""));
        row.add(yesNo(place.turned()));
        row.add(yesNo(plan.isSound()));
        return row;
    }

    private List<Object> row(Store store, Shelf shelf, Goods goods) {
        List<Object> row = start(store, shelf, goods.when(), "goods");
        row.addAll(List.of("", "", goods.name(), "", "", "", "", goods.xMm(), goods.yMm(), goods.widthMm(),
                goods.depthMm(), goods.heightMm(), goods.massGrams(), yesNo(false), yesNo(false),
                yesNo(plan.isSound())));
        return row;
    }

    private List<Object> start(Store store, Shelf shelf, Span when, String kind) {
        return new ArrayList<>(List.of(store.id(), shelf.id(), cells.time(when.start()), cells.time(when.end()),
                when.start(), when.end(), kind));
    }

    private static String yesNo(boolean value) {
        return value ? "yes" : "no";
    }
}
