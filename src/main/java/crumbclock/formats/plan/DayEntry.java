package crumbclock.formats.plan;

import java.util.List;

/** What a plan file says of the day on which it was made. Absent lists are empty. */
record DayEntry(int now, List<AwayEntry> away, List<SlowerEntry> slower, List<String> skipped, List<AgainEntry> again, List<String> repairs, List<LostEntry> lost,
        List<String> happened, List<String> goingOn, List<KnownEntry> known) {

    DayEntry {
        away = orNone(away);
        slower = orNone(slower);
        skipped = orNone(skipped);
        again = orNone(again);
        repairs = orNone(repairs);
        lost = orNone(lost);
        happened = orNone(happened);
        goingOn = orNone(goingOn);
        known = orNone(known);
    }

    record AwayEntry(String kind, String id, int from, int until) {

        AwayEntry {
            id = id == null ? "" : id;
        }
    }

    record SlowerEntry(String step, int minutes) {
    }

    record AgainEntry(String batch, List<String> cakes) {
    }

    record LostEntry(String step, int lostBy) {
    }

    record KnownEntry(String step, int start, List<String> people, String putIn, String takeOut) {

        KnownEntry {
            people = orNone(people);
            putIn = putIn == null ? "" : putIn;
            takeOut = takeOut == null ? "" : takeOut;
        }
    }

    private static <T> List<T> orNone(List<T> values) {
        return values == null ? List.of() : values;
    }
}
