package crumbclock.report.svg;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Writes one drawing as text: elements closed, attributes and texts escaped, numbers free of the locale. */
final class Svg {

    private final StringBuilder out = new StringBuilder();

    /**
     * Opens the drawing.
     *
     * @param width  of the page's box, with unit
     * @param height of the page's box, with unit
     * @param label  read out instead of the drawing
     */
    Svg(String width, String height, String viewBox, String cssClass, String label) {
        open("svg", "width", width, "height", height, "viewBox", viewBox, "class", cssClass, "role", "img",
                "aria-label", label);
    }

    /** At most two decimals, none when they are zero. */
    static String number(double value) {
        var rounded = BigDecimal.valueOf(value).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    static String escape(String text) {
        var escaped = new StringBuilder(text.length());
        text.codePoints().forEach(point -> {
            switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> {
                    // control characters are not allowed in XML, not even escaped
                    if (point >= 0x20 || point == '\t' || point == '\n') {
                        escaped.appendCodePoint(point);
                    }
                }
            }
        });
        return escaped.toString();
    }

    /** Attributes in pairs of name and value; a number is written by {@link #number}. */
    Svg open(String element, Object... attributes) {
        start(element, attributes);
        out.append('>');
        return this;
    }

    Svg close(String element) {
        out.append("</").append(element).append(">\n");
        return this;
    }

    Svg leaf(String element, Object... attributes) {
        start(element, attributes);
        out.append("/>\n");
        return this;
    }

    Svg text(double x, double y, String cssClass, String text) {
        open("text", "x", x, "y", y, "class", cssClass);
        out.append(escape(text));
        return close("text");
    }

    /** Text with its middle at the point. */
    Svg textMiddle(double x, double y, String cssClass, String text) {
        open("text", "x", x, "y", y, "text-anchor", "middle", "class", cssClass);
        out.append(escape(text));
        return close("text");
    }

    /** Text turned by a quarter, reading upwards, its middle at the point. */
    Svg textUp(double x, double y, String cssClass, String text) {
        open("text", "transform", "translate(" + number(x) + " " + number(y) + ") rotate(-90)", "class", cssClass,
                "text-anchor", "middle");
        out.append(escape(text));
        return close("text");
    }

    /** What a pointer that rests on the enclosing group shows; the same facts stand in a text elsewhere. */
    Svg title(String text) {
        out.append("<title>").append(escape(text)).append("</title>");
        return this;
    }

    private void start(String element, Object... attributes) {
        out.append('<').append(element);
        for (int i = 0; i < attributes.length; i += 2) {
            var value = attributes[i + 1];
            String text = value instanceof Double number ? number(number) : value.toString();
            out.append(' ').append(attributes[i]).append("=\"").append(escape(text)).append('"');
        }
    }

    String end() {
        close("svg");
        return out.toString();
    }
}
