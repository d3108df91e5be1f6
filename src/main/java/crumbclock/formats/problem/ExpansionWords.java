package crumbclock.formats.problem;

import crumbclock.methods.ExpansionFault;

/**
 * A fault of the expansion in the two halves of an issue.
 *
 * @param read     what stands there
 * @param expected what would be right
 */
public record ExpansionWords(String read, String expected) {

    private static final String MARK = "; expected ";

    /** Splits the fault's sentence. */
    public static ExpansionWords of(ExpansionFault fault) {
        int split = fault.message().indexOf(MARK);
        String read = (split < 0 ? fault.message() : fault.message().substring(0, split)).replaceFirst("^read ", "");
        return new ExpansionWords(read, split < 0 ? "what its method and this kitchen can make"
                : fault.message().substring(split + MARK.length()));
    }
}
