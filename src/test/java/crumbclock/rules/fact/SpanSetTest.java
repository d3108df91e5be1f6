package crumbclock.rules.fact;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.units.Span;
import java.util.List;
import org.junit.jupiter.api.Test;

class SpanSetTest {

    @Test
    void should_join_what_overlaps_or_touches() {
        assertThat(SpanSet.of(List.of(new Span(30, 40), new Span(0, 10), new Span(10, 20), new Span(25, 25), new Span(15, 22))))
                .isEqualTo(new SpanSet(List.of(new Span(0, 22), new Span(30, 40))));
    }

    @Test
    void should_cover_a_span_inside_and_an_empty_one_anywhere() {
        var minutes = SpanSet.of(List.of(new Span(0, 20), new Span(30, 40)));

        assertThat(minutes.covers(new Span(0, 20))).isTrue();
        assertThat(minutes.covers(new Span(-1, 20))).isFalse();
        assertThat(minutes.covers(new Span(19, 31))).isFalse();
        assertThat(minutes.covers(new Span(25, 25))).isTrue();
    }

    @Test
    void should_tell_the_gaps_in_order() {
        var minutes = SpanSet.of(List.of(new Span(0, 20), new Span(30, 40)));

        assertThat(minutes.gapsIn(new Span(-5, 50)))
                .containsExactly(new Span(-5, 0), new Span(20, 30), new Span(40, 50));
        assertThat(SpanSet.of(List.of()).gapsIn(new Span(1, 2))).containsExactly(new Span(1, 2));
    }

    @Test
    void should_take_away_minutes() {
        assertThat(SpanSet.of(List.of(new Span(0, 100))).minus(SpanSet.of(List.of(new Span(-5, 10), new Span(50, 60)))))
                .isEqualTo(new SpanSet(List.of(new Span(10, 50), new Span(60, 100))));
    }
}
