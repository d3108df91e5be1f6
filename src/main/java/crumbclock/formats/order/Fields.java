package crumbclock.formats.order;

import java.util.List;
import java.util.Map;

/** What one row of a table, or one object of a JSON file, says; and a way to report its faults. */
interface Fields {

    /** The text, without blanks around it; empty when nothing is said. */
    String text(Field field);

    /** A list, such as of allergens; empty when nothing is said. */
    List<String> list(Field field);

    /** Choices by name; empty when nothing is said. */
    Map<String, String> choices(Field field);

    /** Reports what is said there. */
    void fault(Field field, String expected, String advice);

    /** Reports something about what is said there. */
    void fault(Field field, String read, String expected, String advice);
}
