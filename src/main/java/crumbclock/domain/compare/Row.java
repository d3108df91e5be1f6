package crumbclock.domain.compare;

import java.util.List;

/**
 * One figure of all plans.
 *
 * @param id     of small letters, digits and hyphens, unique in the table
 * @param label  for people
 * @param less   whether less (or earlier) is better, else more (or later)
 * @param spread greatest difference between plans of the base with unlike seeds; 0 when it was not measured
 * @param cells  one for each plan, the base's first
 */
public record Row(String id, String label, Measure measure, boolean less, long spread, List<Cell> cells) {

    public Row {
        cells = List.copyOf(cells);
    }
}
