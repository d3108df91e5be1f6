package crumbclock.bench.kitchen;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.rules.Audit;
import crumbclock.search.PlanSearch;
import crumbclock.search.SearchLimits;
import crumbclock.search.SearchListener;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MadeUpShopTest {

    @TempDir
    private Path folder;

    @Test
    void should_make_up_the_same_shop_for_the_same_seed() throws IOException {
        Path one = MadeUpShop.write(ShopSize.of(20), 7, folder.resolve("one"));
        Path again = MadeUpShop.write(ShopSize.of(20), 7, folder.resolve("again"));
        Path other = MadeUpShop.write(ShopSize.of(20), 8, folder.resolve("other"));

        assertThat(one).hasSameTextualContentAs(again);
        assertThat(one.resolveSibling("orders.csv")).hasSameTextualContentAs(again.resolveSibling("orders.csv"));
        assertThat(Files.readString(one.resolveSibling("orders.csv")))
                .isNotEqualTo(Files.readString(other.resolveSibling("orders.csv")));
    }

    @ParameterizedTest
    @CsvSource({"5, 1", "5, 2", "20, 1", "20, 2"})
    void should_have_room_for_all_cakes_in_time(int cakes, long seed) {
        var problem = MadeUpShop.read(MadeUpShop.write(ShopSize.of(cakes), seed, folder));
        var found = PlanSearch.search(problem, SearchLimits.ofSteps(1, 500), SearchListener.SILENT);

        assertThat(problem.cakes()).hasSize(cakes);
        assertThat(Audit.audit(problem, found.timetable()).findings()).isEmpty();
        assertThat(found.cost().medium()).as("points for lateness").isZero();
    }
}
