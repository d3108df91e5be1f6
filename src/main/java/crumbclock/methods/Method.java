package crumbclock.methods;

import java.util.List;

/**
 * How one kind of cake, or one shared batch, is made.
 *
 * @param id         what orders name
 * @param title      for people
 * @param note       what it is for and where its figures come from
 * @param kind       cake (default) or batch
 * @param options    choices that a request may make
 * @param sections   parts of the work, in the order in which their steps are listed
 * @param finishStep the step after which the cake is ready; the last step when empty
 * @param lives      how long things keep
 * @param coldLimits how long things may be out of the cold
 * @param wishes     freshness wishes up to the hand-over
 * @param repairs    what can be done when a wait was missed on the day
 */
public record Method(String id, String title, String note, MethodKind kind, List<OptionTemplate> options,
        List<Section> sections, String finishStep, List<LifeTemplate> lives, List<ColdTemplate> coldLimits,
        List<WishTemplate> wishes, List<RepairTemplate> repairs) {

    public Method {
        id = Given.text(id);
        title = Given.text(title);
        note = Given.text(note);
        kind = Given.or(kind, MethodKind.CAKE);
        options = Given.list(options);
        sections = Given.list(sections);
        finishStep = Given.text(finishStep);
        lives = Given.list(lives);
        coldLimits = Given.list(coldLimits);
        wishes = Given.list(wishes);
        repairs = Given.list(repairs);
    }
}
