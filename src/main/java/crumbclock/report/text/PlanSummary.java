package crumbclock.report.text;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.CostLine;
import crumbclock.domain.plan.Finding;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.report.view.BoundWords;
import crumbclock.report.view.ClockText;
import crumbclock.report.view.FindingWords;
import crumbclock.report.view.PlanView;
import crumbclock.report.view.ShelfStretch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What matters of a plan on one screen. Orders beyond the most that are listed are counted; the late and the not
 * possible ones are always among the listed.
 */
public final class PlanSummary {

    private static final int MOST_ORDERS = 12;
    private static final int MOST_FINDINGS = 5;
    private static final int MOST_PEOPLE = 6;
    private static final int MOST_REASONS = 2;
    private static final int TITLE = 30;

    private final PlanView view;
    private final BoundWords bound;
    private final List<String> lines = new ArrayList<>();

    private final List<Finding> inFact;

    private PlanSummary(PlanView view, List<Finding> inFact) {
        this.view = view;
        bound = new BoundWords(view);
        this.inFact = inFact;
    }

    /** @return lines that end with a line feed each, free of control characters from people's texts */
    public static String render(Problem problem, Plan plan) {
        return render(problem, plan, List.of());
    }

    /**
     * The same for a plan made during the day.
     *
     * @param inFact findings that what happened has caused and that are told elsewhere
     */
    public static String render(Problem problem, Plan plan, List<Finding> inFact) {
        return new PlanSummary(new PlanView(problem, plan), inFact).render();
    }

    private String render() {
        var problem = view.problem();
        line(problem.title() + ", " + problem.kitchen().name());
        line(view.clock().dateTime(0) + " to " + view.clock().dateTime(problem.clock().horizonMinutes()) + " ("
                + problem.clock().zone().getId() + ")");
        verdict();
        orders();
        people();
        shelf();
        cost();
        return String.join("\n", lines) + "\n";
    }

    private void line(String text) {
        lines.add(TerminalText.line(text));
    }

    private void verdict() {
        var findings = view.plan().findings().stream().filter(one -> !inFact.contains(one)).toList();
        if (findings.isEmpty()) {
            line(inFact.isEmpty() ? "Sound: the audit found no broken rule."
                    : "Sound from now on: the audit found no broken rule but " + inFact.size() + " that what happened has broken.");
            bound.sentences().forEach(this::line);
            return;
        }
        line("NOT SOUND: the audit found " + findings.size() + " broken rule" + (findings.size() == 1 ? "" : "s") + ".");
        findings.stream().limit(MOST_FINDINGS).forEach(one -> line("  " + FindingWords.sentence(view.clock(), one)));
        if (findings.size() > MOST_FINDINGS) {
            line("  and " + (findings.size() - MOST_FINDINGS) + " more");
        }
    }

    private void orders() {
        line("");
        line(format("%-6s %-30s %-10s %-10s %-12s %s", "order", "", "ready", "hand-over", "buffer", "late"));
        // a stable sort: the late and the not possible ones first only when not all can be listed
        var all = view.problem().orders();
        var listed = all.size() <= MOST_ORDERS ? all
                : all.stream().sorted(Comparator.comparing(this::isFine)).limit(MOST_ORDERS).toList();
        listed.forEach(this::order);
        if (listed.size() < all.size()) {
            var rest = all.stream().filter(order -> !listed.contains(order)).toList();
            long bad = rest.stream().filter(order -> !isFine(order)).count();
            line("and " + rest.size() + " more, " + (bad == 0 ? "all on time" : bad + " of them late or not possible"));
        }
    }

    private Optional<Outcome> outcome(Order order) {
        return view.plan().timetable().outcomes().stream().filter(one -> one.orderId().equals(order.id())).findFirst();
    }

    private boolean isFine(Order order) {
        return outcome(order).filter(one -> one.possible() && one.lateMinutes() == 0).isPresent();
    }

    private void order(Order order) {
        var found = outcome(order);
        String title = TerminalText.plain(order.title());
        String name = format("%-6s %-30s ", order.id(), title.length() > TITLE ? title.substring(0, TITLE - 1) + "…"
                : title);
        if (found.isEmpty() || !found.get().possible()) {
            line(name + "not possible");
        } else {
            var outcome = found.get();
            line(name + format("%-10s %-10s %-12s %s", view.clock().dayTime(outcome.readyMinute()),
                    view.clock().dayTime(outcome.handMinute()), ClockText.duration(outcome.bufferMinutes()),
                    outcome.lateMinutes() == 0 ? "-" : "LATE " + ClockText.duration(outcome.lateMinutes())));
        }
        found.flatMap(bound::sentence).ifPresent(sentence -> line("       " + sentence));
        found.map(Outcome::reasons).orElse(List.of()).stream().limit(MOST_REASONS)
                .forEach(reason -> line("       " + reason.rule() + " " + reason.rule().title() + ": "
                        + reason.message()));
    }

    private void people() {
        line("");
        line("Hands");
        var people = view.problem().kitchen().people();
        for (Person person : people.subList(0, Math.min(people.size(), MOST_PEOPLE))) {
            line(format("  %-14s %s", person.name(), ClockText.duration(view.handsMinutes(person.id()))));
        }
        if (people.size() > MOST_PEOPLE) {
            line("  and " + (people.size() - MOST_PEOPLE) + " more people");
        }
    }

    private void shelf() {
        var fullest = ShelfStretch.of(view).stream().min(Comparator.comparingInt(ShelfStretch::freePercent));
        line("Fullest shelf");
        line(fullest.map(one -> "  " + one.store().name() + " " + one.shelf().name() + ": " + one.freePercent()
                + " % of the floor free, " + view.clock().daySpan(one.when())).orElse("  no shelf is used"));
    }

    private void cost() {
        var cost = view.plan().cost().stream().filter(one -> one.points() > 0).toList();
        line("Cost" + (cost.isEmpty() ? ": none" : ""));
        for (CostLine line : cost) {
            line(format("  %-9s %-32s %12d%s", line.name(), line.name().equals(line.title()) ? "" : line.title(),
                    line.points(), line.medium() ? "  counts first" : ""));
        }
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
