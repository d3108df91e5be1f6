package crumbclock.report.view;

import crumbclock.domain.plan.LowerBound;
import crumbclock.domain.plan.LowerBound.OrderBound;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.PlacedStep;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How far a plan is from what no plan can beat, in plain sentences; nothing for a plan that is not sound. */
public final class BoundWords {

    private final PlanView view;
    private final Optional<LowerBound> bound;
    /** A plan made during the day is compared with others that go on from there. */
    private final String noPlan;

    public BoundWords(PlanView view) {
        this.view = view;
        noPlan = view.problem().kept().isNone() ? "no plan" : "no plan from now on";
        bound = view.plan().isSound() ? view.plan().bound() : Optional.empty();
    }

    /** One sentence on lateness and one on the end of the work; empty when nothing is known or nothing is planned. */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        var steps = view.plan().timetable().steps();
        if (bound.isPresent() && !view.plan().timetable().outcomes().isEmpty()) {
            sentences.add(lateness(bound.get()));
            if (!steps.isEmpty()) {
                sentences.add(end(bound.get(), steps.stream().mapToInt(PlacedStep::end).max().orElse(0)));
            }
        }
        return sentences;
    }

    private String lateness(LowerBound least) {
        var outcomes = view.plan().timetable().outcomes();
        int late = outcomes.stream().filter(Outcome::possible).mapToInt(Outcome::lateMinutes).sum();
        boolean allMade = outcomes.stream().allMatch(Outcome::possible);
        if (view.plan().mediumCost() <= least.medium()) {
            return late == 0 && allMade ? "Nothing is late, and nothing can be better there."
                    : (late == 0 ? "Not every order can be made" : ClockText.duration(late) + " late in all")
                            + ", and " + noPlan + " can do better.";
        }
        if (late <= least.lateMinutes()) {
            return late == 0 ? "Nothing that is made is late; whether more could be made is not known."
                    : ClockText.duration(late) + " late in all; " + noPlan + withThese() + " can be less.";
        }
        return least.lateMinutes() == 0
                ? ClockText.duration(late) + " late in all; it is not proven that anything has to be late."
                : "N" + noPlan.substring(1) + withThese() + " can be less than " + ClockText.duration(least.lateMinutes())
                        + " late in all; this one is " + ClockText.duration(late) + ".";
    }

    private String end(LowerBound least, int end) {
        return end <= least.endMinute() ? "The work ends " + view.clock().dayTime(end) + "; " + noPlan + withThese() + " can end before."
                : "N" + noPlan.substring(1) + withThese() + " can end before " + view.clock().dayTime(least.endMinute()) + "; this one ends "
                        + view.clock().timeSeenFrom(least.endMinute(), end) + ".";
    }

    private String withThese() {
        return view.plan().timetable().outcomes().stream().allMatch(Outcome::possible) ? "" : " with these orders";
    }

    /** For an order that is late or not made: what holds for it, whatever the others do. */
    public Optional<String> sentence(Outcome outcome) {
        if (outcome.possible() && outcome.lateMinutes() == 0) {
            return Optional.empty();
        }
        return bound.stream().flatMap(least -> least.orders().stream())
                .filter(one -> one.orderId().equals(outcome.orderId())).findFirst()
                .flatMap(one -> outcome.possible() ? Optional.of(late(one)) : notMade(one));
    }

    private String late(OrderBound least) {
        return "cannot be ready before " + view.clock().dayTime(least.readyMinute()) + ", whatever else waits"
                + (least.lateMinutes() > 0 ? ": at least " + ClockText.duration(least.lateMinutes()) + " late" : "");
    }

    private Optional<String> notMade(OrderBound least) {
        String any = "cannot be made by any plan" + noPlan.substring("no plan".length());
        return least.possible() ? Optional.empty() : Optional.of(any + ", whatever else waits");
    }
}
