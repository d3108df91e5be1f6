/**
 * The compiled problem: tasks, links and needs as plain numbers, in one of two directions.
 *
 * <p>In the backward direction time is mirrored: a minute {@code t} becomes {@code horizon − t}, putting in becomes
 * taking out, and each wait points the other way. The decoder always works from early to late in this <em>abstract</em>
 * time; only ovens and allergens, whose rules are not the same both ways, look back at real time.
 */
package crumbclock.engine.model;
