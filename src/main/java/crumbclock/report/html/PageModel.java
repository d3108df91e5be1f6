package crumbclock.report.html;

import crumbclock.domain.kitchen.Rack;
import crumbclock.domain.day.DayNews;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.Outcome;
import crumbclock.report.svg.DayDrawing;
import crumbclock.report.svg.Patterns;
import crumbclock.report.svg.RackDrawing;
import crumbclock.report.svg.Scale;
import crumbclock.report.svg.ShelfDrawing;
import crumbclock.report.view.BoundWords;
import crumbclock.report.view.OvenMoment;
import crumbclock.report.view.PlanView;
import crumbclock.report.view.RunSheets;
import crumbclock.report.view.ShelfStretch;
import freemarker.core.TemplateHTMLOutputModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Everything the templates of the page may use, by name. */
final class PageModel {

    private final PlanView view;
    private final DayNews news;
    private final Scale scale;

    PageModel(PlanView view) {
        this(view, null);
    }

    /** @param news what a plan made during the day changes; null for any other plan */
    PageModel(PlanView view, DayNews news) {
        this.news = news;
        this.view = view;
        var kitchen = view.problem().kitchen();
        this.scale = Scale.forWidest(Stream.concat(
                        kitchen.stores().stream().flatMap(store -> store.shelves().stream()).map(one -> one.widthMm()),
                        kitchen.cavities().stream().flatMap(one -> one.racks().stream()).map(one -> one.widthMm()))
                .max(Integer::compare).orElse(0));
    }

    Map<String, Object> values() {
        var problem = view.problem();
        var outcomes = view.plan().timetable().outcomes();
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("title", problem.title());
        values.put("kitchen", problem.kitchen().name());
        values.put("from", view.clock().dateTime(0));
        values.put("until", view.clock().dateTime(problem.clock().horizonMinutes()));
        values.put("zone", problem.clock().zone().getId());
        values.put("seed", view.plan().search().seed());
        values.put("schedules", view.plan().search().schedules());
        var findings = view.plan().findings().stream().filter(one -> news == null || !news.inFact().contains(one)).toList();
        values.put("sound", findings.isEmpty());
        values.put("bound", new BoundWords(view).sentences());
        values.put("findings", findings.stream().map(this::finding).toList());
        if (news != null) {
            values.put("news", NewsBlock.of(view, news));
        }
        values.put("lateCount", outcomes.stream().filter(one -> one.possible() && one.lateMinutes() > 0).count());
        values.put("impossibleCount", outcomes.stream().filter(one -> !one.possible()).count());
        values.put("onTimeCount", outcomes.stream().filter(PageModel::isOnTime).count());
        values.put("orders", OrderCard.of(view));
        values.put("patterns", Templates.markup(Patterns.definitions()));
        values.put("days", days());
        values.put("sheets", RunSheets.of(view));
        values.put("scale", scale.times());
        values.put("ovens", ovens());
        values.put("stores", stores());
        values.put("cost", CostRow.of(view.plan()));
        values.put("mediumCost", view.plan().mediumCost());
        values.put("softCost", view.plan().softCost());
        values.put("allergens", AllergenRow.of(view));
        values.put("coldLimits", problem.coldLimits().stream()
                .map(limit -> new ColdRow(view.ownerLabel(limit.ownerId()), limit.name(), limit.mostMinutesOut()))
                .toList());
        return values;
    }

    private static boolean isOnTime(Outcome outcome) {
        return outcome.possible() && outcome.lateMinutes() == 0;
    }

    /** A broken rule as a line of the page. */
    public record FindingRow(String rule, String title, String place, String when, String message, String items) {
    }

    private FindingRow finding(Finding finding) {
        return new FindingRow(finding.rule().name(), finding.rule().title(), finding.place(),
                view.clock().daySpan(finding.when()), finding.message(), String.join(", ", finding.items()));
    }

    /** A cold chain's limit. */
    public record ColdRow(String owner, String name, int mostMinutes) {
    }

    /** One day of the timetable; no panels when nothing is to be done. */
    public record DayBlock(String title, List<PanelBlock> panels) {
    }

    /** One drawing of a day. */
    public record PanelBlock(String times, TemplateHTMLOutputModel svg) {
    }

    private List<DayBlock> days() {
        List<DayBlock> days = new ArrayList<>();
        for (var day : view.problem().clock().days()) {
            List<PanelBlock> panels = new ArrayList<>();
            for (var panel : DayDrawing.draw(view, day)) {
                panels.add(new PanelBlock(panel.times(), Templates.markup(panel.svg())));
            }
            // midnight itself may not exist on the day of a clock change; noon always does
            days.add(new DayBlock(view.clock().longDay(day.start() + day.minutes() / 2), panels));
        }
        return days;
    }

    /** One cavity with all its moments. */
    public record OvenBlock(String name, List<OvenRow> moments) {
    }

    /** What is in a cavity between two changes. */
    public record OvenRow(int number, String when, String heat, List<String> bakes, List<RackBlock> racks,
            String emptyRacks, String paperWidth) {
    }

    /** A rack with pans. */
    public record RackBlock(int number, TemplateHTMLOutputModel svg) {
    }

    private List<OvenBlock> ovens() {
        var moments = OvenMoment.of(view);
        List<OvenBlock> ovens = new ArrayList<>();
        for (var cavity : view.problem().kitchen().cavities()) {
            List<OvenRow> rows = new ArrayList<>();
            for (var moment : moments) {
                if (moment.cavity().id().equals(cavity.id())) {
                    rows.add(oven(moment));
                }
            }
            ovens.add(new OvenBlock(cavity.name(), rows));
        }
        return ovens;
    }

    private OvenRow oven(OvenMoment moment) {
        var clock = view.clock();
        String heat = moment.run().map(run -> run.temperatureC() + " °C, "
                + (run.readyAt() > run.from() ? "heating from " + clock.timeSeenFrom(moment.when().start(), run.from())
                        + ", ready " + clock.timeSeenFrom(moment.when().start(), run.readyAt()) : "already hot"))
                .orElse("no heat planned");
        List<String> bakes = moment.bakes().stream().map(bake -> view.ownerLabel(view.ownerId(bake.stepId())) + " "
                + view.stepName(bake.stepId()) + ": in " + clock.timeSeenFrom(moment.when().start(), bake.start())
                + ", out " + clock.timeSeenFrom(moment.when().start(), bake.end())).toList();
        List<RackBlock> racks = new ArrayList<>();
        List<String> empty = new ArrayList<>();
        for (int rack = 0; rack < moment.cavity().racks().size(); rack++) {
            int index = rack;
            if (moment.pans().stream().anyMatch(pan -> pan.place().rack() == index)) {
                racks.add(new RackBlock(rack + 1, Templates.markup(RackDrawing.draw(view, scale, moment, rack))));
            } else {
                empty.add(Integer.toString(rack + 1));
            }
        }
        return new OvenRow(moment.number(), clock.daySpan(moment.when()), heat, bakes, racks,
                String.join(", ", empty), scale.paperWidth(moment.cavity().racks().stream().mapToInt(Rack::widthMm)
                        .max().orElse(0)));
    }

    /** A store with its shelves from the top down. */
    public record StoreBlock(String name, List<ShelfBlock> shelves) {
    }

    /** One shelf with all its stretches. */
    public record ShelfBlock(String name, int widthMm, int depthMm, int clearHeightMm, String freeFrom,
            String paperWidth, List<StretchRow> stretches) {
    }

    /** What stands on a shelf between two changes. */
    public record StretchRow(int number, String when, int freePercent, int tallestMm, List<ItemRow> items,
            List<String> goods, TemplateHTMLOutputModel svg) {
    }

    /** One thing on a shelf. */
    public record ItemRow(String label, String name, String form, String size, String when, boolean cameIn,
            boolean goesOut, int tint) {
    }

    private List<StoreBlock> stores() {
        var stretches = ShelfStretch.of(view);
        List<StoreBlock> stores = new ArrayList<>();
        for (var store : view.problem().kitchen().stores()) {
            List<ShelfBlock> shelves = new ArrayList<>();
            for (var shelf : store.shelves()) {
                List<StretchRow> rows = new ArrayList<>();
                for (var stretch : stretches) {
                    if (stretch.store().id().equals(store.id()) && stretch.shelf().id().equals(shelf.id())) {
                        rows.add(stretch(stretch));
                    }
                }
                shelves.add(new ShelfBlock(shelf.name(), shelf.widthMm(), shelf.depthMm(), shelf.clearHeightMm(),
                        String.join(", ", shelf.freeFrom()), scale.paperWidth(shelf.widthMm()), rows));
            }
            stores.add(new StoreBlock(store.name(), shelves));
        }
        return stores;
    }

    private StretchRow stretch(ShelfStretch stretch) {
        var items = stretch.items().stream().map(this::item).toList();
        var goods = stretch.goods().stream().map(one -> one.name() + " " + one.widthMm() + " × " + one.depthMm()
                + ", " + one.heightMm() + " mm high").toList();
        return new StretchRow(stretch.number(), view.clock().daySpan(stretch.when()), stretch.freePercent(),
                stretch.tallestMm(), items, goods, Templates.markup(ShelfDrawing.draw(view, scale, stretch)));
    }

    private ItemRow item(ShelfStretch.Item item) {
        var place = item.placement();
        var foot = item.footprint();
        String size = (foot.round() ? "ø " + foot.widthMm() : foot.widthMm() + " × " + foot.depthMm()) + ", "
                + item.form().heightMm() + " mm high";
        return new ItemRow(item.label(), view.stepName(place.stepId()), item.form().name(), size,
                view.clock().daySpan(place.when()), item.cameIn(), item.goesOut(),
                view.orderIndex(view.ownerId(place.stepId())));
    }
}
