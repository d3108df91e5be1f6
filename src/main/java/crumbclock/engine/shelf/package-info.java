/**
 * Where things stand, seen from above: one more piece on a shelf or rack (rules R07 and R10), or many at once.
 *
 * <p>A <em>bay</em> is the inside of one shelf or rack. Positions are whole mm from its front left corner, x to the right,
 * y to the back, and name the front left corner of the box round a footprint. Footprints are axis-parallel rectangles or
 * circles. Two of them are far enough apart when their nearest points are at least the gap apart in a straight line;
 * touching counts as fitting.
 *
 * <p>The one idea behind all of it: take the piece's centre as a point and grow every neighbour by the piece and the gap.
 * What the centre must keep out of is then always a rectangle with rounded corners, for all four pairings of rectangle
 * and circle (the Minkowski sum; T. Lozano-Pérez, "Spatial planning: a configuration space approach", IEEE Transactions
 * on Computers C-32, 1983). In half millimetres every number in it is whole, so the check is exact.
 *
 * <p>Uses the JDK alone.
 */
package crumbclock.engine.shelf;
