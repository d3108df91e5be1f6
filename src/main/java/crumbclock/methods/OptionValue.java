package crumbclock.methods;

import java.util.List;

/**
 * One value of an option and what it does to the allergens.
 *
 * @param value   what the request writes
 * @param section whose allergens it changes; empty for every section of the method
 * @param adds    allergens that come in with it
 * @param removes allergens that stay out with it
 */
public record OptionValue(String value, String section, List<String> adds, List<String> removes) {

    public OptionValue {
        value = Given.text(value);
        section = Given.text(section);
        adds = Given.list(adds);
        removes = Given.list(removes);
    }
}
