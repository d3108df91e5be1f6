package crumbclock.app.promise;

import static crumbclock.fixture.FormBuilder.round;
import static crumbclock.fixture.OrderBuilder.anOrder;
import static crumbclock.fixture.PersonBuilder.aPerson;
import static crumbclock.fixture.PoolBuilder.aPool;
import static crumbclock.fixture.ProblemBuilder.aProblem;
import static crumbclock.fixture.ShelfBuilder.aShelf;
import static crumbclock.fixture.StepBuilder.handsOn;
import static crumbclock.fixture.StepBuilder.resting;
import static crumbclock.fixture.StoreBuilder.aFridge;
import static crumbclock.fixture.StoreBuilder.aStore;
import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.change.KitchenChange.MoreHours;
import crumbclock.domain.change.KitchenChange.MorePieces;
import crumbclock.domain.change.KitchenChange.ShelfLike;
import crumbclock.domain.change.WorkChange.ComponentInStock;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.problem.Problem;
import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;

class HelpIdeasTest {

    private static Problem kitchen(int firstFrom, int firstUntil) {
        return aProblem().person(aPerson("ada").onShift(firstFrom, firstUntil)).pool(aPool("mixer", 1)).pool(aPool("airbrush", 1))
                .store(aFridge("fridge").shelf(aShelf("low", 300, 300, 100)).shelf(aShelf("wide", 600, 400, 200)))
                .store(aStore("hall", PlaceKind.AMBIENT).shelf(aShelf("only", 900, 400, 300)))
                .step(handsOn("B/mix", 20).takes("mixer", 1)).step(resting("B/chill", 30).stands(round(200), PlaceKind.FRIDGE))
                .order(anOrder("oB").cake("B", "B/chill").setAsideBy(1000)).build();
    }

    private static List<HelpIdeas.Idea> ideas(Problem problem, int now) {
        return HelpIdeas.of(problem, "oB", List.of(new ComponentInStock("B", "layers"), new ComponentInStock("B", "drip-ganache")), now);
    }

    @Test
    void should_think_of_what_the_order_needs_and_of_nothing_else() {
        var ideas = ideas(kitchen(480, 960), 0);

        assertThat(ideas).extracting(HelpIdeas.Idea::words).containsExactly("spare layers in stock", "drip ganache in stock",
                "ada from Mon 06:30 on instead of Mon 08:00", "ada until Mon 17:00 instead of Mon 16:00",
                "one shelf more in fridge, like wide", "one mixer more");
        assertThat(ideas).flatExtracting(HelpIdeas.Idea::changes).contains(new MoreHours("ada", new Span(390, 480)),
                new MoreHours("ada", new Span(960, 1020)), new ShelfLike("fridge", "wide", "one-more"), new MorePieces("mixer", 1));
        assertThat(ideas).extracting(HelpIdeas.Idea::name).doesNotHaveDuplicates().allMatch(name -> name.matches("[a-z0-9-]+"));
    }

    @Test
    void should_ask_nobody_to_come_before_now_or_after_the_wished_time() {
        assertThat(ideas(kitchen(480, 1000), 450)).flatExtracting(HelpIdeas.Idea::changes).contains(new MoreHours("ada", new Span(450, 480)))
                .doesNotContain(new MoreHours("ada", new Span(1000, 1060)));
        assertThat(ideas(kitchen(480, 960), 480)).extracting(HelpIdeas.Idea::words).noneMatch(words -> words.contains(" from "));
        assertThat(ideas(kitchen(1000, 1200), 0)).extracting(HelpIdeas.Idea::words).noneMatch(words -> words.startsWith("ada"));
    }
}
