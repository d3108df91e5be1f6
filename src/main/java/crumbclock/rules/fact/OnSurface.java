package crumbclock.rules.fact;

import crumbclock.domain.work.PlaceNeed;
import crumbclock.domain.work.Step;
import crumbclock.units.Span;

/**
 * A step whose things stand on a rack or bench.
 *
 * @param no unlike that of every other; orders pairs
 */
public record OnSurface(int no, Step step, PlaceNeed need, String surfaceId, Span when) {

    public String stepId() {
        return step.id();
    }

    public int start() {
        return when.start();
    }

    public int end() {
        return when.end();
    }

    public long areaMm2() {
        var footprint = need.form().footprint();
        return (long) need.form().pieces() * footprint.widthMm() * footprint.depthMm();
    }
}
