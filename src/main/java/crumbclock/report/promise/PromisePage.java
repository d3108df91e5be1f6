package crumbclock.report.promise;

import crumbclock.domain.promise.Help;
import crumbclock.domain.promise.Offer;
import crumbclock.domain.promise.OrderEffect;
import crumbclock.domain.promise.Price;
import crumbclock.domain.promise.PromiseAnswer;
import crumbclock.domain.promise.PromisedPlan;
import crumbclock.report.html.Templates;
import crumbclock.report.svg.PromiseStrip;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The answers as one page that needs no network; each plan's own page is a link away. Equal answers give equal bytes. */
public final class PromisePage {

    private final PromiseAnswer answer;
    private final PromiseWords words;

    private PromisePage(PromiseAnswer answer) {
        this.answer = answer;
        this.words = new PromiseWords(answer);
    }

    /** @throws IllegalStateException when a template of the program is broken */
    public static String render(PromiseAnswer answer) {
        return Templates.render("promise.ftlh", new PromisePage(answer).values());
    }

    private Map<String, Object> values() {
        Map<String, Object> values = new LinkedHashMap<>();
        values.put("order", answer.orderId());
        values.put("title", answer.order().title());
        values.put("kitchen", answer.asked().kitchen().name());
        values.put("wish", words.clock().dateTime(answer.wishedMinute()));
        values.put("asked", words.clock().dateTime(answer.now()));
        values.put("zone", answer.asked().clock().zone().getId());
        values.put("seed", answer.seed());
        values.put("complete", answer.complete());
        values.put("verdict", words.verdict());
        values.put("yes", answer.wished().isPresent() && answer.wished().get().toll().price() != Price.ANY_PRICE);
        values.put("strip", Templates.markup(PromiseStrip.draw(answer, offer -> offer.price().words())));
        values.put("offers", answer.offers().stream().map(this::offer).toList());
        values.put("honesty", words.honesty());
        values.put("helpIntro", words.helpIntro());
        values.put("helps", answer.helps().stream().map(this::help).toList());
        var shown = words.shown();
        values.put("wishedFolder", answer.wished().map(answer::nameOf).orElse(""));
        values.put("shown", shown.map(plan -> words.clock().dayTime(plan.own().handMinute())).orElse(""));
        values.put("costs", shown.map(words::costs).orElse(List.of()));
        values.put("effects", shown.map(plan -> plan.toll().orders().stream().map(this::effect).toList()).orElse(List.of()));
        return values;
    }

    /** One price as a row. */
    public record OfferRow(String price, String meaning, boolean found, String time, String note, String folder, String yesBy, String kept,
            String yesFolder) {
    }

    private OfferRow offer(Offer offer) {
        Optional<PromisedPlan> last = offer.lastYes();
        return new OfferRow(PromiseWords.price(offer.price()), PromiseWords.meaning(offer.price()), offer.earliest().isPresent(),
                words.earliest(offer), words.note(offer), offer.earliest().map(answer::nameOf).orElse(""),
                last.map(plan -> words.clock().dayTime(plan.sayYesBy())).orElse(""),
                last.map(plan -> words.clock().dayTime(offer.kept())).orElse(""), last.map(answer::nameOf).orElse(""));
    }

    /** One thing that helps. */
    public record HelpRow(String what, String result, String folder) {
    }

    private HelpRow help(Help help) {
        return new HelpRow(help.words(), words.help(help), answer.nameOf(help.plan()));
    }

    /** What another order pays, as cells. */
    public record EffectRow(String order, String title, String ready, String buffer, String late, String moved, boolean worse) {
    }

    private EffectRow effect(OrderEffect one) {
        return new EffectRow(one.orderId(), words.title(one.orderId()), words.ready(one, "→"), PromiseWords.buffer(one, "→"),
                PromiseWords.late(one), PromiseWords.moved(one), one.isWorse());
    }
}
