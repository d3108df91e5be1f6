package crumbclock.report.svg;

/**
 * How much smaller than life the drawings of shelves and racks are. One scale for a whole page, so that they can be
 * compared; the box on paper is given in mm, so a page printed at 100 % can be measured.
 *
 * @param times so many mm in the kitchen are one mm on paper
 */
public record Scale(int times) {

    /** 1 : 8 for shelves and racks up to 1.4 m wide (175 mm on paper), else 1 : 16. */
    public static Scale forWidest(int widthMm) {
        return new Scale(widthMm <= 1_400 ? 8 : 16);
    }

    String paper(double mm) {
        return Svg.number(mm / times) + "mm";
    }

    /** Letters of that size on paper. */
    double letters(double paperMm) {
        return paperMm * times;
    }
}
