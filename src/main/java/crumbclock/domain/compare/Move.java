package crumbclock.domain.compare;

/**
 * One step that both of two plans have, at unlike times.
 *
 * @param from start in the first plan
 * @param to   start in the second plan
 */
public record Move(String stepId, int from, int to) {

    public int minutes() {
        return Math.abs(to - from);
    }
}
