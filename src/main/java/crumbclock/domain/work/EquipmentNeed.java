package crumbclock.domain.work;

/**
 * Pieces of one pool, taken when a step starts and given back when a step ends.
 *
 * @param units       pieces at once, at least 1
 * @param amount      what goes into each piece, in the pool's measure; 0 when it does not matter
 * @param untilStepId the step at whose end the pieces are free again: the step itself or a later one
 */
public record EquipmentNeed(String poolId, int units, int amount, String untilStepId) {
}
