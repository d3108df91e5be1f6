package crumbclock.engine.model;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.fixture.Dice;
import java.util.BitSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every search on calendars against the same question put to {@link BitSet}, minute by minute. */
class BitsTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 63, 64, 65, 127, 128, 129, 300})
    void should_answer_as_a_bit_set_does(int size) {
        Dice dice = new Dice(size);
        for (int round = 0; round < 200; round++) {
            // given
            long[] bits = Bits.ofSize(size);
            BitSet twin = new BitSet(size);
            int changes = dice.upTo(12);
            for (int change = 0; change < changes; change++) {
                int from = dice.upTo(size + 1);
                int until = dice.upTo(size + 1);
                if (dice.onceIn(3)) {
                    Bits.clear(bits, from, until);
                    twin.clear(Math.min(from, until), from < until ? until : Math.min(from, until));
                } else {
                    Bits.set(bits, from, until);
                    twin.set(Math.min(from, until), from < until ? until : Math.min(from, until));
                }
            }
            int from = dice.upTo(size);
            int limit = dice.upTo(size + 1);
            int length = dice.between(1, 10);
            String at = "size " + size + ", round " + round + ", from " + from + ", limit " + limit + ", length " + length;

            // then
            for (int minute = 0; minute < size; minute++) {
                assertThat(Bits.get(bits, minute)).as(at + ", minute " + minute).isEqualTo(twin.get(minute));
            }
            assertThat(Bits.nextSet(bits, from, limit)).as("next set, " + at).isEqualTo(first(twin, true, from, limit, -1));
            assertThat(Bits.nextClear(bits, from, limit)).as("next clear, " + at)
                    .isEqualTo(first(twin, false, from, limit, limit));
            assertThat(Bits.lastSet(bits, from, limit)).as("last set, " + at).isEqualTo(last(twin, true, from, limit));
            assertThat(Bits.lastClear(bits, from, limit)).as("last clear, " + at).isEqualTo(last(twin, false, from, limit));
            assertThat(Bits.nextRun(bits, from, length, limit)).as("next run, " + at)
                    .isEqualTo(firstRun(twin, from, length, limit));
            int latest = Math.min(limit, size - length);
            if (latest >= 0) {
                assertThat(Bits.lastRun(bits, from, length, latest)).as("last run, " + at)
                        .isEqualTo(lastRun(twin, from, length, latest));
            }
        }
    }

    private static int first(BitSet bits, boolean wanted, int from, int limit, int none) {
        for (int minute = from; minute < limit; minute++) {
            if (bits.get(minute) == wanted) {
                return minute;
            }
        }
        return none;
    }

    private static int last(BitSet bits, boolean wanted, int from, int until) {
        for (int minute = until - 1; minute >= from; minute--) {
            if (bits.get(minute) == wanted) {
                return minute;
            }
        }
        return -1;
    }

    private static int firstRun(BitSet bits, int from, int length, int limit) {
        for (int start = from; start + length <= limit; start++) {
            if (bits.get(start, start + length).cardinality() == length) {
                return start;
            }
        }
        return -1;
    }

    private static int lastRun(BitSet bits, int from, int length, int latest) {
        for (int start = latest; start >= from; start--) {
            if (bits.get(start, start + length).cardinality() == length) {
                return start;
            }
        }
        return -1;
    }
}
