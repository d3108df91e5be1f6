package crumbclock.formats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each kind of fault, put into the example one at a time, with its whole message. */
class FaultsTest {

    private static final String ID = "a short name that other entries refer to: letters, digits, '.', '_' and '-', starting with a letter "
            + "or digit, at most 60.";
    private static final String LENGTH = "a length such as 203, \"203 mm\", \"20 cm\" or \"8 in\", from 1 to 100,000 mm.";

    @TempDir
    private Path folder;
    private TestProblem example;

    @BeforeEach
    void copyTheExample() throws IOException {
        example = new TestProblem(folder);
    }

    @ParameterizedTest(name = "{0}: {2}")
    @MethodSource({"ofTheKitchen", "ofTheProblem", "ofTheTable", "ofTheOrdersFile"})
    void should_say_where_what_was_read_what_is_expected_and_what_to_try(String file, String old, String spoiled, List<String> messages)
            throws IOException {
        assertThat(example.with(file, old, spoiled).issues()).containsExactlyElementsOf(messages);
    }

    private static Arguments fault(String file, String old, String spoiled, String... messages) {
        return arguments(file, old, spoiled, List.of(messages));
    }

    static Stream<Arguments> ofTheKitchen() {
        String file = "kitchen.json";
        return Stream.of(
                fault(file, "\"shifts\": { \"friday\"", "\"shfts\": { \"friday\"",
                        "kitchen.json, line 14, /people/1: read no key \"shifts\"; expected the key \"shifts\" (when the person is there).",
                        "kitchen.json, line 14, /people/1/shfts: read the key \"shfts\"; expected a key that is known here. Did you mean \"shifts\"?"),
                fault(file, "\"piping\", \"stacking\"", "\"piping\", 7",
                        "kitchen.json, line 10, /people/0/skills/1: read 7; expected " + ID),
                fault(file, "\"mostHoursADay\": 10", "\"mostHoursADay\": \"ten\"",
                        "kitchen.json, line 12, /people/0/mostHoursADay: read \"ten\"; expected a number (most hours of work in one calendar day. Default 24)."),
                fault(file, "\"mostHoursADay\": 10", "\"mostHoursADay\": 25",
                        "kitchen.json, line 12, /people/0/mostHoursADay: read 25; expected at most 24."),
                fault(file, "\"coating\": 0.9", "\"coating\": 0",
                        "kitchen.json, line 11, /people/0/pace/coating: read 0; expected at least 0.1."),
                fault(file, "\"9:00-13:00\"", "\"25:10-13:00\"",
                        "kitchen.json, line 8, /people/0/shifts/friday/0: read \"25:10-13:00\"; expected times from-to such as 09:00-17:30 or 9 am - 5:30 pm."),
                fault(file, "\"2 pm - 9:30 pm\"", "\"12:30-9:30 pm\"",
                        "kitchen.json, line 8, /people/0/shifts: read 2026-06-05T09:00 to 2026-06-05T13:00 and 2026-06-05T12:30 to 2026-06-05T21:30; "
                                + "expected times that do not overlap. Join them or move one of them."),
                fault(file, "2026-06-06\": \"06", "2026-06-31\": \"06",
                        "kitchen.json, line 8, /people/0/shifts/2026-06-31: read \"2026-06-31\"; expected a date that exists, such as 2026-06-05."),
                fault(file, "\"everyday\": \"06:00-23:30\"", "\"evryday\": \"06:00-23:30\"",
                        "kitchen.json, line 67, /openingHours/evryday: read the key \"evryday\"; expected times of day by weekday (\"friday\") or date "
                                + "(\"2026-06-05\"), or \"everyday\". A date replaces the weekday's times, a weekday replaces \"everyday\". "
                                + "Did you mean \"everyday\"?"),
                fault(file, "\"kind\": \"fridge\"", "\"kind\": \"frigde\"",
                        "kitchen.json, line 39, /stores/0/kind: read \"frigde\"; expected one of fridge, freezer, cool room, ambient. Did you mean \"fridge\"?"),
                fault(file, "\"id\": \"ben\"", "\"id\": \"ada\"",
                        "kitchen.json, line 14, /people/1/id: read \"ada\"; expected an id that nothing else of this kind has. Rename one of the two."),
                fault(file, "\"id\": \"lower\"", "\"id\": \"upper\"",
                        "kitchen.json, line 32, /ovens/1/cavities/1/id: read \"upper\"; expected an id that nothing else of this kind has. Rename one of the two."),
                fault(file, "\"id\": \"ben\"", "\"id\": \"the ben\"",
                        "kitchen.json, line 14, /people/1/id: read \"the ben\"; expected " + ID),
                fault(file, "\"id\": \"upper\", \"racks\": [{ \"width\": \"24 in\", \"depth\": \"18 in\", \"clearHeight\": \"7 in\" }]", "\"id\": \"upper\", \"racks\": []",
                        "kitchen.json, line 31, /ovens/1/cavities/0/racks: read an empty list; expected at least 1 entry."),
                fault(file, "\"id\": \"deck\",", "\"id\": \"deck\", \"racks\": [{ \"width\": 1, \"depth\": 1, \"clearHeight\": 1 }],",
                        "kitchen.json, line 28, /ovens/1: read both \"racks\" and \"cavities\"; expected either \"racks\" (a plain oven) or \"cavities\" (each with racks)."),
                fault(file, "460, \"depth\": 370, \"clearHeight\": 120", "\"46 cn\", \"depth\": 370, \"clearHeight\": \"1,200 mm\"",
                        "kitchen.json, line 24, /ovens/0/racks/0/clearHeight: read \"1,200 mm\"; expected " + LENGTH,
                        "kitchen.json, line 24, /ovens/0/racks/0/width: read \"46 cn\"; expected " + LENGTH),
                fault(file, "\"clearHeight\": 180", "\"clearHeight\": 0",
                        "kitchen.json, line 45, /stores/0/shelves/0/clearHeight: read 0; expected " + LENGTH),
                fault(file, "\"500 F\"", "\"hot\"",
                        "kitchen.json, line 22, /ovens/0/mostTemperature: read \"hot\"; expected a temperature such as 175, \"175 C\" or \"350 F\", from -60 to 400 °C."),
                fault(file, "\"500 F\"", "40",
                        "kitchen.json, line 22, /ovens/0/mostTemperature: read 40 °C; expected at least leastTemperature, 50 °C."),
                fault(file, "\"width\": 200", "\"width\": 600",
                        "kitchen.json, line 53, /stores/0/shelves/1/goods/0: read \"family food\" reaching 600 × 420 mm, 320 mm high; "
                                + "expected goods that stand wholly on the shelf of 520 × 420 mm, 320 mm high."),
                fault(file, "\"unit\": 1", "\"unit\": 2",
                        "kitchen.json, line 65, /equipment/1/away/0/unit: read 2; expected a piece from 1 to 1, the pool's count."),
                fault(file, "\"Fri 9:00\"", "\"2026-06-03 9:00\"",
                        "kitchen.json, line 65, /equipment/1/away/0/until: read \"2026-06-03 9:00\"; expected a moment after \"from\", which is \"2026-06-04T20:00\"."),
                fault(file, "\"freeFrom\": [\"nuts\"]", "\"freeFrom\": [\"nutz\"]",
                        "kitchen.json, line 45, /stores/0/shelves/0/freeFrom/0: read \"nutz\"; expected an allergen as the methods name it. "
                                + "Nothing contains \"nutz\". Did you mean \"nuts\"?"),
                fault(file, "\"count\": 2", "\"count\": 2.5",
                        "kitchen.json, line 64, /equipment/0/count: read 2.5; expected a whole number (how many there are. Default 1)."),
                fault(file, "\"name\": \"Back kitchen\",", "",
                        "kitchen.json, line 1: read no key \"name\"; expected the key \"name\" (what the kitchen is called)."),
                fault(file, "\"capacity\": \"4.8 L\"", "\"capacity\": \"4.8 in\"",
                        "kitchen.json, line 64, /equipment/0/capacity: read \"4.8 in\"; expected a volume or mass such as 4800, \"4.8 L\", \"5 qt\" or \"3 kg\", "
                                + "from 0 to 1,000,000 mL or g."));
    }

    static Stream<Arguments> ofTheProblem() {
        String file = "problem.json";
        return Stream.of(
                fault(file, "\"kitchen.json\"", "\"kitchn.json\"",
                        "problem.json, line 6, /kitchen: read \"kitchn.json\"; expected the path of a file, from this file's folder. Did you mean \"kitchen.json\"?"),
                fault(file, "\"orders.csv\"", "\"orders.cvs\"",
                        "problem.json, line 7, /orders/0: read \"orders.cvs\"; expected the path of a file, from this file's folder. Did you mean \"orders.csv\"?"),
                fault(file, "Europe/London", "Europe/Lodon",
                        "problem.json, line 5, /zone: read \"Europe/Lodon\"; expected a time zone by its IANA name, such as Europe/London. "
                                + "Did you mean \"Europe/London\"?"),
                fault(file, "2026-06-06T12:00", "2026-06-03T12:00",
                        "problem.json, line 4, /end: read \"2026-06-03T12:00\"; expected a moment after the start, 2026-06-04T18:00, and at most 60 days after it."),
                fault(file, "2026-06-04T18:00", "yesterday",
                        "problem.json, line 3, /start: read \"yesterday\"; expected a date and time such as 2026-06-05T14:30."),
                fault(file, "2026-06-04T18:00", "2026-03-29T01:30",
                        "problem.json, line 3, /start: read \"2026-03-29T01:30\"; expected a date and time such as 2026-06-05T14:30 that the clocks in "
                                + "Europe/London do not jump over."),
                fault(file, "\"earlyBefore\": \"06:30\"", "\"earlyBefore\": \"25:10\", \"lateMinutes\": 3",
                        "problem.json, line 9, /weights/earlyBefore: read \"25:10\"; expected a time such as 14:30 or 2:30 pm.",
                        "problem.json, line 9, /weights/lateMinutes: read the key \"lateMinutes\"; expected a key that is known here. Did you mean \"lateMinute\"?"),
                fault(file, "icing-bowl\", \"amount\": \"4 L\"", "icing-bwl\", \"amount\": \"4 parsec\"",
                        "problem.json, line 8, /batches/0/amount: read \"4 parsec\"; expected a volume or mass such as 4800, \"4.8 L\", \"5 qt\" or \"3 kg\", "
                                + "from 0 to 1,000,000 mL or g.",
                        "problem.json, line 8, /batches/0/method: read \"icing-bwl\"; expected the id of a method that makes batches. Did you mean \"icing-bowl\"?"),
                fault(file, "\"title\": \"A small weekend\",", "",
                        "problem.json, line 1: read no key \"title\"; expected the key \"title\" (free text for people, at most 500 characters)."),
                fault(file, "\"bufferMinutes\": 45", "\"bufferMinutes\": 45, \"fixed\": [{\"step\":\"A1/bak\",\"start\":5,\"end\":3,\"surface\":\"bnch\"}]",
                        "problem.json, line 10, /fixed/0/end: read 3; expected a minute not before \"start\", which is 5.",
                        "problem.json, line 10, /fixed/0/step: read \"A1/bak\"; expected a step of the problem. Did you mean \"A1/bake\"?",
                        "problem.json, line 10, /fixed/0/surface: read \"bnch\"; expected a surface of the kitchen. Did you mean \"bench\"?"));
    }

    static Stream<Arguments> ofTheTable() {
        String file = "orders.csv";
        return Stream.of(
                fault(file, "message", "mesage",
                        "orders.csv, line 1, header: read a column \"mesage\"; expected a column that is known. Did you mean \"message\"?"),
                fault(file, "hand_over,", "collect,",
                        "orders.csv, line 1, header: read a column \"collect\"; expected a column that is known. Known: batches, buffer, cake, contains, door_minutes, "
                                + "earliest, free_from, hand_over, hand_over_from, importance, layers, load_minutes and 12 more.",
                        "orders.csv, line 1, header: read no column hand_over; expected the columns order, method, size and hand_over at least."),
                fault(file, "order,cake,title", "order,cake,cake",
                        "orders.csv, line 1, header: read the column \"cake\" again; expected each column once."),
                fault(file, "2026-06-06 10:00", "25:10",
                        "orders.csv, line 2, column hand_over: read \"25:10\"; expected a date and time such as 2026-06-05T14:30, 2026-06-05 2:30 pm or Sat 14:30."),
                fault(file, "2026-06-06 10:00", "06/06/2026 10:00",
                        "orders.csv, line 2, column hand_over: read \"06/06/2026 10:00\"; expected a date and time such as 2026-06-05T14:30, 2026-06-05 2:30 pm or Sat 14:30."),
                fault(file, "2026-06-06 10:00", "2026-06-07 10:00",
                        "orders.csv, line 2, column hand_over: read \"2026-06-07 10:00\"; expected a time inside the problem, 2026-06-04T18:00 to 2026-06-06T12:00."),
                fault(file, "2026-06-06 09:30", "2026-06-06 10:01",
                        "orders.csv, line 2, column hand_over_from: read \"2026-06-06 10:01\"; expected a time not after hand_over, 2026-06-06T10:00."),
                fault(file, "2026-06-05 09:00", "2026-06-06 11:00",
                        "orders.csv, line 3, column earliest: read \"2026-06-06 11:00\"; expected a time before the hand-over, 2026-06-06T11:00."),
                fault(file, "3+2", "3+2+1",
                        "orders.csv, line 3, column layers: read \"3+2+1\"; expected layers from 1 to 20, such as 3, or 3+2 from the bottom tier up. The size has 2 tiers."),
                fault(file, "9x13 in", "9x13 inc",
                        "orders.csv, line 4, column size: read \"9x13 inc\"; expected sizes such as 8 in, 20 cm, 10 in + 6 in or 9x13 in, each side from 20 to 2,000 mm."),
                fault(file, "8 in,3,", "8 in,,",
                        "orders.csv, line 2, column layers: read nothing; expected layers from 1 to 20, such as 3, or 3+2 from the bottom tier up. The size has one tier."),
                fault(file, "cupcakes-swirl", "cupcake-swirl",
                        "orders.csv, line 5, column method: read \"cupcake-swirl\"; expected the id of a method that makes cakes. Did you mean \"cupcakes-swirl\"?"),
                fault(file, "delivery,,20,", "delivery,,,",
                        "orders.csv, line 3, column road_minutes: read nothing; expected the minutes on the road, one way, for a delivery."),
                fault(file, "set aside", "by drone",
                        "orders.csv, line 5, column way: read \"by drone\"; expected one of pick-up, delivery, set aside."),
                fault(file, "icing=icing-1,wrap=no settle=yes", "icing=icing-2,wrap no",
                        "orders.csv, line 2, column batches: read \"icing=icing-2\"; expected batches that the problem lists under \"batches\". "
                                + "There is no batch \"icing-2\". Did you mean \"icing-1\"?",
                        "orders.csv, line 2, column options: read \"wrap no\"; expected names with their choices such as finish=marbled colours=3."),
                fault(file, "wrap=no settle=yes", "wrap=maybe",
                        "orders.csv, line 2, column options: read option wrap: read \"maybe\"; expected one of yes, no."),
                fault(file, "9x13 in,1,,24,,,,", "9x13 in,1,,24,Sat 12:00,,pick-up,",
                        "orders.csv, line 4, column hand_over: read \"Sat 12:00\"; expected nothing, or \"Sat 11:00\" as on line 3, the first row of order B2.",
                        "orders.csv, line 4, column way: read \"pick-up\"; expected nothing, or \"delivery\" as on line 3, the first row of order B2."),
                fault(file, "60,,,\"Hap", "60,nutz,,\"Hap",
                        "orders.csv, line 2, column free_from: read \"nutz\"; expected allergens as the methods name them. Nothing contains \"nutz\". Did you mean \"nuts\"?"),
                fault(file, "C3,", ",", "orders.csv, line 5, column order: read nothing; expected the order that the cake belongs to."),
                fault(file, "B2,kitchen", "B2,top",
                        "orders.csv, line 4, column cake: read \"top\"; expected an id that no other cake or batch has. \"B2/top\" is taken."),
                fault(file, ",1,,60,,,\"Hap", ",1.5,,60,,,\"Hap",
                        "orders.csv, line 2, column importance: read \"1.5\"; expected a whole number from 1 to 1,000."),
                fault(file, "C3,,Two", "C 3,,Two",
                        "orders.csv, line 5, column order: read \"C 3\"; expected a short name of letters, digits, '.', '_' and '-'."));
    }

    static Stream<Arguments> ofTheOrdersFile() {
        String file = "orders.json";
        return Stream.of(
                fault(file, "\"D4\"", "\"A1\"", "orders.json, line 4, /orders/0/id: read \"A1\"; expected an id that no other order has. It was read before."),
                fault(file, "\"2026-06-06T10:30\"", "true",
                        "orders.json, line 6, /orders/0/handOver: read true; expected a local date and time in the problem's zone: \"2026-06-05T14:30\", "
                                + "\"2026-06-05 2:30 pm\", or \"Sat 10:00\" for the next such weekday from the problem's start."),
                fault(file, "\"layers\": 2,", "",
                        "orders.json, line 11, /orders/0/cakes/0/layers: read nothing; expected layers from 1 to 20, such as 3, or 3+2 from the bottom tier up. "
                                + "The size has one tier."),
                fault(file, "\"icing\": \"icing-1\"", "\"icng\": \"icing-1\"",
                        "orders.json, line 18, /orders/0/cakes/0/batches: read component \"icng\"; expected one of batter, icing of method abc-layer-cake."),
                fault(file, "\"importance\": 2", "\"importance\": 2,\n \"importance\": 3",
                        "orders.json, line 10, /orders/0/importance: read the key \"importance\" again; expected each key once in an object. The first one is on line 9."));
    }

    @Test
    void should_tell_the_faults_of_all_files_at_once() throws IOException {
        // given
        example.with("problem.json", "Europe/London", "Europe/Lodon").with("kitchen.json", "\"9:00-13:00\"", "\"9-13\"")
                .with("orders.csv", "2026-06-06 10:00", "25:10").with("orders.json", "\"20 cm\"", "\"20 parsec\"");

        // then
        assertThat(example.issues()).hasSize(4).extracting(text -> text.split(",")[0])
                .containsExactly("kitchen.json", "orders.csv", "orders.json", "problem.json");
    }

    @Test
    void should_report_a_method_file_that_breaks_its_schema() throws IOException {
        // given
        example.with("problem.json", "\"zone\"", "\"methods\": [\"mine.json\"], \"zone\"")
                .whole("mine.json", "{\"format\":\"crumbclock-methods-1\",\"methods\":[{\"id\":\"x\",\"title\":\"X\",\"sectoins\":[]}]}");

        // then
        assertThat(example.issues()).containsExactly(
                "mine.json, line 1, /methods/0: read no key \"sections\"; expected the key \"sections\".",
                "mine.json, line 1, /methods/0/sectoins: read the key \"sectoins\"; expected a key that is known here. Did you mean \"sections\"?");
    }

    @Test
    void should_report_equipment_that_a_method_needs_at_every_cake_that_needs_it() throws IOException {
        assertThat(example.with("kitchen.json", "\"mixer\"", "\"mixr\"").issues()).contains(
                "orders.csv, line 2, column method: read step mix needs equipment \"mixer\", which the kitchen does not have; expected one of mixr, turntable.",
                "problem.json, line 8, /batches/0: read step make needs equipment \"mixer\", which the kitchen does not have; expected one of mixr, turntable.");
    }

    @Test
    void should_report_a_syntax_error_beside_the_faults_of_other_files() throws IOException {
        // given
        example.with("kitchen.json", "\"humid\": true,", "\"humid\": true").with("orders.csv", "3+2", "3+2+1");

        // then
        assertThat(example.issues()).hasSize(2).first().asString().isEqualTo("kitchen.json, line 44: read unexpected character '\"': "
                + "was expecting comma to separate Object entries; expected JSON. Look here and just above for a missing comma, quote or bracket.");
    }
}
