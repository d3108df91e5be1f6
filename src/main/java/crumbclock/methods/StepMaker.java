package crumbclock.methods;

import crumbclock.domain.request.TierRequest;
import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Footprint;
import crumbclock.domain.work.Form;
import crumbclock.domain.work.HandsOn;
import crumbclock.domain.work.OvenUse;
import crumbclock.domain.work.Pan;
import crumbclock.domain.work.PlaceNeed;
import crumbclock.domain.work.Step;
import crumbclock.domain.work.StepKind;
import crumbclock.domain.work.Touch;
import crumbclock.domain.work.Wait;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Turns one step template and its scope into a concrete step; equipment is added by the caller, who knows the ids. */
final class StepMaker {

    private static final String SIZE = "{size}";

    private StepMaker() {
    }

    /** The step's names: its id, what people read, its owner and its part. */
    record Names(String id, String name, String ownerId, String part) {
    }

    /**
     * @param contains allergens that come in with this very step; those of the steps before it are added later
     * @throws IllegalArgumentException when the template is neither work nor rest, a size cannot be read, or its minutes cannot be
     */
    static Step make(StepTemplate template, Scope scope, Names names, List<EquipmentNeed> equipment,
            Set<String> contains, Set<String> freeFrom, int earliest) {
        if ((template.work() == null) == (template.rest() == null)) {
            throw new IllegalArgumentException("step " + template.id() + " needs either work or rest");
        }
        var place = Optional.ofNullable(template.place()).map(read -> place(read, scope));
        if (template.work() != null) {
            return new Step(names.id(), names.name(), names.ownerId(), names.part(), StepKind.HANDS_ON,
                    Optional.of(handsOn(template.work(), scope)), 0, 0, Optional.empty(), Optional.empty(), false,
                    equipment, Optional.empty(), place, contains, freeFrom, earliest);
        }
        var rest = template.rest();
        int least = scope.minutes(rest.leastMinutes(), Times.ONCE);
        int most = rest.mostMinutes().isEmpty() ? Wait.NO_MOST
                : Math.max(least, scope.minutes(rest.mostMinutes(), Times.ONCE));
        return new Step(names.id(), names.name(), names.ownerId(), names.part(), StepKind.UNATTENDED, Optional.empty(),
                least, most, touch(rest.putInMinutes()), touch(rest.takeOutMinutes()), rest.presence(), equipment,
                Optional.ofNullable(rest.oven()).map(oven -> oven(oven, scope, least)), place, contains, freeFrom,
                earliest);
    }

    private static HandsOn handsOn(WorkTemplate work, Scope scope) {
        boolean heavy = !work.pairFrom().isEmpty() && scope.upperTiers().stream()
                .anyMatch(tier -> Geometry.nominalMm(tier.size()) >= SizeTable.mm(work.pairFrom()) - 1);
        return new HandsOn(scope.minutes(work.minutes(), work.times()), heavy ? Math.max(2, work.people())
                : work.people(), work.skill(), work.kind(), work.mayPutDown(), false, work.finish());
    }

    private static Optional<Touch> touch(int minutes) {
        return minutes == 0 ? Optional.empty() : Optional.of(new Touch(minutes, ""));
    }

    private static OvenUse oven(OvenTemplate oven, Scope scope, int leastMinutes) {
        int bake = leastMinutes - oven.coolInOvenMinutes();
        if (bake < 0) {
            throw new IllegalArgumentException("cools in the oven for " + oven.coolInOvenMinutes() + " of " + leastMinutes
                    + " minutes; expected no longer than its least rest");
        }
        return new OvenUse(SizeTable.of(oven.temperatureC()).stepAt(scope.largestMm()), pans(oven.pan(), scope),
                (bake * oven.doorShutPercent() + 99) / 100, oven.coolInOvenMinutes());
    }

    private static List<Pan> pans(PanTemplate pan, Scope scope) {
        var pans = new ArrayList<Pan>();
        if (pan.widthMm() > 0) {
            var outside = new Footprint(false, pan.widthMm(), pan.depthMm());
            return List.copyOf(Collections.nCopies(scope.count(pan.count()), new Pan(outside, pan.heightMm())));
        }
        for (TierRequest tier : scope.tiers()) {
            int each = pan.count() == Count.LAYERS ? tier.layers() : 1;
            pans.addAll(Collections.nCopies(each, new Pan(wider(tier.size(), pan.plusMm()), pan.heightMm())));
        }
        return List.copyOf(pans);
    }

    private static PlaceNeed place(PlaceTemplate place, Scope scope) {
        var form = place.form();
        int heightMm = form.perLayerMm() * heightLayers(form, scope)
                + form.perTierMm() * (form.count() == Count.TIERS ? 1 : scope.tiers().size()) + form.plusHeightMm();
        Footprint footprint = footprint(form, scope.largest().size());
        if (footprint.widthMm() < 1 || footprint.depthMm() < 1) {
            throw new IllegalArgumentException("comes to a form of " + footprint.widthMm() + " × " + footprint.depthMm()
                    + " mm; expected at least 1 mm each way, so a \"plusMm\" that takes less away");
        }
        return new PlaceNeed(new Form(form.name(), footprint, heightMm,
                massGrams(form, scope), scope.count(form.count()), form.warmthC(), !form.covered(),
                form.pasteFinish()), place.allowed());
    }

    /** Layers on top of each other in one piece. */
    private static int heightLayers(FormTemplate form, Scope scope) {
        return form.count() == Count.TIERS
                ? scope.tiers().stream().mapToInt(TierRequest::layers).max().orElseThrow() : scope.layers();
    }

    private static Footprint footprint(FormTemplate form, Footprint size) {
        return switch (form.shape()) {
            case LIKE_TIER -> wider(size, form.plusMm());
            case RECTANGLE -> new Footprint(false, size.widthMm() + form.plusMm(), size.depthMm() + form.plusMm());
            case FIXED -> new Footprint(false, form.widthMm(), form.depthMm());
        };
    }

    private static Footprint wider(Footprint size, int plusMm) {
        return new Footprint(size.round(), size.widthMm() + plusMm, size.depthMm() + plusMm);
    }

    private static int massGrams(FormTemplate form, Scope scope) {
        if (form.massGrams() > 0) {
            return form.massGrams();
        }
        double ml = switch (form.count()) {
            case LAYERS -> Geometry.oneLayerMl(scope.largest());
            case TIERS -> Geometry.cakeMl(scope.largest());
            case ONE, DOZENS -> scope.tiers().stream().mapToDouble(Geometry::cakeMl).sum();
        };
        return SizeTable.whole(ml * form.gramsPerLitre() / 1000);
    }

    /** The needs that the kitchen can meet; a pool named by size gives one need for each size in the scope. */
    static List<EquipmentNeed> equipment(NeedTemplate need, Scope scope, String untilStepId) {
        int amount = need.amount() == null ? 0 : scope.amount(need.amount());
        if (!need.pool().contains(SIZE)) {
            return List.of(new EquipmentNeed(need.pool(), scope.count(need.count()), amount, untilStepId));
        }
        var needs = new ArrayList<EquipmentNeed>();
        for (TierRequest tier : scope.tiers()) {
            String pool = need.pool().replace(SIZE, Geometry.poolSize(tier.size()));
            int units = need.count() == Count.LAYERS ? tier.layers() : 1;
            needs.add(new EquipmentNeed(pool, units, amount, untilStepId));
        }
        return List.copyOf(needs);
    }
}
