package crumbclock.formats.plan;

import crumbclock.domain.plan.PanPlace;
import crumbclock.domain.plan.PersonWork;
import crumbclock.domain.plan.PlacedStep;
import crumbclock.domain.plan.PlacedTouch;
import crumbclock.domain.plan.Placement;
import crumbclock.domain.plan.TouchEnd;
import crumbclock.domain.plan.UnitUse;
import crumbclock.formats.json.Spot;
import crumbclock.formats.plan.PlanFile.PanEntry;
import crumbclock.formats.plan.PlanFile.PlacementEntry;
import crumbclock.formats.plan.PlanFile.StepEntry;
import crumbclock.formats.plan.PlanFile.TouchEntry;
import crumbclock.units.Span;
import java.util.ArrayList;
import java.util.List;

/** Entries that plan files and fixed steps share, to the domain's records. */
record StepConverter(PlanReferences references) {

    /** Written beside {@link TouchEnd#PUT_IN}; the other end is {@code take out}. */
    static final String PUT_IN = "put in";
    static final String TAKE_OUT = "take out";

    PlacedStep step(Spot spot, StepEntry entry) {
        references.step(spot, entry.step());
        references.surface(spot, entry.surface());
        if (!entry.cavity().isEmpty()) {
            references.cavity(spot, entry.cavity());
        }
        Span when = references.span(spot, "start", entry.start(), "end", entry.end());
        List<PersonWork> work = new ArrayList<>();
        for (int i = 0; i < entry.work().size(); i++) {
            work.add(work(spot.child("work").child(i), entry.work().get(i)));
        }
        List<UnitUse> units = new ArrayList<>();
        for (int i = 0; i < entry.units().size(); i++) {
            var at = spot.child("units").child(i);
            var unit = entry.units().get(i);
            references.unit(at, unit.pool(), unit.unit());
            Span held = references.span(at, unit.from(), unit.until());
            units.add(new UnitUse(unit.pool(), unit.unit() - 1, held.start(), held.end()));
        }
        return new PlacedStep(entry.step(), when.start(), when.end(), work, units, entry.surface(), entry.cavity());
    }

    private PersonWork work(Spot spot, PlanFile.WorkEntry entry) {
        references.person(spot, entry.person());
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i < entry.spans().size(); i++) {
            spans.add(references.span(spot.child("spans").child(i), entry.spans().get(i).from(), entry.spans().get(i).until()));
        }
        return new PersonWork(entry.person(), spans);
    }

    PlacedTouch touch(Spot spot, String stepId, TouchEntry entry) {
        references.person(spot, entry.person());
        var end = entry.at().equals(PUT_IN) ? TouchEnd.PUT_IN : TouchEnd.TAKE_OUT;
        return new PlacedTouch(stepId, end, entry.person(), references.span(spot, entry.from(), entry.until()));
    }

    PanPlace pan(Spot spot, String stepId, PanEntry entry) {
        references.rack(spot, entry.cavity(), entry.rack());
        references.pan(spot, stepId, entry.pan());
        return new PanPlace(stepId, entry.pan() - 1, entry.cavity(), entry.rack() - 1, entry.x(), entry.y(), entry.turned());
    }

    Placement placement(Spot spot, String stepId, PlacementEntry entry) {
        references.shelf(spot, entry.store(), entry.shelf());
        references.piece(spot, stepId, entry.piece());
        return new Placement(stepId, entry.piece() - 1, entry.store(), entry.shelf(), entry.x(), entry.y(), entry.turned(),
                references.span(spot, entry.from(), entry.until()));
    }
}
