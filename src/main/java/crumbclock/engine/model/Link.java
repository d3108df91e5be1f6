package crumbclock.engine.model;

/**
 * A wait in abstract time: {@code start(to) − end(from)} lies between least and most.
 *
 * @param most {@link Integer#MAX_VALUE} for no most
 */
public record Link(Task from, Task to, int least, int most) {

    public boolean hasMost() {
        return most != Integer.MAX_VALUE;
    }
}
