package crumbclock.app.promise;

import crumbclock.domain.order.HandOver;
import crumbclock.domain.order.Order;
import crumbclock.domain.promise.Help;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Answers whether one more order can be promised, for when, at whose cost, until when, and what would help. Every figure comes from
 * a plan that was found and audited; a longer search may find better ones.
 */
public final class PromiseOrder {

    private final Question question;
    private final SearchLimits limits;
    private final PromiseListener listener;
    private final Tries tries;
    private final HandOver wish;
    private final Map<Price, PromisedPlan> earliest = new EnumMap<>(Price.class);
    private final Map<Price, PromisedPlan> asWished = new EnumMap<>(Price.class);
    private final Map<Price, PromisedPlan> lastYes = new EnumMap<>(Price.class);
    private final List<Help> helps = new ArrayList<>();
    private int tried;
    private int done;

    private PromiseOrder(Question question, SearchLimits limits, PromiseListener listener) {
        this.question = question;
        this.limits = limits;
        this.listener = listener;
        this.tries = new Tries(question.asked(), question.have(), question.orderId(), limits,
                SearchListener.stoppedBy(listener::stopAsked));
        this.wish = question.asked().orders().stream().filter(order -> order.id().equals(question.orderId()))
                .map(Order::handOver).findFirst().orElseThrow();
    }

    /**
     * Looks for all answers.
     *
     * @param limits of each single search
     * @return what was found, complete unless the listener asked to stop
     */
    public static PromiseAnswer answer(Question question, SearchLimits limits, PromiseListener listener) {
        return new PromiseOrder(question, limits, listener).run();
    }

    private PromiseAnswer run() {
        int notBefore = tries.notBefore(question.now());
        for (Price price : Price.values()) {
            offer(price, notBefore);
        }
        for (Price price : Price.values()) {
            wished(price);
        }
        help(notBefore);
        for (Price price : Price.values()) {
            lastYes(price);
        }
        lateFinds();
        sortHelps();
        List<Offer> offers = new ArrayList<>();
        for (Price price : Price.values()) {
            var last = Optional.ofNullable(lastYes.get(price));
            offers.add(new Offer(price, Optional.ofNullable(earliest.get(price)), notBefore, last, kept(price).orElse(-1)));
        }
        Optional<PromisedPlan> wished = List.of(Price.values()).stream().filter(asWished::containsKey).map(asWished::get).findFirst();
        return new PromiseAnswer(question.base(), question.have(), question.asked(), question.orderId(), question.now(), wished, offers,
                helps, tried, limits.seed(), !listener.stopAsked());
    }

    /** Roughly how many things there are to look for. */
    private int about() {
        return 2 * Price.values().length + question.helps().size() + Price.values().length * LastYes.MOST_TRIES / 2;
    }

    private boolean goesOn(String what) {
        listener.looking(what, done++, Math.max(done, about()));
        return !listener.stopAsked();
    }

    private void offer(Price price, int notBefore) {
        if (notBefore >= 0 && goesOn("the earliest time, " + price.words())) {
            tries.earliest(price, question.now(), question.now(), notBefore).ifPresent(this::take);
            tries.withSeed(limits.seed() + 1).earliest(price, question.now(), question.now(), notBefore)
                    .ifPresent(this::take);
        }
    }

    /** What asks little is good for those who may ask for more. */
    private void keepEarliest(Price from, PromisedPlan plan) {
        for (Price price : Price.values()) {
            if (price.compareTo(from) >= 0 && (!earliest.containsKey(price) || Tries.EARLIEST.compare(plan, earliest.get(price)) < 0)) {
                earliest.put(price, plan);
            }
        }
    }

    private void wished(Price price) {
        if (asWished.containsKey(price) || !goesOn("as wished, " + price.words())) {
            return;
        }
        asWished(tries, price);
        asWished(tries.withSeed(limits.seed() + 1), price);
        var known = earliest.get(price);
        if (!asWished.containsKey(price) && known != null && known.own().handMinute() <= wish.until()) {
            asWished(tries.from(known), price);
        }
    }

    private void asWished(Tries from, Price price) {
        from.within(price, question.now(), wish.from(), wish.until()).ifPresent(this::take);
    }

    /** A plan is good for its own price and for all dearer ones, whatever it was looked for. */
    private void take(PromisedPlan plan) {
        keepEarliest(plan.toll().price(), plan);
        boolean inWindow = plan.own().handMinute() >= wish.from() && plan.own().handMinute() <= wish.until();
        for (Price price : Price.values()) {
            if (inWindow && price.compareTo(plan.toll().price()) >= 0
                    && (!asWished.containsKey(price) || Tries.CHEAPEST.compare(plan, asWished.get(price)) < 0)) {
                asWished.put(price, plan);
            }
        }
    }

    /** The time that is to be kept when people wait with their answer. */
    private Optional<Integer> kept(Price price) {
        return asWished.containsKey(price) ? Optional.of(wish.until())
                : Optional.ofNullable(earliest.get(price)).map(plan -> plan.own().handMinute());
    }

    /** Tried where it is wanted most: at the first price at which the wish cannot be had. */
    private void help(int notBefore) {
        Price price = asWished.containsKey(Price.ALL_ON_TIME) && !asWished.containsKey(Price.NOBODY_WORSE) ? Price.NOBODY_WORSE
                : Price.ALL_ON_TIME;
        for (Question.Help help : question.helps()) {
            if (goesOn("what would help: " + help.words())) {
                tried++;
                Tries with = tries.in(help.problem());
                int least = with.notBefore(question.now());
                var found = least < 0 ? Optional.<PromisedPlan>empty() : with.earliest(price, question.now(), question.now(), least);
                found.ifPresent(plan -> keep(help, price, plan, notBefore));
            }
        }
    }

    /** What was found later without them leaves some helps without use. */
    private void sortHelps() {
        helps.removeIf(help -> !isEarlier(help.plan(), help.price()));
        helps.replaceAll(help -> new Help(help.name(), help.words(), help.price(), hand(earliest.get(help.price())), help.plan()));
        helps.sort(Comparator.comparing(Help::plan, Tries.EARLIEST).thenComparing(Help::name));
    }

    private static Optional<Integer> hand(PromisedPlan plan) {
        return Optional.ofNullable(plan).map(one -> one.own().handMinute());
    }

    /** A plan that does without the help after all, or nearly, was only a luckier search: then it is good without it. */
    private void keep(Question.Help help, Price price, PromisedPlan plan, int notBefore) {
        var without = tries.holding(plan);
        if (without.isEmpty() && isEarlier(plan, price)) {
            without = tries.from(plan).earliest(price, question.now(), question.now(), notBefore);
            helps.add(new Help(help.name(), help.words(), price, Optional.empty(), plan));
        }
        without.ifPresent(this::take);
    }

    private boolean isEarlier(PromisedPlan plan, Price price) {
        var without = earliest.get(price);
        return without == null || plan.own().handMinute() < without.own().handMinute();
    }

    /** A plan that was found for a later yes may be better than what was found before: then it counts there, too. */
    private void lateFinds() {
        for (PromisedPlan plan : List.copyOf(lastYes.values())) {
            take(plan);
        }
        for (Price price : Price.values()) {
            var last = lastYes.get(price);
            if (asWished.containsKey(price) && (last == null || last.own().handMinute() > wish.until())) {
                lastYes.put(price, asWished.get(price));
            }
        }
    }

    private void lastYes(Price price) {
        kept(price).ifPresent(until -> {
            boolean asIsWished = asWished.containsKey(price);
            PromisedPlan best = asIsWished ? asWished.get(price) : earliest.get(price);
            for (PromisedPlan other : lastYes.values()) {
                if (other.own().handMinute() <= until && other.sayYesBy() > best.sayYesBy()) {
                    best = other;
                }
            }
            var looking = new LastYes(tries, question, price, asIsWished ? wish.from() : question.now(), until,
                    () -> goesOn("until when to say yes, " + price.words()));
            lastYes.put(price, looking.after(best));
        });
    }
}
