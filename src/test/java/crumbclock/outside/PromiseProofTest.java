package crumbclock.outside;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.app.PlanProblem;
import crumbclock.app.promise.PromiseListener;
import crumbclock.app.promise.PromiseOrder;
import crumbclock.app.promise.Question;
import crumbclock.domain.order.Order;
import crumbclock.domain.plan.Outcome;
import crumbclock.domain.plan.Plan;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Tiny kitchens with one more cake asked for, against Choco: the earliest time with all others on time is the earliest that is proven possible.
 * None is left out: the first 60 seeds.
 */
class PromiseProofTest {

    private static final long NODES = 1_000_000;
    private static final long STEPS = 1500;

    @ParameterizedTest
    @MethodSource("seeds")
    void should_find_the_proven_earliest_time(long seed) {
        Made made = Made.of(seed);

        int proven = ChocoKitchen.leastReady(made.asked, made.orderId, made.until(), NODES);

        assertThat(made.earliest(Price.ALL_ON_TIME)).as("kitchen %d", seed).isEqualTo(proven);
        assertNoMoreIsAsked(made);
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static void assertNoMoreIsAsked(Made made) {
        assertThat(made.answer.offers()).allSatisfy(offer -> {
            assertThat(offer.earliest().orElseThrow().own().handMinute()).isGreaterThanOrEqualTo(offer.notBefore());
            assertThat(offer.earliest().orElseThrow().toll().price()).isLessThanOrEqualTo(offer.price());
        });
        assertThat(made.earliest(Price.NOBODY_WORSE)).isGreaterThanOrEqualTo(made.earliest(Price.ALL_ON_TIME));
        assertThat(made.earliest(Price.ALL_ON_TIME)).isGreaterThanOrEqualTo(made.earliest(Price.ANY_PRICE));
    }

    private record Made(Problem asked, Plan have, String orderId, PromiseAnswer answer) {

        static Made of(long seed) {
            Problem asked = TinyKitchens.of(seed);
            Order last = asked.orders().get(asked.orders().size() - 1);
            Problem base = without(asked, last);
            Plan have = PlanProblem.plan(base, SearchLimits.ofSteps(1, STEPS), SearchListener.SILENT);
            PromiseAnswer answer = PromiseOrder.answer(new Question(base, have, asked, last.id(), 0, List.of()), SearchLimits.ofSteps(1, STEPS),
                    new PromiseListener() {
                        @Override
                        public void looking(String what, int done, int about) {
                            assertThat(done).isLessThanOrEqualTo(about);
                        }

                        @Override
                        public boolean stopAsked() {
                            return false;
                        }
                    });
            return new Made(asked, have, last.id(), answer);
        }

        private static Problem without(Problem asked, Order order) {
            String prefix = order.cakes().get(0).id() + "/";
            return new Problem(asked.title(), asked.clock(), asked.kitchen(), asked.orders().stream().filter(one -> one != order).toList(),
                    asked.batches(), asked.steps().stream().filter(step -> !step.id().startsWith(prefix)).toList(),
                    asked.waits().stream().filter(wait -> !wait.fromStepId().startsWith(prefix)).toList(), asked.coldLimits(),
                    asked.lifeLimits(), asked.freshnessWishes(), List.of(), asked.weights());
        }

        int earliest(Price price) {
            return answer.offers().stream().filter(offer -> offer.price() == price).findFirst().flatMap(Offer::earliest).orElseThrow()
                    .own().handMinute();
        }

        Map<String, Integer> until() {
            Map<String, Integer> until = new LinkedHashMap<>();
            for (Order order : asked.orders()) {
                have.timetable().outcomes().stream().filter(one -> one.orderId().equals(order.id())).map(Outcome::handMinute)
                        .forEach(hand -> until.put(order.id(), Math.max(order.handOver().until(), hand)));
            }
            return until;
        }
    }
}
