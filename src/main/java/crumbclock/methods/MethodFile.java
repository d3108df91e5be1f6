package crumbclock.methods;

import java.util.List;

/**
 * One file of methods, exactly as it stands in JSON. Anything left out takes the default that its record names.
 *
 * @param format  which layout the file follows: {@code crumbclock-methods-1}
 * @param note    where the figures come from, for the whole file
 * @param methods in the order of the file
 */
public record MethodFile(String format, String note, List<Method> methods) {

    public MethodFile {
        format = Given.text(format);
        note = Given.text(note);
        methods = Given.list(methods);
    }
}
