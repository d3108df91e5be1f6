package crumbclock.report.svg;

/**
 * How much smaller than life the drawings of shelves and racks are. One scale for a whole page, so that they can be
 * compared; the box on paper is given in mm, so a page printed at 100 % can be measured.
 *
 * @param times so many mm in the kitchen are one mm on paper
 */
public record Scale(int times) {

    /** Empty room round a drawing, in mm of the kitchen. */
    static final double MARGIN = 14;

    /** 1 : 10 for shelves and racks up to 1.7 m wide (170 mm on paper), else 1 : 20. */
    public static Scale forWidest(int widthMm) {
        return new Scale(widthMm <= 1_700 ? 10 : 20);
    }

    /** Width on paper of a drawing of something that wide, with its margin, as a length of the page. */
    public String paperWidth(int widthMm) {
        return paper(widthMm + 2 * MARGIN);
    }

    String paper(double mm) {
        return Svg.number(mm / times) + "mm";
    }

    /** Letters of that size on paper. */
    double letters(double paperMm) {
        return paperMm * times;
    }
}
