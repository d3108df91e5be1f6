package crumbclock.methods;

/**
 * An amount in a pool's measure. Mixer bowls are measured by their volume in mL, so that one figure holds for batter,
 * icing and cream: the percentage says how much bowl each of them needs.
 *
 * @param of      what it is reckoned from
 * @param percent of that, 100 by default
 * @param source  where the percentage comes from
 */
public record AmountTemplate(Quantity of, Integer percent, String source) {

    public AmountTemplate {
        of = Given.or(of, Quantity.PIECES);
        percent = Given.or(percent, 100);
        source = Given.text(source);
    }
}
