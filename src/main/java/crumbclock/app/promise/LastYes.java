package crumbclock.app.promise;

import crumbclock.domain.kitchen.Person;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.PromisedPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * How long the answer can wait: planned again as if it came at this or that half hour, with nothing of the new order before it and all that
 * begins before it as people know it. A plan that differs from the known one only later needs no earlier yes.
 */
final class LastYes {

    /** Halving from a day of half hours takes no more. */
    static final int MOST_TRIES = 5;
    private static final int GRID = 30;

    private final Tries tries;
    private final Question question;
    private final Price price;
    private final int from;
    private final int until;
    private final BooleanSupplier goesOn;

    /**
     * @param from   window of the hand-over that is to be kept
     * @param until  its end
     * @param goesOn asked before each try
     */
    LastYes(Tries tries, Question question, Price price, int from, int until, BooleanSupplier goesOn) {
        this.tries = tries;
        this.question = question;
        this.price = price;
        this.from = from;
        this.until = until;
        this.goesOn = goesOn;
    }

    /** The plan with the latest first difference that was found, at least the given one. */
    PromisedPlan after(PromisedPlan known) {
        PromisedPlan best = known;
        List<Integer> moments = moments(best.sayYesBy());
        int low = 0;
        int high = moments.size();
        for (int tried = 0; tried < MOST_TRIES && low < high && goesOn.getAsBoolean(); tried++) {
            int middle = (low + high) / 2;
            int moment = moments.get(middle);
            Optional<PromisedPlan> found = tries.within(price, moment, Math.max(from, moment), until);
            if (found.isPresent()) {
                best = found.get().sayYesBy() > best.sayYesBy() ? found.get() : best;
                low = middle + 1;
                while (low < high && moments.get(low) <= best.sayYesBy()) {
                    low++;
                }
            } else {
                high = middle;
            }
        }
        return best;
    }

    /** Half hours of the clock after a minute at which somebody is on shift: waiting through the night costs nothing. */
    private List<Integer> moments(int after) {
        int offset = question.asked().clock().start().getMinute() % GRID;
        List<Integer> moments = new ArrayList<>();
        for (int minute = (after + offset) / GRID * GRID + GRID - offset; minute < until; minute += GRID) {
            int at = minute;
            if (question.asked().kitchen().people().stream().anyMatch(person -> isThere(person, at))) {
                moments.add(at);
            }
        }
        return moments;
    }

    private static boolean isThere(Person person, int minute) {
        return person.shifts().stream().anyMatch(shift -> shift.start() <= minute && minute < shift.end());
    }
}
