package crumbclock.report.html;

import crumbclock.report.view.PlanView;
import java.util.List;

/** What a cake holds and what it must not meet, for the label and the order of work. */
public record AllergenRow(String owner, String title, String contains, String freeFrom) {

    static List<AllergenRow> of(PlanView view) {
        return view.problem().cakes().stream().map(cake -> new AllergenRow(view.ownerLabel(cake.id()), cake.title(),
                String.join(", ", cake.contains()), String.join(", ", cake.freeFrom()))).toList();
    }
}
