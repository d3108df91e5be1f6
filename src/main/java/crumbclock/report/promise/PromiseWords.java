package crumbclock.report.promise;

import crumbclock.domain.order.Order;
import crumbclock.domain.promise.Help;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.OrderEffect;
import crumbclock.domain.promise.PersonEffect;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.report.view.ClockText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** The answers in plain sentences. */
final class PromiseWords {

    private final PromiseAnswer answer;
    private final ClockText clock;

    PromiseWords(PromiseAnswer answer) {
        this.answer = answer;
        this.clock = new ClockText(answer.asked().clock());
    }

    ClockText clock() {
        return clock;
    }

    static String price(Price price) {
        return switch (price) {
            case NOBODY_WORSE -> "with nobody else worse off";
            case ALL_ON_TIME -> "with all others on time";
            case ANY_PRICE -> "whatever it costs the others";
        };
    }

    /** What the price means exactly. */
    static String meaning(Price price) {
        return switch (price) {
            case NOBODY_WORSE -> "no other order later, and none with a smaller buffer than in the plan that people have";
            case ALL_ON_TIME -> "each other order on time, or no later than it is already; buffers may shrink";
            case ANY_PRICE -> "others may be late, but none is given up";
        };
    }

    /** {@code C7 at Sat 11:00}. */
    String wish() {
        return answer.orderId() + " at " + clock.dayTime(answer.wishedMinute());
    }

    /** Yes or no, in one sentence. */
    String verdict() {
        if (answer.wished().isPresent()) {
            var toll = answer.wished().get().toll();
            return switch (toll.price()) {
                case NOBODY_WORSE -> "Yes. " + wish() + " can be promised, and nobody else is worse off.";
                case ALL_ON_TIME -> "Yes. No other order becomes late, but it takes from their buffers.";
                case ANY_PRICE -> "Only if others wait: with " + wish() + " promised, " + late(answer.wished().get()) + ".";
            };
        }
        if (isProvenTooEarly()) {
            return "No. No plan whatever can have " + wish() + (notBefore() < 0 ? ", or at all before the end."
                    : "; before " + clock.dayTime(notBefore()) + " it cannot be handed over.");
        }
        return answer.complete() ? "No plan was found that has " + wish() + "."
                : "Not found out: it was ended before a plan was found that has " + wish() + ".";
    }

    private boolean isProvenTooEarly() {
        return !answer.offers().isEmpty() && (notBefore() < 0 || notBefore() > answer.wishedMinute());
    }

    private int notBefore() {
        return answer.offers().get(0).notBefore();
    }

    /** {@code C1 is 12 min late and C3 5 min}. */
    private String late(PromisedPlan plan) {
        return plan.toll().orders().stream().filter(OrderEffect::isLater)
                .map(one -> one.orderId() + " is " + ClockText.duration(one.after().lateMinutes()) + " late")
                .collect(Collectors.joining(" and "));
    }

    /** What a plan costs the others, a sentence each; one sentence when it costs nothing. */
    List<String> costs(PromisedPlan plan) {
        List<String> costs = new ArrayList<>();
        for (OrderEffect one : plan.toll().orders()) {
            List<String> parts = new ArrayList<>();
            if (one.isLater()) {
                parts.add("is " + ClockText.duration(one.after().lateMinutes()) + " late");
            }
            if (one.hasLessBuffer() && one.after().bufferMinutes() >= 0) {
                parts.add("is ready " + signed(one.after().bufferMinutes()) + " before its hand-over instead of "
                        + signed(one.before().bufferMinutes())
                        + (one.isBelowWish() ? ", less than the " + ClockText.duration(one.bufferWish()) + " it wishes" : ""));
            }
            if (!parts.isEmpty()) {
                costs.add(one.orderId() + " " + String.join(" and ", parts) + ".");
            }
        }
        String moved = plan.toll().orders().stream().filter(one -> one.moved() > 0)
                .map(one -> one.orderId() + " " + one.moved() + (one.moved() == 1 ? " step" : " steps") + " (up to " + ClockText.duration(one.mostMoved()) + ")")
                .collect(Collectors.joining(", "));
        costs.add(moved.isEmpty() ? "No step of the others moves." : "Moved from where people know them: " + moved + ".");
        String people = plan.toll().people().stream().filter(one -> one.moved() > 0 || one.more() != 0).map(this::person)
                .collect(Collectors.joining("; "));
        if (!people.isEmpty()) {
            costs.add(people + ".");
        }
        return costs;
    }

    private String person(PersonEffect one) {
        String name = answer.asked().kitchen().people().stream().filter(person -> person.id().equals(one.personId()))
                .map(person -> person.name()).findFirst().orElse(one.personId());
        String more = one.more() == 0 ? "" : ClockText.duration(Math.abs(one.more())) + (one.more() > 0 ? " more" : " less") + " to do";
        String moved = one.moved() == 0 ? "" : one.moved() + (one.moved() == 1 ? " known thing" : " known things") + " at another time";
        return name + ": " + more + (more.isEmpty() || moved.isEmpty() ? "" : ", ") + moved;
    }

    /** The time, or that there is none. */
    String earliest(Offer offer) {
        return offer.earliest().map(plan -> clock.dayTime(plan.own().handMinute())).orElse(offer.isProven() ? "none, proven" : "none found");
    }

    /** What more there is to say of the earliest time of a price; may be empty. */
    String note(Offer offer) {
        if (offer.earliest().isEmpty()) {
            return "";
        }
        var plan = offer.earliest().get();
        String ready = "ready " + clock.timeSeenFrom(plan.own().handMinute(), plan.own().readyMinute());
        String late = plan.toll().price() == Price.ANY_PRICE ? "; " + late(plan) : "";
        return ready + (offer.isProven() ? ", proven the earliest" : "") + late;
    }

    /** How far all this can be trusted. */
    List<String> honesty() {
        List<String> sentences = new ArrayList<>();
        if (answer.offers().stream().anyMatch(offer -> !offer.isProven())) {
            sentences.add("Times are found by planning; where nothing else is said, earlier may be possible."
                    + (notBefore() < 0 ? "" : " It is proven that no plan can hand it over before " + clock.dayTime(notBefore()) + "."));
        }
        int wish = answer.order().bufferWishMinutes();
        if (wish > 0 && answer.offers().stream().anyMatch(offer -> offer.earliest().isPresent())) {
            sentences.add("Earliest times have no minute to spare: whoever wants the wished buffer of " + ClockText.duration(wish) + " promises that much later.");
        }
        return sentences;
    }

    /** Until when to say yes: {@code Sat 11:00: say yes by Fri 18:40}. */
    String lastYes(Offer offer) {
        return offer.lastYes().map(plan -> clock.dayTime(offer.kept()) + " " + price(offer.price()) + ": yes by "
                + clock.dayTime(plan.sayYesBy())).orElse("");
    }

    String help(Help help) {
        int hand = help.plan().own().handMinute();
        String gain = help.before().map(before -> ", " + ClockText.duration(before - hand) + " earlier than without").orElse("; without, no time was found");
        return clock.dayTime(hand) + " " + price(help.price()) + gain;
    }

    /** Of how many tries. */
    String helpIntro() {
        if (answer.tried() == 0) {
            return answer.complete() ? "Nothing was tried." : "Ended before anything was tried.";
        }
        String tried = answer.tried() + (answer.tried() == 1 ? " thing was tried" : " things were tried");
        return answer.helps().isEmpty() ? tried + "; none of them made an earlier time possible." : tried + "; these help, the most first:";
    }

    /** The plan that people would most likely follow: as wished, else the one that asks least of the others. */
    Optional<PromisedPlan> shown() {
        return answer.wished().or(() -> answer.offers().stream().flatMap(offer -> offer.earliest().stream()).findFirst());
    }

    String title(String orderId) {
        return answer.asked().orders().stream().filter(order -> order.id().equals(orderId)).map(Order::title).findFirst().orElse("");
    }

    /** Before and after, or one of them where they are alike. */
    String ready(OrderEffect one, String arrow) {
        if (!one.after().possible()) {
            return "not possible";
        }
        String after = clock.dayTime(one.after().readyMinute());
        return !one.before().possible() || one.before().readyMinute() == one.after().readyMinute() ? after
                : clock.dayTime(one.before().readyMinute()) + " " + arrow + " " + after;
    }

    static String buffer(OrderEffect one, String arrow) {
        if (!one.after().possible()) {
            return "-";
        }
        String after = signed(one.after().bufferMinutes());
        return !one.before().possible() || one.before().bufferMinutes() == one.after().bufferMinutes() ? after
                : signed(one.before().bufferMinutes()) + " " + arrow + " " + after;
    }

    static String late(OrderEffect one) {
        return one.after().lateMinutes() == 0 ? "-" : ClockText.duration(one.after().lateMinutes());
    }

    /** How many steps, and by how much the furthest. */
    static String moved(OrderEffect one) {
        return one.moved() == 0 ? "-" : one.moved() + ", " + ClockText.duration(one.mostMoved());
    }

    /** The buffer of an order set aside too late is below 0. */
    private static String signed(int minutes) {
        return minutes < 0 ? "-" + ClockText.duration(-minutes) : ClockText.duration(minutes);
    }
}
