package crumbclock.methods;

/**
 * A freshness wish: from the end of a step to the hand-over no more than so many minutes.
 *
 * @param from    the step
 * @param minutes wished at most
 * @param source  where the figure comes from
 */
public record WishTemplate(String from, int minutes, String source) {

    public WishTemplate {
        from = Given.text(from);
        source = Given.text(source);
    }
}
