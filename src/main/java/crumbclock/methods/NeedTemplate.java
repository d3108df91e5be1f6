package crumbclock.methods;

/**
 * Pieces of equipment that a step takes.
 *
 * @param pool     the pool's id; {@code {size}} in it stands for the tier's size, so that {@code pan-{size}} becomes
 *                 {@code pan-8in}, and then each tier has a need of its own
 * @param count    pieces: one by default
 * @param amount   what goes into each piece; null when it does not matter
 * @param until    the step at whose end they are free again; this step when empty or not made
 * @param optional only where the kitchen has such a pool; otherwise a missing pool is a fault
 */
public record NeedTemplate(String pool, Count count, AmountTemplate amount, String until, boolean optional) {

    public NeedTemplate {
        pool = Given.text(pool);
        count = Given.or(count, Count.ONE);
        until = Given.text(until);
    }
}
