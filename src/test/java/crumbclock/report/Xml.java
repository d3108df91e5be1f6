package crumbclock.report;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Reads a page or drawing strictly: one that leaves a tag open or a text unescaped does not parse. */
public final class Xml {

    private Xml() {
    }

    public static Document parse(String text) {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (Exception e) {
            throw new AssertionError("not well-formed: " + e.getMessage(), e);
        }
    }

    public static List<Element> all(Element from, String tag) {
        List<Element> elements = new ArrayList<>();
        var nodes = from.getElementsByTagName(tag);
        for (int i = 0; i < nodes.getLength(); i++) {
            elements.add((Element) nodes.item(i));
        }
        return elements;
    }

    public static List<Element> withClass(Element from, String tag, String cssClass) {
        return all(from, tag).stream()
                .filter(one -> List.of(one.getAttribute("class").split(" ")).contains(cssClass)).toList();
    }
}
