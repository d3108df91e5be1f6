package crumbclock.engine.model;

/**
 * Pieces of one pool, held in abstract time from the start of {@code first} to the end of {@code last}.
 *
 * @param index unique among all needs of the problem
 * @param pool  index of the pool
 * @param amount what goes into each piece, in the pool's own measure
 * @param owner the task that names the need, in whose placed step the pieces are listed
 */
public record Need(int index, int pool, int units, int amount, Task owner, Task first, Task last) {
}
