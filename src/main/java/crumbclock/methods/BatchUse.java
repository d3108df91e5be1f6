package crumbclock.methods;

import crumbclock.domain.kitchen.PlaceKind;
import java.util.Map;

/**
 * How a component is used when a shared batch makes it: its own steps fall away, and every step that would follow the
 * section follows the batch's last step instead.
 *
 * @param leastMinutes from the batch's last step to the use
 * @param mostMinutes  the same, at most; null for no limit
 * @param lifeMinutes  how long it keeps by kind of place; empty when the most wait says it all
 * @param amount       what this cake takes from the batch; null when it does not count
 * @param source       where the figures come from
 */
public record BatchUse(int leastMinutes, Integer mostMinutes, Map<PlaceKind, Integer> lifeMinutes,
        AmountTemplate amount, String source) {

    public BatchUse {
        lifeMinutes = Given.map(lifeMinutes);
        source = Given.text(source);
    }
}
