package readback.assistant.probe;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import readback.assistant.dialogue.Probe;
import readback.calc.name.ConstantName;
import readback.calc.quantity.Dimension;
import readback.calc.quantity.Quantity;

/**
 * Which channels there are: a file with a section for each, {@code [name]}, and lines {@code key = value} under it. The
 * order of the sections gives the numbers by which the probes are spoken of. Immutable.
 */
public final class ProbeMapping {

    /** More cannot be named by one digit. */
    static final int MOST = 9;

    private static final Set<String> SENML = Set.of("from", "name", "gives", "unit", "pressure", "measures");
    private static final Set<String> MODBUS = Set.of(
            "from", "unit-id", "function", "register", "type", "word-order", "scale", "unit", "pressure", "measures");

    private static final Pattern HOST_AND_PORT = Pattern.compile("\\[?([^\\s\\]]+)\\]?:(\\d{1,5})");
    private static final Pattern SERIAL = Pattern.compile("(\\S+) (\\d{3,7}) ([78])([NEO])([12])");
    private static final Pattern CHANNEL = Pattern.compile("\\[([a-z][a-z0-9-]*)\\]");

    private final List<Channel> channels;

    ProbeMapping(List<Channel> channels) {
        this.channels = List.copyOf(channels);
    }

    /** In the order of their numbers. */
    List<Channel> channels() {
        return channels;
    }

    /** A key of a section with its value and where it stands. */
    private record Line(String value, String where) {}

    /** A channel that is being read. */
    private record Section(String name, int number, String where, Map<String, Line> lines) {

        MappingException wrong(String what) {
            return new MappingException(where + "[" + name + "] " + what);
        }

        Optional<Line> find(String key) {
            return Optional.ofNullable(lines.get(key));
        }

        Line required(String key, String expected) throws MappingException {
            Line line = lines.get(key);
            if (line == null) {
                throw wrong("has no '" + key + "': " + expected + ".");
            }
            return line;
        }

        int number(String key, int low, int high) throws MappingException {
            String expected = "a whole number from " + low + " to " + high;
            Line line = required(key, expected);
            try {
                int number = Integer.parseInt(line.value());
                if (number >= low && number <= high) {
                    return number;
                }
            } catch (NumberFormatException notWhole) {
                throw wrong(key, line, expected, notWhole);
            }
            throw wrong(key, line, expected, null);
        }

        private MappingException wrong(String key, Line line, String expected, @Nullable Exception cause) {
            String message = line.where() + key + " is " + expected + ", not '" + line.value() + "'.";
            return cause == null ? new MappingException(message) : new MappingException(message, cause);
        }

        MappingException not(String key, Line line, String expected) {
            return wrong(key, line, expected, null);
        }
    }

    /**
     * The mapping in a file, in UTF-8.
     *
     * @throws MappingException when it cannot be read or something in it is wrong; the message names the line
     */
    public static ProbeMapping read(Path file) throws MappingException {
        try {
            return parse(Files.readAllLines(file, StandardCharsets.UTF_8), file.toString());
        } catch (IOException e) {
            throw new MappingException(
                    "The mapping of probes '" + file + "' cannot be read: " + e.getMessage()
                            + ". Name a file with a section [name] for each channel.",
                    e);
        }
    }

    static ProbeMapping parse(List<String> lines, String file) throws MappingException {
        List<Channel> channels = new ArrayList<>();
        for (Section section : sections(lines, file)) {
            channels.add(channel(section));
        }
        if (channels.isEmpty()) {
            throw new MappingException(file + ": there is no channel: begin each with a line [name].");
        }
        if (channels.size() > MOST) {
            throw new MappingException(file + ": there are " + channels.size() + " channels, and " + MOST
                    + " is the most that can be spoken of: leave some out.");
        }
        refuseTwoOfAKind(channels, file);
        return new ProbeMapping(channels);
    }

    private static List<Section> sections(List<String> lines, String file) throws MappingException {
        Map<String, Section> sections = new LinkedHashMap<>();
        @Nullable Section open = null;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (i == 0 && line.startsWith("\ufeff")) {
                line = line.substring(1).strip();
            }
            String where = file + ", line " + (i + 1) + ": ";
            if (line.isEmpty() || line.startsWith("#")) {
                continue;
            }
            Matcher head = CHANNEL.matcher(line);
            if (head.matches()) {
                open = new Section(head.group(1), sections.size() + 1, where, new LinkedHashMap<>());
                if (sections.put(head.group(1), open) != null) {
                    throw new MappingException(where + "there are two channels [" + head.group(1) + "].");
                }
                continue;
            }
            int equals = line.indexOf('=');
            if (equals < 0 || open == null) {
                throw new MappingException(where + "'" + line
                        + "' is neither [name], with small letters, digits and hyphens, nor, under one, key = value.");
            }
            String key = line.substring(0, equals).strip();
            if (open.lines().put(key, new Line(line.substring(equals + 1).strip(), where)) != null) {
                throw new MappingException(where + "'" + key + "' is given twice.");
            }
        }
        return List.copyOf(sections.values());
    }

    private static Channel channel(Section section) throws MappingException {
        Line from = section.required(
                "from",
                "senml or modbus, then stdin, tcp HOST:PORT or serial PORT BAUD FORMAT, as in 'modbus serial /dev/ttyUSB0"
                        + " 9600 8E1'");
        List<String> words = List.of(from.value().split("\\s+", 3));
        boolean modbus = words.get(0).equals("modbus");
        if (!modbus && !words.get(0).equals("senml")) {
            throw section.not("from", from, "senml or modbus, then where it is connected");
        }
        for (Map.Entry<String, Line> line : section.lines().entrySet()) {
            if (!(modbus ? MODBUS : SENML).contains(line.getKey())) {
                throw new MappingException(line.getValue().where() + "there is no '" + line.getKey()
                        + "' of a channel of "
                        + words.get(0) + "; there are: "
                        + String.join(
                                ", ",
                                (modbus ? MODBUS : SENML).stream().sorted().toList()) + ".");
            }
        }
        Wire wire = wire(section, from, words, modbus);
        Optional<RawUnit> unit = unit(section, modbus);
        Dimension dimension = unit.isPresent() ? unit.get().dimension() : gives(section);
        boolean pressure = dimension == Dimension.GAUGE_PRESSURE;
        Place place = modbus
                ? registers(section)
                : new Place.Named(section.find("name").map(Line::value).orElse(section.name()));
        return new Channel(
                new Probe(section.number(), section.name(), dimension, measures(section, dimension)),
                wire,
                place,
                unit,
                pressure && absolute(section));
    }

    private static Wire wire(Section section, Line from, List<String> words, boolean modbus) throws MappingException {
        String kind = words.size() > 1 ? words.get(1) : "";
        String rest = words.size() > 2 ? words.get(2) : "";
        switch (kind) {
            case "stdin" -> {
                if (!modbus && rest.isEmpty()) {
                    return new Wire.StandardInput();
                }
            }
            case "tcp" -> {
                Matcher address = HOST_AND_PORT.matcher(rest);
                if (address.matches() && Integer.parseInt(address.group(2)) <= 65_535) {
                    return new Wire.Tcp(address.group(1), Integer.parseInt(address.group(2)));
                }
                throw section.not("from", from, words.get(0) + " tcp HOST:PORT");
            }
            case "serial" -> {
                Matcher port = SERIAL.matcher(rest);
                if (port.matches()) {
                    return new Wire.Serial(
                            port.group(1),
                            Integer.parseInt(port.group(2)),
                            Integer.parseInt(port.group(3)),
                            port.group(4).charAt(0),
                            Integer.parseInt(port.group(5)));
                }
                throw section.not("from", from, words.get(0) + " serial PORT BAUD FORMAT, as in /dev/ttyUSB0 9600 8E1");
            }
            default -> {
                // told below
            }
        }
        throw section.not(
                "from",
                from,
                modbus
                        ? "modbus tcp HOST:PORT or modbus serial PORT BAUD FORMAT"
                        : "senml stdin, senml tcp HOST:PORT or senml serial PORT BAUD FORMAT");
    }

    private static Optional<RawUnit> unit(Section section, boolean required) throws MappingException {
        String expected = "one of " + RawUnit.SYMBOLS;
        Optional<Line> line = required ? Optional.of(section.required("unit", expected)) : section.find("unit");
        if (line.isEmpty()) {
            return Optional.empty();
        }
        Optional<RawUnit> unit = RawUnit.named(line.get().value());
        if (unit.isEmpty()) {
            throw section.not("unit", line.get(), expected);
        }
        return unit;
    }

    /** What a channel gives whose records name their unit themselves. */
    private static Dimension gives(Section section) throws MappingException {
        String expected = "temperature or pressure";
        Line line = section.required("gives", expected + " (or a 'unit', for records that name none)");
        return switch (line.value()) {
            case "temperature" -> Dimension.TEMPERATURE;
            case "pressure" -> Dimension.GAUGE_PRESSURE;
            default -> throw section.not("gives", line, expected);
        };
    }

    private static boolean absolute(Section section) throws MappingException {
        String expected = "gauge or absolute";
        Line line = section.required("pressure", expected + ", as the instrument counts it");
        return switch (line.value()) {
            case "absolute" -> true;
            case "gauge" -> false;
            default -> throw section.not("pressure", line, expected);
        };
    }

    private static Optional<Quantity> measures(Section section, Dimension dimension) throws MappingException {
        Optional<Line> line = section.find("measures");
        if (line.isEmpty()) {
            return Optional.empty();
        }
        Optional<Quantity> quantity =
                ConstantName.find(Quantity.class, line.get().value()).filter(each -> each.dimension() == dimension);
        if (quantity.isEmpty()) {
            boolean pressure = dimension == Dimension.GAUGE_PRESSURE;
            throw section.not(
                    "measures",
                    line.get(),
                    "the name of a " + (pressure ? "pressure" : "temperature") + ", as in "
                            + (pressure ? "suction-pressure" : "suction-line-temperature"));
        }
        return quantity;
    }

    private static Place registers(Section section) throws MappingException {
        int function = section.number("function", 3, 4);
        String types = "int16, uint16, int32, uint32 or float32";
        Line typed = section.required("type", types);
        Optional<RegisterFormat.Type> type = ConstantName.find(RegisterFormat.Type.class, typed.value());
        if (type.isEmpty()) {
            throw section.not("type", typed, types);
        }
        boolean two = type.get().registers() == 2;
        Optional<Line> order = two
                ? Optional.of(section.required("word-order", "high-first or low-first"))
                : section.find("word-order");
        if (order.filter(line ->
                        !line.value().equals("high-first") && !line.value().equals("low-first"))
                .isPresent()) {
            throw section.not("word-order", order.get(), "high-first or low-first");
        }
        return new Place.Registers(
                section.number("unit-id", 0, 255),
                function == 3,
                section.number("register", 0, 65_536 - type.get().registers()),
                new RegisterFormat(
                        type.get(),
                        order.filter(line -> line.value().equals("low-first")).isEmpty(),
                        scale(section)));
    }

    private static BigDecimal scale(Section section) throws MappingException {
        Optional<Line> line = section.find("scale");
        if (line.isEmpty()) {
            return BigDecimal.ONE;
        }
        try {
            BigDecimal scale = new BigDecimal(line.get().value());
            if (scale.signum() != 0 && Double.isFinite(scale.doubleValue())) {
                return scale;
            }
        } catch (NumberFormatException notNumber) {
            throw section.wrong("scale", line.get(), "a number that is not zero", notNumber);
        }
        throw section.not("scale", line.get(), "a number that is not zero");
    }

    private static void refuseTwoOfAKind(List<Channel> channels, String file) throws MappingException {
        Set<Quantity> measured = new LinkedHashSet<>();
        Map<String, Wire> wires = new LinkedHashMap<>();
        Map<String, Boolean> protocols = new LinkedHashMap<>();
        for (Channel channel : channels) {
            Optional<Quantity> quantity = channel.probe().measures();
            if (quantity.isPresent() && !measured.add(quantity.get())) {
                throw new MappingException(file + ": two channels measure " + ConstantName.of(quantity.get())
                        + ": leave 'measures' away where it is said in the session.");
            }
            Wire wire = channel.wire();
            boolean modbus = channel.place() instanceof Place.Registers;
            boolean otherwise = !wires.getOrDefault(wire.name(), wire).equals(wire)
                    || protocols.getOrDefault(wire.name(), modbus) != modbus;
            if (otherwise) {
                throw new MappingException(
                        file + ": " + wire.name() + " is used in two ways: channels on one wire have the same 'from'.");
            }
            wires.put(wire.name(), wire);
            protocols.put(wire.name(), modbus);
        }
    }

    /** The probes, in the order of their numbers. */
    public List<Probe> probes() {
        return channels.stream().map(Channel::probe).toList();
    }

    /** How many there are. */
    public int size() {
        return channels.size();
    }

    /** Whether values come by the standard input, which cannot be typed into then. */
    public boolean readsStandardInput() {
        return channels.stream().anyMatch(channel -> channel.wire().lent());
    }
}
