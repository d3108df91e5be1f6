package crumbclock.formats.order;

import crumbclock.formats.json.Spot;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** What an edit says of an order or cake, and what was there before where it says nothing. */
record EditedFields(JsonFields edit, RequestFields before) implements Fields {

    private static final Set<Field> NEVER_EDITED = Set.of(Field.ORDER, Field.ORDER_TITLE, Field.CAKE);

    /** Whether the edit has a word on it, be it that it is empty from now on. */
    boolean says(Field field) {
        return !NEVER_EDITED.contains(field) && edit.spot().node().has(field.key());
    }

    @Override
    public String text(Field field) {
        boolean madeUpTitle = field == Field.TITLE && before.text(Field.TITLE).endsWith(" " + before.text(Field.METHOD))
                && (says(Field.SIZE) || says(Field.METHOD));
        boolean windowMoves = field == Field.HAND_OVER_FROM && says(Field.HAND_OVER);
        if (says(field)) {
            return edit.text(field);
        }
        return madeUpTitle || windowMoves ? "" : before.text(field);
    }

    @Override
    public List<String> list(Field field) {
        return says(field) ? edit.list(field) : before.list(field);
    }

    /** Options and batches of another method mean something else, so with another method they begin anew. */
    @Override
    public Map<String, String> choices(Field field) {
        boolean anew = says(Field.METHOD) && !edit.text(Field.METHOD).equals(before.text(Field.METHOD));
        Map<String, String> choices = new TreeMap<>(anew ? Map.of() : before.choices(field));
        choices.putAll(edit.choices(field));
        return choices;
    }

    @Override
    public void fault(Field field, String expected, String advice) {
        fault(field, Spot.show(edit.spot().node().path(field.key())), expected, advice);
    }

    @Override
    public void fault(Field field, String read, String expected, String advice) {
        if (says(field)) {
            edit.fault(field, read, expected, advice);
        } else {
            before.fault(field, read, expected, advice);
        }
    }
}
