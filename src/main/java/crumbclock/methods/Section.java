package crumbclock.methods;

import java.util.List;

/**
 * A part of a method: a component (batter, icing, topper), the work on each tier, or the work on the whole cake. Each
 * step follows the one before it in the same section; links to other sections stand at the steps that need them.
 *
 * @param id       unique in the method; a component's name in a request's batches
 * @param per      once for the cake (default) or for each tier
 * @param contains allergens that its ingredients bring in
 * @param batch    how it is used when it comes from a shared batch; null when it never does
 * @param steps    in order
 */
public record Section(String id, Per per, List<String> contains, BatchUse batch, List<StepTemplate> steps) {

    public Section {
        id = Given.text(id);
        per = Given.or(per, Per.CAKE);
        contains = Given.list(contains);
        steps = Given.list(steps);
    }
}
