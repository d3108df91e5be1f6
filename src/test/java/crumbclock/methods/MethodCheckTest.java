package crumbclock.methods;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class MethodCheckTest {

    private static Method read(String json) throws JsonProcessingException {
        return new ObjectMapper().readValue(json.replace('\'', '"'), Method.class);
    }

    @Test
    void the_library_is_sound() {
        assertThat(LibraryFixture.LIBRARY.values()).isNotEmpty()
                .allSatisfy(method -> assertThat(MethodCheck.problems(method)).isEmpty());
    }

    @Test
    void names_every_reference_that_leads_nowhere() throws JsonProcessingException {
        var method = read("""
                {'id': 'm', 'title': 'M', 'finishStep': 'pack', 'sections': [{'id': 'cake', 'steps': [
                  {'id': 'mix', 'work': {'minutes': {'any': 5}}, 'needs': [{'pool': 'mixer', 'until': 'bake'}],
                   'when': {'size': ['small'], 'message': ['perhaps']}},
                  {'id': 'mix', 'after': [{'step': 'sift'}, {'section': 'icing'}]}]}],
                 'lives': [{'id': 'l', 'from': 'mix', 'to': 'eat', 'held': ['rest'], 'lifeMinutes': {'AMBIENT': 5}}],
                 'wishes': [{'from': 'baking', 'minutes': 5}]}
                """);

        assertThat(MethodCheck.problems(method)).containsExactly(
                "method m: step mix stands there twice",
                "method m: step mix, until: read \"bake\"; expected one of mix, mix",
                "method m: step mix, when message: read \"perhaps\"; expected one of no, yes",
                "method m: step mix, when: read \"size\"; expected one of hand-over, message, tiers",
                "method m: step mix needs either work or rest",
                "method m: step mix, after step: read \"sift\"; expected one of mix",
                "method m: step mix, after section: read \"icing\"; expected one of cake",
                "method m: finishStep: read \"pack\"; expected one of mix",
                "method m: life l, to: read \"eat\"; expected one of hand-over, mix",
                "method m: life l, held: read \"rest\"; expected one of mix",
                "method m: wish, from: read \"baking\"; expected one of mix");
    }

    @Test
    void names_what_is_wrong_with_a_repair() throws JsonProcessingException {
        var method = read("""
                {'id': 'm', 'title': 'M', 'sections': [{'id': 'cake', 'steps': [{'id': 'mix', 'work': {'minutes': {'any': 5}}}]}],
                 'repairs': [{'from': 'bake', 'to': 'sift', 'missed': ['WAIT_TOO_LONG'], 'steps': [
                   {'id': 'mix', 'work': {'minutes': {'any': 5}}, 'after': [{'step': 'mix'}]},
                   {'id': 'wait', 'contains': ['egg'], 'when': {'size': ['small']}}]}]}
                """);

        assertThat(MethodCheck.problems(method)).containsExactly(
                "method m: step mix stands there twice",
                "method m: repair mix, from: read \"bake\"; expected one of mix",
                "method m: repair mix, to: read \"sift\"; expected one of mix",
                "method m: step mix is part of a repair, which has no \"after\", no \"contains\", no \"until\" and no oven",
                "method m: step wait needs either work or rest",
                "method m: step wait, when: read \"size\"; expected one of hand-over, message, tiers",
                "method m: step wait is part of a repair, which has no \"after\", no \"contains\", no \"until\" and no oven");
    }

    @Test
    void steps_that_wait_for_each_other_are_told() throws JsonProcessingException {
        var method = read("""
                {'id': 'm', 'title': 'M', 'sections': [
                  {'id': 'a', 'steps': [{'id': 'hen', 'work': {'minutes': {'any': 5}}, 'after': [{'step': 'egg'}]}]},
                  {'id': 'b', 'steps': [{'id': 'egg', 'work': {'minutes': {'any': 5}}, 'after': [{'step': 'hen'}]}]}]}
                """);
        var faults = new java.util.ArrayList<ExpansionFault>();
        Expander.expand(java.util.List.of(LibraryFixture.order(crumbclock.domain.order.HandOverWay.SET_ASIDE,
                LibraryFixture.cake("m", LibraryFixture.round(8, 2)))), java.util.List.of(),
                java.util.Map.of("m", method), java.util.Set.of(), faults::add);
        assertThat(faults).singleElement().satisfies(fault -> assertThat(fault.message())
                .isEqualTo("these steps wait for each other: X1/hen, X1/egg"));
    }
}
