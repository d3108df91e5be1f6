package crumbclock.formats.order;

import static org.assertj.core.api.Assertions.assertThat;

import crumbclock.domain.order.HandOverWay;
import crumbclock.domain.problem.ProblemClock;
import crumbclock.domain.request.OrderRequest;
import crumbclock.domain.work.Footprint;
import crumbclock.formats.calendar.ProblemCalendar;
import crumbclock.formats.file.SourceFile;
import crumbclock.formats.issue.IssueLog;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What tables of orders may look like. */
class OrderTextTest {

    private static List<OrderRequest> read(String text) {
        var clock = new ProblemClock(LocalDateTime.parse("2026-06-05T08:00").atZone(ZoneId.of("Europe/London")), 2 * 1440);
        var log = new IssueLog();
        var reader = new OrdersReader(new ProblemCalendar(clock, true),
                new Names(Set.of("plain", "cups"), Set.of(), Set.of("bowl-1", "icing-2"), true), 60, log);
        reader.file(SourceFile.ofText("orders.csv", text));
        assertThat(log.sorted()).isEmpty();
        return reader.orders();
    }

    @Test
    void should_give_defaults_to_what_is_not_said() {
        var order = read("order,method,size,layers,hand_over\nA1,plain,8 in,3,Sat 10:00\n").get(0);

        assertThat(order).isEqualTo(new OrderRequest("A1", "8 in plain", order.cakes(), HandOverWay.PICK_UP, 26 * 60, 26 * 60, 5, 10, 0, 0, 1, 0, 60));
        assertThat(order.cakes().get(0).id()).isEqualTo("A1");
        assertThat(order.cakes().get(0).pieces()).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "ORDER,Method,Size,LAYERS,Hand Over,Free From,Set-up minutes",
        "hand_over,order,size,method,layers,free_from,set_up_minutes",
        "Hand-Over,order,size,method,layers,freefrom,setup_minutes"})
    void should_take_columns_in_any_order_and_spelling(String header) {
        // given
        var cells = Map.of("order", "A1", "method", "plain", "size", "8 in", "layers", "3", "handover", "Sat 10:00", "freefrom", "nuts", "setupminutes", "7");
        var row = java.util.Arrays.stream(header.split(",")).map(name -> cells.get(name.toLowerCase().replaceAll("[ _-]", ""))).toList();

        // when
        var order = read(header + "\n" + String.join(",", row) + "\n").get(0);

        // then
        assertThat(order.cakes().get(0).freeFrom()).containsExactly("nuts");
        assertThat(order.setUpMinutes()).isEqualTo(7);
    }

    @Test
    void should_read_a_table_with_all_the_habits_of_a_spreadsheet_at_once() {
        // given
        String text = "\uFEFFOrder;Cake;Method;Size;Layers;Pieces;Hand over;Importance;Contains;Message;Batches;;\r\n"
                + "A1;;plain;\"10″ + 6″\";\"3+2\";;2026-06-06 10:00;2,0;\"milk, egg;wheat\";\"Dear Ann;\r\n\"\"hip hip\"\"\";batter=bowl-1 icing=icing-2;;\r\n"
                + "A1;;plain;9×13 in;1;;;;;'=one;;;\r\n"
                + ";;;;;;;;;;;;\r\n"
                + "B2;;cups;7,5 cm;;24,0;Sat 9:30 am;;Milk;;;;\r\n"
                + ";;;;;;;;;;;;\r\n\r\n";

        // when
        var orders = read(text);

        // then
        assertThat(orders).extracting(OrderRequest::id).containsExactly("A1", "B2");
        var first = orders.get(0).cakes().get(0);
        assertThat(first.id()).isEqualTo("A1/1");
        assertThat(first.tiers()).extracting(tier -> tier.size()).containsExactly(new Footprint(true, 254, 254), new Footprint(true, 152, 152));
        assertThat(first.tiers()).extracting(tier -> tier.layers()).containsExactly(3, 2);
        assertThat(first.contains()).containsExactly("egg", "milk", "wheat");
        assertThat(first.message()).isEqualTo("Dear Ann;\r\n\"hip hip\"");
        assertThat(first.batches()).isEqualTo(Map.of("batter", "bowl-1", "icing", "icing-2"));
        assertThat(orders.get(0).importance()).isEqualTo(2);
        var second = orders.get(0).cakes().get(1);
        assertThat(second.id()).isEqualTo("A1/2");
        assertThat(second.message()).isEqualTo("=one");
        assertThat(second.tiers().get(0).size()).isEqualTo(new Footprint(false, 229, 330));
        var cups = orders.get(1).cakes().get(0);
        assertThat(cups.pieces()).isEqualTo(24);
        assertThat(cups.servings()).isEqualTo(24);
        assertThat(cups.tiers().get(0)).isEqualTo(new crumbclock.domain.request.TierRequest(new Footprint(true, 75, 75), 1));
        assertThat(cups.contains()).containsExactly("milk");
    }

    @ParameterizedTest
    @CsvSource({"pick-up, PICK_UP", "Pickup, PICK_UP", "delivery, DELIVERY", "Set aside, SET_ASIDE", "set-aside, SET_ASIDE"})
    void should_read_the_way(String way, HandOverWay expected) {
        assertThat(read("order,method,size,layers,hand_over,way,road_minutes\nA1,plain,8 in,3,Sat 10:00," + way + ",15\n").get(0).way()).isEqualTo(expected);
    }

    @Test
    void should_gather_rows_of_one_order_that_stand_apart() {
        var orders = read("order,method,size,layers,hand_over\nA,plain,8 in,3,Sat 10:00\nB,plain,8 in,3,Sat 10:00\nA,plain,6 in,3,\n");

        assertThat(orders).hasSize(2);
        assertThat(orders.get(0).cakes()).extracting(cake -> cake.id()).containsExactly("A/1", "A/2");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {"8 in|203", "8in|203", "8\"|203", "8″|203", "8 ″|203", "20 cm|200", "203|203", "203 mm|203", "8½ in|216"})
    void should_read_a_round(String text, int diameter) {
        assertThat(TierText.sizes(text).orElseThrow()).containsExactly(new Footprint(true, diameter, diameter));
    }

    @ParameterizedTest
    @ValueSource(strings = {"9x13 in", "9 x 13 in", "9×13 in", "9 in x 13 in", "9\"x13\"", "9″ × 13″", "9 by 13 in", "229x330", "22.9 x 33 cm"})
    void should_read_a_rectangle(String text) {
        assertThat(TierText.sizes(text).orElseThrow()).containsExactly(new Footprint(false, 229, 330));
    }

    @ParameterizedTest
    @ValueSource(strings = {"10 in + 6 in", "10+6 in", "10\" + 6\"", "25.4 cm + 152 mm", "254 + 152"})
    void should_read_tiers_from_the_bottom_up(String text) {
        assertThat(TierText.sizes(text).orElseThrow()).extracting(Footprint::widthMm).containsExactly(254, 152);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "8", "big", "8 in +", "8 x 9 x 10 in", "3 m", "8 in 6 in", "8 kg", "+"})
    void should_refuse_sizes_that_are_unclear_or_out_of_range(String text) {
        assertThat(TierText.sizes(text)).isEmpty();
    }

    @Test
    void should_read_layers_for_all_tiers_or_for_each() {
        assertThat(TierText.layers("3", 2)).contains(List.of(3, 3));
        assertThat(TierText.layers("3 + 2", 2)).contains(List.of(3, 2));
        assertThat(TierText.layers("3+2", 1)).isEmpty();
        assertThat(TierText.layers("0", 1)).isEmpty();
        assertThat(TierText.layers("21", 1)).isEmpty();
        assertThat(TierText.layers("2.5", 1)).isEmpty();
        assertThat(TierText.layers("", 1)).isEmpty();
    }
}
