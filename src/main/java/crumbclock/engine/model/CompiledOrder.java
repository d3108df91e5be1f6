package crumbclock.engine.model;

/**
 * An order compiled for decoder and cost, with times in real minutes.
 *
 * @param handOver    its hand-over task, or {@code null} when set aside
 * @param finishes    the finish task of each cake
 * @param earliestStart {@code from − offset}: the hand-over step starts no earlier
 * @param latestStart {@code until − offset}: a hand-over step that starts later is late; for an order set aside, until
 */
public record CompiledOrder(int index, Task handOver, Task[] finishes, int earliestStart, int latestStart, int offset,
        int until, int importance, int bufferWish) {
}
