package crumbclock.domain.change;

import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.Step;

/**
 * Steps by a name. Hand-over steps are never meant: what they take is said by their orders.
 *
 * @param name    a step's name in its method ({@code chill-coat}), its whole id ({@code A1/chill-coat}) or a kind of work
 *                ({@code coating}); a {@code *} at the end stands for any ending ({@code dry*})
 * @param ownerId only steps of this order, cake or batch; empty for all
 */
public record StepChoice(String name, String ownerId) {

    /** Whether the step is one of them. */
    public boolean holds(Step step) {
        boolean own = ownerId.isEmpty() || step.ownerId().equals(ownerId) || step.ownerId().startsWith(ownerId + "/");
        return own && !isHandOver(step) && (fits(step.id()) || fits(nameOf(step)) || fits(workKindOf(step)));
    }

    /** A step's name in its method: the last part of its id. */
    public static String nameOf(Step step) {
        return step.id().substring(step.id().lastIndexOf('/') + 1);
    }

    /** Kind of work of a hands-on step; empty for others. */
    public static String workKindOf(Step step) {
        return step.handsOn().map(HandsOn::workKind).orElse("");
    }

    /** Whether it is the last step of an order, made by no method. */
    public static boolean isHandOver(Step step) {
        return nameOf(step).equals("hand-over");
    }

    private boolean fits(String text) {
        boolean open = name.endsWith("*");
        return open ? !text.isEmpty() && text.startsWith(name.substring(0, name.length() - 1)) : text.equals(name);
    }
}
