package crumbclock.report.svg;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.report.view.ClockText;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * The time from the question to the hand-over, to scale: for each price how long a yes can wait and the earliest time, with the wished
 * time across. Hours without people and without any of these times are cut out.
 */
public final class PromiseStrip {

    private static final double LEFT = 176;
    private static final double TOP = 44;
    private static final double ROW = 56;
    private static final double FOOT = 26;
    private static final int ROOM = 30;
    private static final double LETTER = 7.2;

    private final PromiseAnswer answer;
    private final ClockText clock;
    private final ClockAxis axis;
    private final double right;
    private final double bottom;

    private PromiseStrip(PromiseAnswer answer) {
        this.answer = answer;
        this.clock = new ClockText(answer.asked().clock());
        this.axis = new ClockAxis(LEFT + 10, busy());
        this.right = axis.width() + 40;
        this.bottom = TOP + ROW * Math.max(1, answer.offers().size());
    }

    /**
     * One drawing.
     *
     * @param label a price in few words
     */
    public static String draw(PromiseAnswer answer, Function<Offer, String> label) {
        return new PromiseStrip(answer).drawn(label);
    }

    private List<Span> busy() {
        List<Integer> moments = new ArrayList<>(List.of(answer.now(), answer.wishedMinute()));
        for (Offer offer : answer.offers()) {
            offer.earliest().ifPresent(plan -> moments.add(plan.own().handMinute()));
            offer.lastYes().ifPresent(plan -> moments.add(plan.sayYesBy()));
        }
        int last = moments.stream().mapToInt(Integer::intValue).max().orElseThrow() + ROOM;
        List<Span> busy = new ArrayList<>();
        moments.forEach(minute -> busy.add(new Span(minute - ROOM / 2, minute + ROOM)));
        for (Person person : answer.asked().kitchen().people()) {
            for (Span shift : person.shifts()) {
                if (shift.end() > answer.now() && shift.start() < last) {
                    busy.add(new Span(Math.max(answer.now(), shift.start()), Math.min(last, shift.end())));
                }
            }
        }
        return busy;
    }

    private String drawn(Function<Offer, String> label) {
        String width = Svg.number(right);
        String height = Svg.number(bottom + FOOT);
        var svg = new Svg(width, height, "0 0 " + width + " " + height, "promise-strip",
                "From the question to the hand-over: how long a yes can wait, and the earliest times");
        axis.draw(svg, clock, TOP, bottom);
        line(svg, answer.now(), "asked", "asked " + clock.time(answer.now()));
        line(svg, answer.wishedMinute(), "wished", "wished " + clock.time(answer.wishedMinute()));
        for (int row = 0; row < answer.offers().size(); row++) {
            offer(svg, answer.offers().get(row), TOP + ROW * row, label);
        }
        return svg.end();
    }

    private void line(Svg svg, int minute, String cssClass, String text) {
        double x = axis.x(minute);
        svg.leaf("line", "x1", x, "y1", TOP - 2, "x2", x, "y2", bottom + 6, "class", "mark-" + cssClass);
        svg.text(Math.min(x - text.length() * LETTER / 2, right - text.length() * LETTER), bottom + 20, "strong", text);
    }

    private void offer(Svg svg, Offer offer, double top, Function<Offer, String> label) {
        svg.leaf("line", "x1", 0.0, "y1", top, "x2", right, "y2", top, "class", "lane-line");
        svg.text(0, top + 32, "strong", label.apply(offer));
        if (offer.earliest().isEmpty()) {
            svg.text(axis.x(answer.now()) + 8, top + 32, "quiet", offer.isProven() ? "none, proven" : "none found");
            return;
        }
        offer.lastYes().ifPresent(plan -> wait(svg, plan, top));
        hand(svg, offer, offer.earliest().get(), top);
    }

    /** From the question until a yes is needed. */
    private void wait(Svg svg, PromisedPlan plan, double top) {
        double from = axis.x(answer.now());
        double until = axis.x(plan.sayYesBy());
        svg.leaf("rect", "x", from, "y", top + 8, "width", Math.max(1.5, until - from), "height", 16.0, "class", "can-wait");
        svg.text(until + 6, top + 21, "", "yes by " + clock.timeSeenFrom(answer.now(), plan.sayYesBy()));
    }

    private void hand(Svg svg, Offer offer, PromisedPlan plan, double top) {
        double x = axis.x(plan.own().handMinute());
        double y = top + 40;
        svg.leaf("path", "d", "M" + Svg.number(x) + " " + Svg.number(y - 8) + " l8 8 l-8 8 l-8 -8 z", "class",
                offer.isProven() ? "earliest proven" : "earliest");
        String text = "earliest " + clock.time(plan.own().handMinute());
        svg.text(x - 14 - text.length() * LETTER, y + 5, "strong", text);
    }
}
