package crumbclock.formats.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearestTest {

    @Test
    void should_offer_the_nearest_names() {
        assertThat(Nearest.advice("icng", List.of("icing", "batter", "icing-1"))).isEqualTo("Did you mean \"icing\"?");
        assertThat(Nearest.advice("hand over", List.of("hand_over", "way"))).isEqualTo("Did you mean \"hand_over\"?");
        assertThat(Nearest.advice("oevn", List.of("oven", "over"))).isEqualTo("Did you mean \"oven\"?");
    }

    @Test
    void should_list_what_is_known_when_nothing_is_near() {
        assertThat(Nearest.advice("zebra", List.of("b", "a"))).isEqualTo("Known: a, b.");
        assertThat(Nearest.advice("x", List.of())).isEqualTo("There is none to choose from.");
    }

    @Test
    void should_count_letters_added_dropped_changed_and_swapped() {
        assertThat(Nearest.distance("", "abc")).isEqualTo(3);
        assertThat(Nearest.distance("abc", "abd")).isEqualTo(1);
        assertThat(Nearest.distance("abc", "acb")).isEqualTo(1);
        assertThat(Nearest.distance("kitten", "sitting")).isEqualTo(3);
    }
}
