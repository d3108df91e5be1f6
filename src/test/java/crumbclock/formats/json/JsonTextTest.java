package crumbclock.formats.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import org.junit.jupiter.api.Test;

class JsonTextTest {

    @Test
    void should_write_a_text_that_is_longer_than_a_line_as_a_text() throws IOException {
        ObjectNode tree = new ObjectMapper().createObjectNode();
        tree.putArray("reasons").addObject().put("rule", "R01").put("message", "why ".repeat(100));

        String text = JsonText.write(tree);

        assertThat(new ObjectMapper().readTree(text)).isEqualTo(tree);
    }
}
