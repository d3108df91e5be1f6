package crumbclock.methods;

import java.util.List;
import java.util.Map;

/**
 * One step as a method has it: hands-on when it has {@code work}, unattended when it has {@code rest}, never both.
 *
 * @param id       unique in the method
 * @param name     what people call it
 * @param source   where its figures come from: the origin of every figure stays visible
 * @param when     option → values: made only when each of these options has one of its values. Besides the method's
 *                 own options there are {@code tiers} (one, several), {@code message} (yes, no) and
 *                 {@code hand-over} (pick-up, delivery, set-aside)
 * @param work     the hands-on work
 * @param rest     the unattended rest
 * @param place    where the thing stands
 * @param needs    equipment
 * @param waitBefore from the step before it in its section; ignored for the section's first
 * @param after    further steps or sections that come before it
 * @param contains allergens that come in with this step
 */
public record StepTemplate(String id, String name, String source, Map<String, List<String>> when, WorkTemplate work,
        RestTemplate rest, PlaceTemplate place, List<NeedTemplate> needs, WaitTemplate waitBefore,
        List<AfterTemplate> after, List<String> contains) {

    public StepTemplate {
        id = Given.text(id);
        name = Given.text(name);
        source = Given.text(source);
        when = Given.map(when);
        needs = Given.list(needs);
        waitBefore = Given.or(waitBefore, new WaitTemplate(0, null));
        after = Given.list(after);
        contains = Given.list(contains);
    }
}
