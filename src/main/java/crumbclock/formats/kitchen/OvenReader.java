package crumbclock.formats.kitchen;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Rack;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.MeasureReader;
import crumbclock.formats.json.Spot;
import crumbclock.formats.kitchen.KitchenFile.AwayEntry;
import crumbclock.formats.kitchen.KitchenFile.OvenEntry;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.function.Function;

/** Flattens ovens into cavities: "oven" for a plain one, "deck/upper" for one of several. */
record OvenReader(CalendarReader times, MeasureReader measures, IssueLog log) {

    List<Cavity> read(Spot spot, OvenEntry oven) {
        if (oven.racks() == null == (oven.cavities() == null)) {
            spot.fault(log, oven.racks() == null ? "neither \"racks\" nor \"cavities\"" : "both \"racks\" and \"cavities\"",
                    "either \"racks\" (a plain oven) or \"cavities\" (each with racks)", "");
            return List.of();
        }
        if (oven.cavities() == null) {
            return List.of(cavity(spot, spot, oven, oven));
        }
        Ids.unique(spot.child("cavities"), oven.cavities(), OvenEntry::id, new HashSet<>(), log);
        List<Cavity> cavities = new ArrayList<>();
        for (int i = 0; i < oven.cavities().size(); i++) {
            cavities.add(cavity(spot, spot.child("cavities").child(i), oven, oven.cavities().get(i)));
        }
        return cavities;
    }

    /** One cavity; a plain oven is its own only cavity, and then both entries and both spots are the same. */
    private Cavity cavity(Spot ovenSpot, Spot spot, OvenEntry oven, OvenEntry entry) {
        boolean plain = oven == entry;
        String ovenName = oven.name() == null ? oven.id() : oven.name();
        String name = entry.name() != null ? entry.name() : plain ? ovenName : ovenName + ", " + entry.id();
        Said said = new Said(ovenSpot, spot, oven, entry);
        var leastSpot = said.spot("leastTemperature", OvenEntry::leastTemperature);
        var mostSpot = said.spot("mostTemperature", OvenEntry::mostTemperature);
        int least = measures.temperature(leastSpot, said.of(OvenEntry::leastTemperature, "50"));
        int most = measures.temperature(mostSpot, said.of(OvenEntry::mostTemperature, "250"));
        if (most < least && !leastSpot.isFaulty(log) && !mostSpot.isFaulty(log)) {
            mostSpot.fault(log, most + " °C", "at least leastTemperature, " + least + " °C", "");
        }
        return new Cavity(plain ? oven.id() : oven.id() + "/" + entry.id(), name, racks(spot.child("racks"), entry), least, most,
                said.of(OvenEntry::preheatMinutes, 15), said.of(OvenEntry::upPerTenC, 1), said.of(OvenEntry::downPerTenC, 2),
                said.of(OvenEntry::keepHotMinutes, 30),
                measures.position(said.spot("wallGap", OvenEntry::wallGap), said.of(OvenEntry::wallGap, "20")),
                measures.position(said.spot("panGap", OvenEntry::panGap), said.of(OvenEntry::panGap, "20")),
                away(said));
    }

    private List<Rack> racks(Spot spot, OvenEntry entry) {
        List<Rack> racks = new ArrayList<>();
        for (int i = 0; i < entry.racks().size(); i++) {
            var rack = entry.racks().get(i);
            var at = spot.child(i);
            racks.add(new Rack(measures.length(at.child("width"), rack.width()), measures.length(at.child("depth"), rack.depth()),
                    measures.length(at.child("clearHeight"), rack.clearHeight())));
        }
        return racks;
    }

    private List<Span> away(Said said) {
        List<AwayEntry> away = said.of(OvenEntry::away, List.of());
        return times.away(said.spot("away", OvenEntry::away), away);
    }

    /** What the cavity says, else what its oven says, else the default. */
    private record Said(Spot ovenSpot, Spot cavitySpot, OvenEntry oven, OvenEntry cavity) {

        <T> T of(Function<OvenEntry, T> value, T fallback) {
            T own = value.apply(cavity) == null ? value.apply(oven) : value.apply(cavity);
            return own == null ? fallback : own;
        }

        Spot spot(String key, Function<OvenEntry, ?> value) {
            return (value.apply(cavity) == null ? ovenSpot : cavitySpot).child(key);
        }
    }
}
