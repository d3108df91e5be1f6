package crumbclock.outside;

import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.OvenBuilder.anOven;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;

import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.problem.Problem;
import crumbclock.domain.problem.Weights;
import crumbclock.domain.work.Wait;
import crumbclock.fixture.PersonBuilder;
import crumbclock.fixture.ProblemBuilder;
import crumbclock.fixture.StepBuilder;
import java.util.Random;

/**
 * Two or three cakes for one or two people, one mixer, an oven for one pan and a fridge for one cake, made from a seed:
 * small enough that a general solver can prove the least lateness. Nothing may be put down, and only late minutes and
 * the end of the last step cost.
 */
final class TinyKitchens {

    private static final int HORIZON = 720;
    private static final Weights LATE_AND_END = new Weights(10, 0, Weights.DEFAULT.notPossible(), 0, 0, 0, 0, 0, 0, 0, 0,
            0, 0, 0, 1, 0, 1440, 0, 0);

    private final Random random;
    private final ProblemBuilder problem = aProblem().startingAt(8 * 60).horizon(HORIZON).weights(LATE_AND_END)
            .pool(aPool("mixer", 1))
            .oven(anOven("oven").rack(300, 300, 200).preheatedIn(15))
            .store(aFridge("fridge").shelf(aShelf("only", 300, 300, 250)));

    private TinyKitchens(long seed) {
        random = new Random(seed);
    }

    static Problem of(long seed) {
        return new TinyKitchens(seed).make();
    }

    private Problem make() {
        people();
        int cakes = 2 + random.nextInt(2);
        boolean touches = random.nextBoolean();
        for (int cake = 0; cake < cakes; cake++) {
            cake("cake" + cake, touches);
        }
        return problem.build();
    }

    /** The first is there from the start and does everything; the second, if any, comes later and is slower at coating. */
    private void people() {
        int pause = between(120, 240);
        problem.person(aPerson("first").onShift(0, between(480, HORIZON)).onBreak(pause, pause + 30).skilledIn("piping"));
        if (random.nextInt(3) > 0) {
            PersonBuilder second = aPerson("second").onShift(between(0, 120), HORIZON).paceFor("coating", 1.5);
            problem.person(random.nextBoolean() ? second.skilledIn("piping") : second);
        }
    }

    private void cake(String id, boolean touches) {
        problem.step(handsOn(id + "/mix", between(10, 30)).takes("mixer", 1));
        int bakes = between(25, 50);
        StepBuilder bake = resting(id + "/bake", bakes, bakes + 5).bakesAt(180).roundPan(250, 80);
        problem.step(touches ? bake.putIn(3).takeOut(2) : bake);
        problem.wait(id + "/mix", id + "/bake", 0, between(10, 20));
        problem.step(handsOn(id + "/coat", between(15, 30)).kind("coating"));
        problem.wait(id + "/bake", id + "/coat", between(30, 60), random.nextBoolean() ? Wait.NO_MOST : 180);
        int chills = between(20, 40);
        problem.step(resting(id + "/chill", chills, chills + between(20, 60)).stands(round(250), PlaceKind.FRIDGE));
        problem.wait(id + "/coat", id + "/chill", 0, 10);
        problem.step(handsOn(id + "/pipe", between(10, 30)).skill("piping"));
        problem.wait(id + "/chill", id + "/pipe", 0, between(5, 10));
        problem.order(anOrder("order " + id).cake(id, id + "/pipe").setAsideBy(between(180, 360))
                .importance(between(1, 3)));
    }

    private int between(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }
}
