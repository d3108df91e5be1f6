package crumbclock.methods;

import crumbclock.domain.work.EquipmentNeed;
import crumbclock.domain.work.Step;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;

/** The steps that one cake or batch is made of, with the template and the tier that each came from. */
final class Expansion {

    private final WorkOrder order;
    private final Consumer<String> fault;
    private final List<Made> made = new ArrayList<>();

    /**
     * One step that is made.
     *
     * @param tier index of its tier; {@link #ALL_TIERS} in a section made once
     */
    record Made(Section section, StepTemplate template, int tier, Step step) {

        static final int ALL_TIERS = -1;

        String id() {
            return step.id();
        }

        /** Whether both are about the same tier, or at least one about the whole cake. */
        boolean meets(int otherTier) {
            return tier == otherTier || tier == ALL_TIERS || otherTier == ALL_TIERS;
        }
    }

    private Expansion(WorkOrder order, Consumer<String> fault) {
        this.order = order;
        this.fault = fault;
    }

    /** @param fault told of every pool that is missing and every size that cannot be read */
    static Expansion of(WorkOrder order, Consumer<String> fault) {
        var expansion = new Expansion(order, fault);
        for (Section section : order.method().sections()) {
            if (!order.fromBatch(section) && !order.stock().holds(section)) {
                expansion.makeSection(section);
            }
        }
        return expansion;
    }

    private void makeSection(Section section) {
        if (section.per() == Per.CAKE) {
            makeCopy(section, Made.ALL_TIERS);
            return;
        }
        for (int tier = 0; tier < order.scope().tiers().size(); tier++) {
            makeCopy(section, tier);
        }
    }

    private void makeCopy(Section section, int tier) {
        var scope = scope(tier);
        boolean first = true;
        for (StepTemplate template : section.steps()) {
            if (order.choices().allow(template)) {
                makeStep(section, template, tier, scope, first);
                first = false;
            }
        }
    }

    /** A step that is not in the method's order, for the tier that another one is about; empty when the options leave it out. */
    Optional<Step> beside(Made other, StepTemplate template) {
        return order.choices().allow(template) ? step(other.section(), template, other.tier(), scope(other.tier()), false) : Optional.empty();
    }

    private Scope scope(int tier) {
        return tier == Made.ALL_TIERS ? order.scope() : order.scope().only(tier);
    }

    private void makeStep(Section section, StepTemplate template, int tier, Scope scope, boolean first) {
        step(section, template, tier, scope, first).ifPresent(step -> made.add(new Made(section, template, tier, step)));
    }

    private Optional<Step> step(Section section, StepTemplate template, int tier, Scope scope, boolean first) {
        boolean oneOfSeveral = tier != Made.ALL_TIERS && order.scope().tiers().size() > 1;
        String part = oneOfSeveral ? "tier-" + (tier + 1) : isMain(section) ? "" : section.id();
        String name = oneOfSeveral ? template.name() + ", tier " + (tier + 1) : template.name();
        var contains = new TreeSet<>(order.contains());
        contains.addAll(order.choices().contains(section, template.contains(), false));
        if (first) {
            contains.addAll(order.choices().contains(section, section.contains(), true));
        }
        template.after().forEach(after -> contains.addAll(order.stock().contents().getOrDefault(
                after.step().isEmpty() ? after.section() : sectionOf(after.step()).id(), Set.of())));
        try {
            return Optional.of(StepMaker.make(template, scope,
                    new StepMaker.Names(id(template.id(), tier), name, order.ownerId(), part),
                    equipment(template, tier, scope), contains, order.freeFrom(), order.earliest()));
        } catch (IllegalArgumentException unreadable) {
            fault.accept("method " + order.method().id() + ", step " + template.id() + ": " + unreadable.getMessage());
            return Optional.empty();
        }
    }

    private boolean isMain(Section section) {
        return section.steps().stream().anyMatch(step -> step.id().equals(order.method().finishStep()));
    }

    private String id(String templateId, int tier) {
        boolean oneOfSeveral = tier != Made.ALL_TIERS && order.scope().tiers().size() > 1;
        return order.ownerId() + "/" + (oneOfSeveral ? "tier-" + (tier + 1) + "/" : "") + templateId;
    }

    private List<EquipmentNeed> equipment(StepTemplate template, int tier, Scope scope) {
        var needs = new ArrayList<EquipmentNeed>();
        for (NeedTemplate need : template.needs()) {
            for (EquipmentNeed concrete : StepMaker.equipment(need, scope, until(template, need, tier))) {
                if (order.poolIds().contains(concrete.poolId())) {
                    needs.add(concrete);
                } else if (!need.optional()) {
                    fault.accept("step " + template.id() + " needs equipment \"" + concrete.poolId()
                            + "\", which the kitchen does not have; expected one of "
                            + String.join(", ", new TreeSet<>(order.poolIds())));
                }
            }
        }
        return List.copyOf(needs);
    }

    /** Equipment is given back by a later step of the same section, or by this one when that is not made. */
    private String until(StepTemplate template, NeedTemplate need, int tier) {
        boolean made = !need.until().isEmpty() && sectionOf(template.id()).steps().stream()
                .anyMatch(later -> later.id().equals(need.until()) && order.choices().allow(later));
        return id(made ? need.until() : template.id(), tier);
    }

    List<Made> made() {
        return List.copyOf(made);
    }

    List<Step> steps() {
        return made.stream().map(Made::step).toList();
    }

    /** Steps made from this template that have to do with the tier; empty when the options leave it out. */
    List<Made> find(String templateId, int tier) {
        return made.stream().filter(m -> m.template().id().equals(templateId) && m.meets(tier)).toList();
    }

    /** The last step of each copy of the section that has to do with the tier. */
    List<Made> ends(Section section, int tier) {
        var copies = new LinkedHashSet<Integer>();
        made.stream().filter(m -> m.section() == section && m.meets(tier)).forEach(m -> copies.add(m.tier()));
        return copies.stream().map(copy -> made.stream().filter(m -> m.section() == section && m.tier() == copy)
                .reduce((earlier, later) -> later).orElseThrow()).toList();
    }

    /** The step made just before this one in the same copy of its section. */
    Optional<Made> before(Made step) {
        return made.subList(0, made.indexOf(step)).stream()
                .filter(m -> m.section() == step.section() && m.tier() == step.tier())
                .reduce((earlier, later) -> later);
    }

    /** The section of the method that has this step, made or not. */
    Section sectionOf(String templateId) {
        return order.method().sections().stream()
                .filter(section -> section.steps().stream().anyMatch(step -> step.id().equals(templateId)))
                .findFirst().orElseThrow();
    }

    /** Id of the step after which the cake is ready; the last one where the method names none that is made. */
    String finishStepId() {
        return find(order.method().finishStep(), Made.ALL_TIERS).stream().reduce((earlier, later) -> later)
                .map(Made::id).orElseGet(this::lastStepId);
    }

    /** Id of the last step in the method's order. */
    String lastStepId() {
        return made.get(made.size() - 1).id();
    }

}
