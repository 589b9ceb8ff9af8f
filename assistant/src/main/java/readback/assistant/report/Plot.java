package readback.assistant.report;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/**
 * A drawing with two axes, as SVG inside a page. Everything is told by shape, hatching and words, never by colour
 * alone, so that it can be read in black and white. One thread.
 */
final class Plot {

    static final int WIDTH = 680;
    private static final int LEFT = 76;
    private static final int RIGHT = 24;
    private static final int TOP = 22;
    private static final int BOTTOM = 56;
    private static final int TICK = 5;
    private static final double MARK = 5.5;

    private final String id;
    private final int height;
    private final String title;
    private final String description;
    private final Axis across;
    private final Axis up;
    private final Markup body = new Markup();

    /**
     * @param id unique in the page
     * @param title what the plot shows
     * @param description what a reader who cannot see it needs to know
     */
    Plot(String id, int height, String title, String description, Scale across, Scale up) {
        this.id = id;
        this.height = height;
        this.title = title;
        this.description = description;
        this.across = across.between(LEFT, WIDTH - RIGHT);
        this.up = up.between(height - BOTTOM, TOP);
    }

    /** An axis before it has its place. */
    record Scale(String label, double low, double high, boolean logarithmic) {
        Axis between(double from, double to) {
            return new Axis(label, low, high, logarithmic, from, to);
        }
    }

    /** A point in values of the axes. */
    record At(double x, double y) {}

    Axis across() {
        return across;
    }

    /** A stretch of the upward axis that is allowed, hatched, between two lines of points. */
    Plot band(List<At> low, List<At> high) {
        StringBuilder path = new StringBuilder();
        low.forEach(point -> path.append(path.isEmpty() ? "M" : "L").append(at(point)));
        for (int i = high.size() - 1; i >= 0; i--) {
            path.append("L").append(at(high.get(i)));
        }
        path.append("Z");
        body.shape("path", "d", path.toString(), "class", "band", "style", "fill:url(#" + id + "-hatch)");
        return this;
    }

    /** A line through points. */
    Plot line(String style, List<At> points) {
        StringBuilder path = new StringBuilder();
        points.forEach(point -> path.append(path.isEmpty() ? "M" : "L").append(at(point)));
        body.shape("path", "d", path.toString(), "class", "line " + style);
        return this;
    }

    /** A measured point with its shape. */
    Plot mark(Shape shape, String name, At point) {
        double x = across.place(point.x());
        double y = up.place(point.y());
        body.shape("path", "d", shape.path(x, y, MARK), "class", "mark", "data-point", name);
        return this;
    }

    /** Shapes of points. */
    enum Shape {
        CIRCLE {
            @Override
            String path(double x, double y, double r) {
                return "M" + number(x - r) + " " + number(y) + "a" + number(r) + " " + number(r) + " 0 1 0 "
                        + number(2 * r) + " 0a" + number(r) + " " + number(r) + " 0 1 0 " + number(-2 * r) + " 0Z";
            }
        },
        SQUARE {
            @Override
            String path(double x, double y, double r) {
                return "M" + number(x - r) + " " + number(y - r) + "h" + number(2 * r) + "v" + number(2 * r) + "h"
                        + number(-2 * r) + "Z";
            }
        },
        TRIANGLE {
            @Override
            String path(double x, double y, double r) {
                return "M" + number(x - r) + " " + number(y + r) + "h" + number(2 * r) + "L" + number(x) + " "
                        + number(y - r) + "Z";
            }
        },
        DIAMOND {
            @Override
            String path(double x, double y, double r) {
                return "M" + number(x - r) + " " + number(y) + "L" + number(x) + " " + number(y - r) + "L"
                        + number(x + r) + " " + number(y) + "L" + number(x) + " " + number(y + r) + "Z";
            }
        };

        abstract String path(double x, double y, double r);
    }

    /** Words beside a point. */
    Plot words(String words, At point, double right, double below, String anchor) {
        body.element(
                "text",
                words,
                "x",
                number(across.place(point.x()) + right),
                "y",
                number(up.place(point.y()) + below),
                "text-anchor",
                anchor,
                "class",
                "words");
        return this;
    }

    /** A vertical error bar with feet. */
    Plot errorBar(double x, double low, double high) {
        double place = across.place(x);
        double foot = TICK;
        String path = "M" + number(place - foot) + " " + number(up.place(low)) + "h" + number(2 * foot) + "M"
                + number(place) + " " + number(up.place(low)) + "V" + number(up.place(high)) + "M"
                + number(place - foot) + " " + number(up.place(high)) + "h" + number(2 * foot);
        body.shape("path", "d", path, "class", "line error");
        return this;
    }

    /** A horizontal error bar with feet. */
    Plot errorBarAcross(double y, double low, double high) {
        double place = up.place(y);
        double foot = TICK + 3.0;
        String path = "M" + number(across.place(low)) + " " + number(place - foot) + "v" + number(2 * foot) + "M"
                + number(across.place(low)) + " " + number(place) + "H" + number(across.place(high)) + "M"
                + number(across.place(high)) + " " + number(place - foot) + "v" + number(2 * foot);
        body.shape("path", "d", path, "class", "line error");
        return this;
    }

    /** The drawing, for a page. */
    Markup drawing(boolean withUpwardTicks) {
        Markup svg = new Markup();
        svg.open(
                "svg",
                "viewBox",
                "0 0 " + WIDTH + " " + height,
                "role",
                "img",
                "aria-labelledby",
                id + "-title " + id + "-desc",
                "class",
                "plot");
        svg.element("title", title, "id", id + "-title");
        svg.element("desc", description, "id", id + "-desc");
        svg.open("defs");
        svg.open(
                "pattern",
                "id",
                id + "-hatch",
                "width",
                "8",
                "height",
                "8",
                "patternUnits",
                "userSpaceOnUse",
                "patternTransform",
                "rotate(45)");
        svg.shape("rect", "width", "8", "height", "8", "class", "hatch-ground");
        svg.shape("path", "d", "M0 0V8", "class", "hatch");
        svg.close().closeLine();
        grid(svg, withUpwardTicks);
        svg.add(body);
        svg.closeLine();
        return svg;
    }

    private void grid(Markup svg, boolean withUpwardTicks) {
        double bottom = up.from();
        double top = up.to();
        for (BigDecimal tick : across.ticks()) {
            double x = across.place(tick.doubleValue());
            svg.shape("path", "d", "M" + number(x) + " " + number(bottom) + "V" + number(top), "class", "grid");
            svg.element(
                    "text",
                    tick.toPlainString(),
                    "x",
                    number(x),
                    "y",
                    number(bottom + 18),
                    "text-anchor",
                    "middle",
                    "class",
                    "tick");
        }
        if (withUpwardTicks) {
            for (BigDecimal tick : up.ticks()) {
                double y = up.place(tick.doubleValue());
                svg.shape("path", "d", "M" + LEFT + " " + number(y) + "H" + (WIDTH - RIGHT), "class", "grid");
                svg.element(
                        "text",
                        tick.toPlainString(),
                        "x",
                        number(LEFT - 8),
                        "y",
                        number(y + 4),
                        "text-anchor",
                        "end",
                        "class",
                        "tick");
            }
            svg.element(
                    "text",
                    up.label(),
                    "transform",
                    "translate(16 " + number((top + bottom) / 2) + ") rotate(-90)",
                    "text-anchor",
                    "middle",
                    "class",
                    "axis");
        }
        svg.shape(
                "path",
                "d",
                "M" + LEFT + " " + number(top) + "V" + number(bottom) + "H" + (WIDTH - RIGHT),
                "class",
                "frame");
        svg.element(
                "text",
                across.label(),
                "x",
                number((LEFT + WIDTH - RIGHT) / 2.0),
                "y",
                number(height - 12),
                "text-anchor",
                "middle",
                "class",
                "axis");
    }

    private String at(At point) {
        return number(across.place(point.x())) + " " + number(up.place(point.y()));
    }

    private static String number(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.equals("-0.00") ? "0.00" : text;
    }
}
