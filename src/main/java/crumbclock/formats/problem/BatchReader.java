package crumbclock.formats.problem;

import crumbclock.domain.request.BatchRequest;
import crumbclock.domain.request.CakeRequest;
import crumbclock.formats.calendar.ClockText;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.issue.Nearest;
import crumbclock.formats.json.MeasureReader;
import crumbclock.formats.json.Spot;
import crumbclock.formats.order.Names;
import crumbclock.formats.problem.ProblemFile.BatchEntry;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Shared batches of a problem file to requests. */
public record BatchReader(ProblemCalendar calendar, Names names, IssueLog log) {

    public List<BatchRequest> read(Spot spot, List<BatchEntry> entries) {
        Set<String> seen = new HashSet<>();
        List<BatchRequest> batches = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            var at = spot.child(i);
            var entry = entries.get(i);
            if (!seen.add(entry.id())) {
                at.child("id").fault(log, "an id that no other batch has", "Rename one of the two.");
            }
            if (entry.id().equals(CakeRequest.IN_STOCK)) {
                at.child("id").fault(log, "another id", "\"" + CakeRequest.IN_STOCK + "\" stands for components that are there already.");
            }
            if (names.complete() && !names.batchMethods().contains(entry.method())) {
                at.child("method").fault(log, "the id of a method that makes batches",
                        Nearest.advice(entry.method(), names.batchMethods()));
            }
            int amount = entry.amount() == null ? 0 : new MeasureReader(log).amount(at.child("amount"), entry.amount());
            batches.add(new BatchRequest(entry.id(), entry.title(), entry.method(), amount,
                    earliest(at.child("earliest"), entry.earliest()), lowerCase(entry.contains()),
                    lowerCase(entry.freeFrom()), entry.options()));
        }
        return batches;
    }

    private int earliest(Spot spot, String text) {
        if (text == null) {
            return 0;
        }
        var minute = calendar.minute(text);
        if (minute.isEmpty()) {
            spot.fault(log, ClockText.MOMENT_EXPECTED, "");
        } else if (minute.getAsInt() > 0 && !calendar.holds(minute.getAsInt())) {
            spot.fault(log, "a time before the problem's end, " + calendar.show(calendar.clock().horizonMinutes()), "");
        }
        return Math.max(0, minute.orElse(0));
    }

    private static Set<String> lowerCase(Collection<String> words) {
        return words.stream().map(word -> word.toLowerCase(Locale.ROOT)).collect(Collectors.toCollection(TreeSet::new));
    }
}
