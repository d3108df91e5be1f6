package crumbclock.formats.plan;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import crumbclock.domain.day.DayState;
import crumbclock.domain.day.KitchenEvent;
import crumbclock.formats.calendar.ProblemCalendar;
import java.util.Collection;

/** What a plan differs in from its problem file, as its plan file has it. */
record DayWriter(ProblemCalendar calendar) {

    void write(DayState state, ObjectNode node) {
        minute(node, "now", state.now());
        ArrayNode away = node.putArray("away");
        for (KitchenEvent event : state.kitchen()) {
            ObjectNode entry = away.addObject().put("kind", DayStates.word(event.kind()));
            if (!event.id().isEmpty()) {
                entry.put("id", event.id());
            }
            minute(entry, "from", event.when().start());
            minute(entry, "until", event.when().end());
        }
        ArrayNode slower = node.putArray("slower");
        state.slower().forEach((step, minutes) -> slower.addObject().put("step", step).put("minutes", minutes));
        texts(node.putArray("skipped"), state.skipped());
        ArrayNode again = node.putArray("again");
        state.again().forEach(one -> texts(again.addObject().put("batch", one.batchId()).putArray("cakes"), one.cakeIds()));
        texts(node.putArray("repairs"), state.repairs());
        ArrayNode lost = node.putArray("lost");
        state.lostAt().forEach((step, at) -> minute(lost.addObject().put("step", step), "lostBy", at));
        texts(node.putArray("happened"), state.happened());
        texts(node.putArray("goingOn"), state.goingOn());
        ArrayNode known = node.putArray("known");
        state.known().steps().forEach(step -> {
            ObjectNode entry = known.addObject().put("step", step.stepId());
            minute(entry, "start", step.start());
            texts(entry.putArray("people"), step.people());
            entry.put("putIn", step.putIn()).put("takeOut", step.takeOut());
        });
    }

    private void minute(ObjectNode node, String key, int minute) {
        node.put(key, minute).put(key + "At", calendar.show(minute));
    }

    private static void texts(ArrayNode node, Collection<String> texts) {
        texts.forEach(node::add);
    }
}
