package crumbclock.formats.csv;

/**
 * Keeps text from being run as a formula by a spreadsheet: an apostrophe in front, which reading takes off again. A text
 * that looks as if it had got one already gets another, so that every text comes back as it was.
 */
final class FormulaGuard {

    /** First letters that make a spreadsheet read a cell as a formula, the wide forms of East Asian keyboards too. */
    private static final String FORMULA_STARTS = "=+-@\t\r\n＝＋－＠";
    private static final char GUARD = '\'';

    private FormulaGuard() {
    }

    static String guarded(String text) {
        return startsFormula(text) ? GUARD + text : text;
    }

    static String unguarded(String cell) {
        return !cell.isEmpty() && cell.charAt(0) == GUARD && startsFormula(cell) ? cell.substring(1) : cell;
    }

    /** Whether a formula starts at once, or behind apostrophes. */
    private static boolean startsFormula(String text) {
        int behind = 0;
        while (behind < text.length() && text.charAt(behind) == GUARD) {
            behind++;
        }
        return behind < text.length() && FORMULA_STARTS.indexOf(text.charAt(behind)) >= 0;
    }
}
