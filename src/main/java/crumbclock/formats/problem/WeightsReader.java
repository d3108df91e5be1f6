package crumbclock.formats.problem;

import crumbclock.domain.problem.Weights;
import crumbclock.formats.calendar.ClockText;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.Spot;
import java.math.BigDecimal;
import java.util.Map;

/** Weights as named in a problem file, the others as they are by default. */
public record WeightsReader(Spot spot, Map<String, String> named, IssueLog log) {

    public Weights read() {
        var usual = Weights.DEFAULT;
        return new Weights(points("lateMinute", usual.lateMinute()), points("lateOrder", usual.lateOrder()),
                points("notPossible", usual.notPossible()), points("bufferMinute", usual.bufferMinute()),
                points("staleMinute", usual.staleMinute()), points("spreadMinute", usual.spreadMinute()),
                points("oddHourMinute", usual.oddHourMinute()), points("unevenMinute", usual.unevenMinute()),
                points("workChange", usual.workChange()), points("cakeChange", usual.cakeChange()),
                points("extraFinisher", usual.extraFinisher()), points("heatUp", usual.heatUp()),
                points("ovenMinute", usual.ovenMinute()), points("behind", usual.behind()), points("endMinute", usual.endMinute()),
                timeOfDay("earlyBefore", usual.earlyBefore()), timeOfDay("lateAfter", usual.lateAfter()),
                points("movedMinute", usual.movedMinute()), points("otherHands", usual.otherHands()));
    }

    /** The schema has checked that it is whole and in range; "30.0" is whole, too. */
    private int points(String name, int usual) {
        return named.containsKey(name) ? new BigDecimal(named.get(name)).intValueExact() : usual;
    }

    private int timeOfDay(String name, int usual) {
        if (!named.containsKey(name)) {
            return usual;
        }
        var minute = ClockText.minuteOfDay(named.get(name));
        if (minute.isEmpty()) {
            spot.child(name).fault(log, ClockText.TIME_EXPECTED, "");
        }
        return minute.orElse(usual);
    }
}
