package crumbclock.methods;

import java.util.List;

/**
 * A choice that a request may make by name.
 *
 * @param id     name of the option: {@code nuts}
 * @param note   what it decides
 * @param values what may be chosen; the first holds when a request says nothing
 */
public record OptionTemplate(String id, String note, List<OptionValue> values) {

    public OptionTemplate {
        id = Given.text(id);
        note = Given.text(note);
        values = Given.list(values);
    }
}
