package crumbclock.methods;

/**
 * What stands somewhere. Where a step concerns several tiers that stand apart, every piece takes the largest one's
 * measures, because the pieces of a form are equal.
 *
 * @param name          "cake on its board"
 * @param shape         rectangle around the tier by default
 * @param plusMm        how much wider than the nominal size; a board has 51 mm (2 in)
 * @param widthMm       for a fixed shape
 * @param depthMm       for a fixed shape
 * @param perLayerMm    height for each layer
 * @param perTierMm     height for each tier
 * @param plusHeightMm  and once: board, borders, drip
 * @param gramsPerLitre mass of one piece from the volume of cake in it; 600 by default
 * @param massGrams     fixed mass of one piece instead; 0 to reckon it
 * @param count         equal pieces; one by default
 * @param warmthC       how warm it goes in; 20 by default
 * @param covered       wrapped, boxed or lidded
 * @param pasteFinish   has a sugar-paste finish
 */
public record FormTemplate(String name, Shape shape, int plusMm, int widthMm, int depthMm, int perLayerMm,
        int perTierMm, int plusHeightMm, Integer gramsPerLitre, int massGrams, Count count, Integer warmthC,
        boolean covered, boolean pasteFinish) {

    public FormTemplate {
        name = Given.text(name);
        shape = Given.or(shape, Shape.RECTANGLE);
        gramsPerLitre = Given.or(gramsPerLitre, 600);
        count = Given.or(count, Count.ONE);
        warmthC = Given.or(warmthC, 20);
    }
}
