package crumbclock.units;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class SpansTest {

    @Test
    void thoseThatTouchOrOverlapBecomeOneAndAGapStays() {
        assertThat(Spans.joined(List.of(new Span(30, 40), new Span(0, 10), new Span(10, 15), new Span(12, 14), new Span(16, 20))))
                .containsExactly(new Span(0, 15), new Span(16, 20), new Span(30, 40));
    }

    @Test
    void anEmptyOneAddsNothing() {
        assertThat(Spans.plus(List.of(new Span(0, 10)), new Span(20, 20))).containsExactly(new Span(0, 10));
    }

    @Test
    void oneMoreMayCloseAGap() {
        assertThat(Spans.plus(List.of(new Span(0, 10), new Span(20, 30)), new Span(10, 20))).containsExactly(new Span(0, 30));
    }

    @Test
    void aHoleInTheMiddleLeavesBothSides() {
        assertThat(Spans.minus(List.of(new Span(0, 30)), new Span(10, 20))).containsExactly(new Span(0, 10), new Span(20, 30));
    }

    @Test
    void aHoleOverTheEndsLeavesTheRest() {
        assertThat(Spans.minus(List.of(new Span(0, 10), new Span(20, 30), new Span(40, 50)), new Span(5, 40)))
                .containsExactly(new Span(0, 5), new Span(40, 50));
    }

    @Test
    void aHoleBesideOrWithoutAMinuteTakesNothing() {
        assertThat(Spans.minus(List.of(new Span(0, 10)), new Span(10, 20))).containsExactly(new Span(0, 10));
        assertThat(Spans.minus(List.of(new Span(0, 10)), new Span(5, 5))).containsExactly(new Span(0, 10));
    }

    /** A bit for each minute is the plain twin. */
    @Test
    void minuteByMinuteItIsTheSame() {
        var random = new Random(1);
        for (int round = 0; round < 500; round++) {
            List<Span> spans = new ArrayList<>();
            var bits = new BitSet();
            for (int i = random.nextInt(6); i > 0; i--) {
                Span span = span(random);
                spans.add(span);
                bits.set(span.start(), span.end());
            }
            assertThat(Spans.joined(spans)).as("round %d, %s", round, spans).isEqualTo(spans(bits));
            Span gone = span(random);
            bits.clear(gone.start(), gone.end());
            assertThat(Spans.minus(Spans.joined(spans), gone)).as("round %d, %s less %s", round, spans, gone).isEqualTo(spans(bits));
        }
    }

    private static Span span(Random random) {
        int start = random.nextInt(30);
        return new Span(start, start + random.nextInt(8));
    }

    private static List<Span> spans(BitSet bits) {
        List<Span> spans = new ArrayList<>();
        for (int start = bits.nextSetBit(0); start >= 0; start = bits.nextSetBit(bits.nextClearBit(start))) {
            spans.add(new Span(start, bits.nextClearBit(start)));
        }
        return spans;
    }
}
