package crumbclock.cli;

import java.io.PrintStream;
import me.tongfei.progressbar.ConsoleProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** Draws a bar that fills up with the seconds that the search may take. */
final class ProgressOnTerminal extends Progress {

    private final ProgressBar bar;

    /** @param mostSeconds the whole search; below 0 when it does not end by the clock */
    ProgressOnTerminal(PrintStream err, Interrupt interrupt, long mostSeconds) {
        super(err, interrupt);
        bar = new ProgressBarBuilder().setTaskName("planning").setInitialMax(mostSeconds).setUpdateIntervalMillis(250)
                .setStyle(ProgressBarStyle.ASCII).setConsumer(new ConsoleProgressBarConsumer(err)).hideEta().build();
    }

    @Override
    void tell() {
        bar.stepTo(seconds());
        bar.setExtraMessage(" " + standing());
    }

    @Override
    public void close() {
        bar.close();
    }
}
