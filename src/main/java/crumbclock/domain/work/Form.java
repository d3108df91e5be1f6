package crumbclock.domain.work;

/**
 * What stands somewhere during a step: pans, wrapped layers, a cake on its board, a box, a tub.
 *
 * @param pieces       equal pieces, each standing by itself, at least 1
 * @param massGrams    of one piece
 * @param warmthC      how warm it is when it goes in (rule R11)
 * @param open         not covered: allergens pass between open items on one shelf or surface (rule R13)
 * @param pasteFinish  has a sugar-paste finish: keeps out of humid stores (rule R11)
 */
public record Form(String name, Footprint footprint, int heightMm, int massGrams, int pieces, int warmthC,
        boolean open, boolean pasteFinish) {
}
