package crumbclock.rules.fact;

import crumbclock.domain.plan.OvenRun;
import crumbclock.units.Span;

/**
 * An oven run, its minutes put in order so that spans can be made of them; rule R08 tells when they were not.
 *
 * @param no unlike that of every other run; orders pairs
 */
public record HeatRun(int no, OvenRun run) {

    public String cavityId() {
        return run.cavityId();
    }

    public int temperatureC() {
        return run.temperatureC();
    }

    public int from() {
        return FarMinutes.clip(run.from());
    }

    public int readyAt() {
        return Math.max(from(), FarMinutes.clip(run.readyAt()));
    }

    public int until() {
        return Math.max(readyAt(), FarMinutes.clip(run.until()));
    }

    public Span on() {
        return new Span(from(), until());
    }

    public Span heatingUp() {
        return new Span(from(), readyAt());
    }
}
