package crumbclock.report.promise;

import static crumbclock.report.text.TerminalText.padded;

import crumbclock.domain.promise.Help;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.OrderEffect;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.report.text.TerminalText;
import java.util.Optional;

/** The answers for a terminal: sentences first, then a table of what the others pay. */
public final class PromiseSummary {

    private static final int PRICE = 32;
    private static final int TITLE = 30;

    private final PromiseAnswer answer;
    private final PromiseWords words;
    private final StringBuilder out = new StringBuilder();

    private PromiseSummary(PromiseAnswer answer) {
        this.answer = answer;
        this.words = new PromiseWords(answer);
    }

    /** Lines that end with {@code \n}. */
    public static String render(PromiseAnswer answer) {
        var summary = new PromiseSummary(answer);
        summary.wished();
        summary.offers();
        summary.deadlines();
        summary.helps();
        summary.table();
        return summary.out.toString();
    }

    private void wished() {
        line(answer.orderId() + ", " + answer.order().title() + ": wished for " + words.clock().dayTime(answer.wishedMinute()) + ", asked "
                + words.clock().dayTime(answer.now()));
        line(words.verdict());
        answer.wished().ifPresent(plan -> words.costs(plan).forEach(cost -> line("  " + cost)));
        if (!answer.complete()) {
            line("Ended early: what is missing below was not looked for.");
        }
    }

    private void offers() {
        line("");
        line("Earliest hand-over");
        for (Offer offer : answer.offers()) {
            String note = words.note(offer);
            line("  " + padded(PromiseWords.price(offer.price()), PRICE) + words.earliest(offer) + (note.isEmpty() ? "" : "  (" + note + ")"));
        }
        words.honesty().forEach(sentence -> line("  " + sentence));
    }

    private void deadlines() {
        if (answer.offers().stream().anyMatch(offer -> offer.lastYes().isPresent())) {
            line("");
            line("Until when it can wait for a yes; later may be possible");
            answer.offers().stream().map(words::lastYes).filter(text -> !text.isEmpty()).forEach(text -> line("  " + text));
        }
    }

    private void helps() {
        line("");
        line("What would help: " + words.helpIntro());
        for (Help help : answer.helps()) {
            line("  " + help.words() + ": " + words.help(help));
        }
    }

    private void table() {
        Optional<PromisedPlan> shown = words.shown();
        if (shown.isEmpty()) {
            return;
        }
        line("");
        line("The others, with " + answer.orderId() + " at " + words.clock().dayTime(shown.get().own().handMinute()));
        line(padded("order", 7) + padded("", TITLE) + padded("ready", 24) + padded("buffer", 26) + padded("late", 10) + "moved");
        for (OrderEffect one : shown.get().toll().orders()) {
            line(padded(one.orderId(), 7) + padded(words.title(one.orderId()), TITLE) + padded(words.ready(one, ">"), 24)
                    + padded(PromiseWords.buffer(one, ">"), 26) + padded(PromiseWords.late(one), 10) + PromiseWords.moved(one));
        }
    }

    private void line(String text) {
        out.append(TerminalText.line(text)).append('\n');
    }
}
