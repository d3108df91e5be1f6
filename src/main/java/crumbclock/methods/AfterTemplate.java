package crumbclock.methods;

/**
 * A step, or the end of a whole section, that comes before this step. A link from a step that the request's options
 * leave out falls away; a section that is left out altogether does, too.
 *
 * @param step         a step of the method; between two sections made per tier it is the same tier's, from a section
 *                     made once it is that one, towards a step made once it is every tier's
 * @param section      or the last step of this section (of its shared batch, if it comes from one)
 * @param leastMinutes at least this long, 0 by default
 * @param mostMinutes  and at most; null for no limit
 */
public record AfterTemplate(String step, String section, int leastMinutes, Integer mostMinutes) {

    public AfterTemplate {
        step = Given.text(step);
        section = Given.text(section);
    }
}
