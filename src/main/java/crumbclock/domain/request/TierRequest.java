package crumbclock.domain.request;

import crumbclock.domain.work.Footprint;

/**
 * One tier of a cake, by the nominal size of its pan.
 *
 * @param size   nominal footprint: a round or a rectangle, mm
 * @param layers layers of cake in it, at least 1
 */
public record TierRequest(Footprint size, int layers) {
}
