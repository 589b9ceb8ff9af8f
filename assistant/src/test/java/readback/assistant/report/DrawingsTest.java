package readback.assistant.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import readback.assistant.recorded.Scripted;
import readback.calc.fluid.Catalogue;
import readback.calc.fluid.FluidState;
import readback.calc.fluid.Lookup;
import readback.calc.fluid.Refrigerant;
import readback.calc.quantity.AbsolutePressure;
import readback.calc.quantity.Atmosphere;
import readback.calc.quantity.GaugePressure;
import readback.calc.quantity.Temperature;

/**
 * The drawings measured with a ruler: places in the picture are turned back into values by the labels of the axes alone
 * and compared with what the equation of state gives.
 */
class DrawingsTest {

    /** Joules a kilogram, exactly: NIST SP 811 (2008), appendix B. */
    private static final double BTU_PER_POUND = 2326;

    private static final Pattern POINT = Pattern.compile("([-0-9.]+) ([-0-9.]+)");

    private static List<Document> pages = List.of();

    @BeforeAll
    static void draw(@TempDir Path sessions) throws Exception {
        pages = List.of(ReportPages.tree(ReportPages.page(ReportPages.report(Scripted.charging("call"), sessions))));
    }

    private static Element drawing(String id) {
        return ReportPages.elements(pages.get(0), "svg").stream()
                .filter(svg -> svg.getAttribute("aria-labelledby").startsWith(id))
                .findFirst()
                .orElseThrow();
    }

    /** Reads one axis: the labels' places and values. */
    private static final class Ruler {
        private final TreeMap<Double, Double> labels = new TreeMap<>();
        private final boolean logarithmic;

        Ruler(Element svg, String anchor, String place, double shift, boolean logarithmic) {
            this.logarithmic = logarithmic;
            for (Element text : children(svg, "text")) {
                if (text.getAttribute("class").equals("tick")
                        && text.getAttribute("text-anchor").equals(anchor)) {
                    double value = Double.parseDouble(text.getTextContent());
                    labels.put(
                            Double.parseDouble(text.getAttribute(place)) - shift,
                            logarithmic ? Math.log(value) : value);
                }
            }
            assertThat(labels).hasSizeGreaterThan(2);
        }

        double value(double place) {
            Map.Entry<Double, Double> first = labels.firstEntry();
            Map.Entry<Double, Double> last = labels.lastEntry();
            double value = first.getValue()
                    + (place - first.getKey())
                            / (last.getKey() - first.getKey())
                            * (last.getValue() - first.getValue());
            return logarithmic ? Math.exp(value) : value;
        }
    }

    private static List<Element> children(Element svg, String name) {
        List<Element> found = new ArrayList<>();
        for (int i = 0; i < svg.getElementsByTagName(name).getLength(); i++) {
            found.add((Element) svg.getElementsByTagName(name).item(i));
        }
        return found;
    }

    private static List<double[]> places(String path) {
        List<double[]> places = new ArrayList<>();
        Matcher points = POINT.matcher(path);
        while (points.find()) {
            places.add(new double[] {Double.parseDouble(points.group(1)), Double.parseDouble(points.group(2))});
        }
        return places;
    }

    private static Refrigerant r410a() {
        return ((Lookup.Found) Catalogue.standard().find("R-410A")).refrigerant();
    }

    private static AbsolutePressure psig(double psig) {
        return GaugePressure.psig(psig).absoluteIn(Atmosphere.SEA_LEVEL);
    }

    @Test
    void the_measured_points_lie_where_the_equation_of_state_puts_them() {
        Element svg = drawing("enthalpy");
        Ruler across = new Ruler(svg, "middle", "x", 0, false);
        Ruler up = new Ruler(svg, "end", "y", 4, true);
        Map<String, FluidState> expected = Map.of(
                "SUCTION_LINE", r410a().superheatedVapour(Temperature.fahrenheit(58), psig(130)),
                "LIQUID_LINE", r410a().subcooledLiquid(Temperature.fahrenheit(97), psig(372)),
                "DISCHARGE_LINE", r410a().superheatedVapour(Temperature.fahrenheit(185), psig(372)),
                "DEW_AT_SUCTION", r410a().saturatedVapour(r410a().dewTemperature(psig(130))),
                "BUBBLE_AT_LIQUID", r410a().saturatedLiquid(r410a().bubbleTemperature(psig(372))));
        Map<String, double[]> drawn = new TreeMap<>();
        children(svg, "path").stream()
                .filter(path -> path.hasAttribute("data-point"))
                .forEach(path -> drawn.put(path.getAttribute("data-point"), middle(path.getAttribute("d"))));
        assertThat(drawn).containsOnlyKeys(expected.keySet());
        expected.forEach((name, state) -> {
            double[] place = java.util.Objects.requireNonNull(drawn.get(name));
            assertThat(across.value(place[0])).as(name).isCloseTo(state.enthalpy() / BTU_PER_POUND, within(0.1));
            assertThat(up.value(place[1]))
                    .as(name)
                    .isCloseTo(
                            state.pressure().psia(),
                            within(0.002 * state.pressure().psia()));
        });
    }

    /** The middle of a mark: every shape is drawn from its left side or lower left corner, 5.5 wide to each side. */
    private static double[] middle(String path) {
        double[] start = places(path).get(0);
        boolean circle = path.contains("a5.50");
        boolean diamond = path.startsWith("M") && path.indexOf('L') > 0 && !path.contains("h");
        boolean triangle = path.contains("h") && path.contains("L");
        double up = circle || diamond ? 0 : triangle ? -5.5 : 5.5;
        return new double[] {start[0] + 5.5, start[1] + up};
    }

    @Test
    void the_dome_is_the_saturation_line_and_meets_the_reference_state() {
        Element svg = drawing("enthalpy");
        Ruler across = new Ruler(svg, "middle", "x", 0, false);
        Ruler up = new Ruler(svg, "end", "y", 4, true);
        List<String> domes = children(svg, "path").stream()
                .filter(path -> path.getAttribute("class").equals("line dome"))
                .map(path -> path.getAttribute("d"))
                .toList();
        assertThat(domes).hasSize(2);
        for (double[] place : places(domes.get(0))) {
            Temperature bubble = r410a().bubbleTemperature(AbsolutePressure.psia(up.value(place[1])));
            assertThat(across.value(place[0]))
                    .isCloseTo(r410a().saturatedLiquid(bubble).enthalpy() / BTU_PER_POUND, within(0.4));
        }
        for (double[] place : places(domes.get(1))) {
            Temperature dew = r410a().dewTemperature(AbsolutePressure.psia(up.value(place[1])));
            assertThat(across.value(place[0]))
                    .isCloseTo(r410a().saturatedVapour(dew).enthalpy() / BTU_PER_POUND, within(0.4));
        }
        // The reference state of the International Institute of Refrigeration: saturated liquid at 0 °C has 200 kJ/kg,
        // which is 85.98 Btu/lb.
        double pressure = r410a().bubblePressure(Temperature.celsius(0)).psia();
        List<double[]> liquid = places(domes.get(0));
        for (int i = 1; i < liquid.size(); i++) {
            double below = up.value(liquid.get(i - 1)[1]);
            double above = up.value(liquid.get(i)[1]);
            if (below <= pressure && pressure < above) {
                assertThat(across.value(liquid.get(i - 1)[0])).isLessThanOrEqualTo(86.2);
                assertThat(across.value(liquid.get(i)[0])).isGreaterThanOrEqualTo(85.8);
                return;
            }
        }
        throw new AssertionError("the dome does not reach 0 °C");
    }

    @Test
    void the_course_shows_each_measurement_the_tolerance_and_each_movement() {
        Element svg = drawing("course");
        Ruler across = new Ruler(svg, "middle", "x", 0, false);
        Ruler up = new Ruler(svg, "end", "y", 4, false);
        List<double[]> rounds = children(svg, "path").stream()
                .filter(path -> path.hasAttribute("data-point"))
                .map(path -> middle(path.getAttribute("d")))
                .toList();
        assertThat(rounds).hasSize(3);
        // the last liquid line temperature, 2,710 s after the start
        assertThat(across.value(rounds.get(2)[0])).isCloseTo(2710 / 60.0, within(0.1));
        double superheat = 58 - r410a().dewTemperature(psig(130)).fahrenheit();
        assertThat(up.value(rounds.get(2)[1])).isCloseTo(superheat, within(0.1));
        // Target 12 °F at 95 °F outdoors and 67 °F return wet bulb, installer's limits 5 °F: California Energy
        // Commission, Reference Appendices RA3.2, table of target superheat (recalled).
        List<double[]> band = places(children(svg, "path").stream()
                .filter(path -> path.getAttribute("class").equals("band"))
                .findFirst()
                .orElseThrow()
                .getAttribute("d"));
        assertThat(band.stream().mapToDouble(place -> up.value(place[1])).min().orElseThrow())
                .isCloseTo(7, within(0.1));
        assertThat(band.stream().mapToDouble(place -> up.value(place[1])).max().orElseThrow())
                .isCloseTo(17, within(0.1));
        List<Double> moves = children(svg, "path").stream()
                .filter(path -> path.getAttribute("class").equals("line move"))
                .map(path -> across.value(places(path.getAttribute("d")).get(0)[0]))
                .toList();
        assertThat(moves).hasSize(2);
        assertThat(moves.get(0)).isCloseTo(710 / 60.0, within(0.1));
    }

    @Test
    void every_axis_names_its_unit() {
        assertThat(List.of("deviation", "course", "enthalpy"))
                .allSatisfy(id -> assertThat(children(drawing(id), "text"))
                        .filteredOn(text -> text.getAttribute("class").equals("axis"))
                        .isNotEmpty()
                        .extracting(Element::getTextContent)
                        .allSatisfy(
                                label -> assertThat(label).matches(".*(, °F|, Btu/lb|, psia|Minutes from the start)")));
    }

    /** A pound a cubic foot is 16.01846 kg/m³: NIST SP 811 (2008), appendix B. */
    @Test
    void the_diagram_its_caption_and_its_table_are_in_the_units_of_the_session(@TempDir Path sessions)
            throws Exception {
        Document us = ReportPages.tree(ReportPages.page(ReportPages.report(Scripted.charging("us"), sessions)));
        FluidState liquid = r410a().subcooledLiquid(Temperature.fahrenheit(97), psig(372));
        assertThat(ReportPages.texts(us, "td"))
                .contains(String.format(Locale.ROOT, "%.1f Btu/lb", liquid.enthalpy() / BTU_PER_POUND))
                .contains(String.format(Locale.ROOT, "%.2f lb/ft³", liquid.density() / 16.01846))
                .noneMatch(text -> text.contains("kJ/kg") || text.contains("kg/m"));
        assertThat(ReportPages.texts(us, "figcaption"))
                .anySatisfy(text -> assertThat(text).contains("at 32.0 °F is 86.0 Btu/lb"));

        Document metric = ReportPages.tree(ReportPages.page(ReportPages.report(Scripted.valve("metric"), sessions)));
        assertThat(ReportPages.texts(metric, "td"))
                .anyMatch(text -> text.endsWith(" kJ/kg"))
                .anyMatch(text -> text.endsWith(" kg/m³"))
                .anyMatch(text -> text.endsWith(" bar(a)"))
                .noneMatch(text ->
                        text.contains("Btu") || text.contains("lb/") || text.contains("psi") || text.contains("kPa"));
        assertThat(ReportPages.texts(metric, "figcaption"))
                .anySatisfy(text -> assertThat(text).contains("at 0.0 °C is 200.0 kJ/kg"));
    }

    @Test
    void a_reading_below_its_saturation_has_no_place_and_says_so(@TempDir Path sessions) throws Exception {
        Scripted impossible = Scripted.pistonReadings("wet")
                .say(300, "suction line thirty")
                .say(310, "yes")
                .say(320, "understood");
        Document page = ReportPages.tree(ReportPages.page(ReportPages.report(impossible, sessions)));
        assertThat(ReportPages.texts(page, "p"))
                .anySatisfy(text -> assertThat(text).startsWith("Suction line: there is no such state"));
    }
}
