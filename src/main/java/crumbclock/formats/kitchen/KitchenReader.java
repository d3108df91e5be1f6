package crumbclock.formats.kitchen;

import crumbclock.domain.kitchen.Cavity;
import crumbclock.domain.kitchen.Kitchen;
import crumbclock.domain.kitchen.Person;
import crumbclock.domain.kitchen.PlaceKind;
import crumbclock.domain.kitchen.Pool;
import crumbclock.domain.kitchen.Pool.PoolAway;
import crumbclock.domain.kitchen.Surface;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.issue.IssueLog;
import crumbclock.formats.json.JsonLoader.Loaded;
import crumbclock.formats.json.MeasureReader;
import crumbclock.formats.json.Spot;
import crumbclock.formats.kitchen.KitchenFile.PersonEntry;
import crumbclock.formats.kitchen.KitchenFile.PoolEntry;
import crumbclock.formats.kitchen.KitchenFile.SurfaceEntry;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/** Turns a kitchen file into the domain's kitchen; every fault goes to the log, what is returned is then not to be planned with. */
public final class KitchenReader {

    private final IssueLog log;
    private final ProblemCalendar calendar;
    private final CalendarReader times;
    private final MeasureReader measures;

    public KitchenReader(ProblemCalendar calendar, IssueLog log) {
        this.log = log;
        this.calendar = calendar;
        this.times = new CalendarReader(calendar, log);
        this.measures = new MeasureReader(log);
    }

    public Kitchen read(Loaded<KitchenFile> loaded) {
        var file = loaded.value();
        var spot = loaded.spot();
        unique(spot.child("people"), file.people(), PersonEntry::id);
        unique(spot.child("equipment"), file.equipment(), PoolEntry::id);
        uniquePlaces(spot, file);
        var ovens = new OvenReader(times, measures, log);
        var stores = new StoreReader(times, measures, log);
        List<Cavity> cavities = new ArrayList<>();
        for (int i = 0; i < file.ovens().size(); i++) {
            cavities.addAll(ovens.read(spot.child("ovens").child(i), file.ovens().get(i)));
        }
        return new Kitchen(file.name(),
                each(spot.child("people"), file.people(), this::person),
                cavities,
                each(spot.child("stores"), file.stores(), stores::read),
                each(spot.child("surfaces"), file.surfaces(), this::surface),
                each(spot.child("equipment"), file.equipment(), this::pool),
                file.openingHours() == null ? List.of(calendar.whole()) : times.weekly(spot.child("openingHours"), file.openingHours()));
    }

    /** A step names the place it stands in by one id, so stores, surfaces and ovens share their names. */
    private void uniquePlaces(Spot spot, KitchenFile file) {
        Set<String> seen = new HashSet<>();
        unique(spot.child("ovens"), file.ovens(), KitchenFile.OvenEntry::id, seen);
        unique(spot.child("stores"), file.stores(), KitchenFile.StoreEntry::id, seen);
        unique(spot.child("surfaces"), file.surfaces(), SurfaceEntry::id, seen);
    }

    private <T> void unique(Spot spot, List<T> entries, Function<T, String> id) {
        unique(spot, entries, id, new HashSet<>());
    }

    private <T> void unique(Spot spot, List<T> entries, Function<T, String> id, Set<String> seen) {
        Ids.unique(spot, entries, id, seen, log);
    }

    private Person person(Spot spot, PersonEntry entry) {
        var shifts = times.weekly(spot.child("shifts"), entry.shifts());
        var breaks = times.weekly(spot.child("breaks"), entry.breaks());
        int mostMinutes = (int) Math.round(entry.mostHoursADay() * 60);
        return new Person(entry.id(), entry.name(), shifts, breaks, new TreeSet<>(entry.skills()), entry.pace(), mostMinutes);
    }

    private Surface surface(Spot spot, SurfaceEntry entry) {
        var kind = PlaceKind.valueOf(entry.kind().toUpperCase(Locale.ROOT));
        return new Surface(entry.id(), entry.name(), kind, measures.area(spot.child("area"), entry.area()),
                times.away(spot.child("away"), entry.away()));
    }

    private Pool pool(Spot spot, PoolEntry entry) {
        List<PoolAway> away = new ArrayList<>();
        for (int i = 0; i < entry.away().size(); i++) {
            var at = spot.child("away").child(i);
            int unit = entry.away().get(i).unit();
            if (unit > entry.count()) {
                at.child("unit").fault(log, "a piece from 1 to " + entry.count() + ", the pool's count", "");
            }
            Span when = times.open(at, entry.away().get(i).from(), entry.away().get(i).until());
            if (!when.isEmpty()) {
                away.add(new PoolAway(unit - 1, when));
            }
        }
        int capacity = entry.capacity() == null ? Integer.MAX_VALUE : measures.amount(spot.child("capacity"), entry.capacity());
        return new Pool(entry.id(), entry.name(), entry.count(), capacity, entry.cleanMinutes(), entry.deepCleanMinutes(),
                lowerCase(entry.deepCleanByAllergen()), away);
    }

    private static Map<String, Integer> lowerCase(Map<String, Integer> byAllergen) {
        Map<String, Integer> lower = new TreeMap<>();
        byAllergen.forEach((allergen, minutes) -> lower.merge(allergen.toLowerCase(Locale.ROOT), minutes, Math::max));
        return lower;
    }

    /** Turns one entry at its place. */
    private interface Turn<T, R> {
        R apply(Spot spot, T entry);
    }

    private static <T, R> List<R> each(Spot spot, List<T> entries, Turn<T, R> turn) {
        List<R> turned = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            turned.add(turn.apply(spot.child(i), entries.get(i)));
        }
        return turned;
    }
}
