package readback.calc.fluid;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import readback.calc.name.EditDistance;

/** The refrigerants that Readback knows. Immutable; {@link #standard()} is the way in. */
public final class Catalogue {

    private static final int MOST_SUGGESTIONS = 3;

    private final List<Refrigerant> all;
    private final Map<String, Refrigerant> byName = new HashMap<>();
    private final Map<String, Lookup.Unsupported> unsupported = new LinkedHashMap<>();

    private final Map<String, List<String>> spokenNames = new LinkedHashMap<>();

    private Catalogue(List<Refrigerant> all, List<CatalogueFacts.Unsupported> unsupportedReasons) {
        this.all = List.copyOf(all);
        for (Refrigerant refrigerant : all) {
            byName.put(key(refrigerant.designation()), refrigerant);
            // The isomer in brackets is often left away: R-1234ze.
            byName.putIfAbsent(key(refrigerant.designation().replaceAll("\\(.*\\)", "")), refrigerant);
            spokenNames.put(refrigerant.designation(), refrigerant.spokenNames());
            for (String spoken : refrigerant.spokenNames()) {
                byName.putIfAbsent(key(spoken), refrigerant);
            }
        }
        for (CatalogueFacts.Unsupported known : unsupportedReasons) {
            Lookup.Unsupported answer = new Lookup.Unsupported(known.designation(), known.why());
            unsupported.put(key(known.designation()), answer);
            known.spokenNames().forEach(spoken -> unsupported.putIfAbsent(key(spoken), answer));
            spokenNames.put(known.designation(), known.spokenNames());
        }
    }

    /** The catalogue that comes with Readback, read from the installation once. */
    public static Catalogue standard() {
        return Standard.CATALOGUE;
    }

    /** Every supported refrigerant, those met most often first. */
    public List<Refrigerant> all() {
        return all;
    }

    /**
     * How every known refrigerant is called, by designation: the supported ones first, those met most often before the
     * others, then those that are known by name only. The letter r may be said before a name that begins with a number.
     */
    public Map<String, List<String>> spokenNames() {
        return Collections.unmodifiableMap(spokenNames);
    }

    /**
     * The refrigerant of a designation or spoken name: "R-410A", "r410a", "410A" and "four ten a" are the same. Case,
     * hyphens, spaces and a leading r do not count.
     */
    public Lookup find(String name) {
        String key = key(name);
        Refrigerant refrigerant = byName.get(key);
        if (refrigerant != null) {
            return new Lookup.Found(refrigerant);
        }
        Lookup.Unsupported known = unsupported.get(key);
        if (known != null) {
            return known;
        }
        return new Lookup.Unknown(name, nearest(key));
    }

    private List<String> nearest(String key) {
        List<Map.Entry<String, Refrigerant>> names = new ArrayList<>(byName.entrySet());
        names.sort(Comparator.comparingInt(
                        (Map.Entry<String, Refrigerant> entry) -> EditDistance.between(key, entry.getKey()))
                .thenComparing(entry -> all.indexOf(entry.getValue())));
        Set<String> nearest = new LinkedHashSet<>();
        for (Map.Entry<String, Refrigerant> name : names) {
            if (nearest.size() < MOST_SUGGESTIONS) {
                nearest.add(name.getValue().designation());
            }
        }
        return List.copyOf(nearest);
    }

    /** Letters and digits only, in lower case, without a leading r. */
    private static String key(String name) {
        StringBuilder key = new StringBuilder();
        for (char c : name.toLowerCase(Locale.ROOT).toCharArray()) {
            if (Character.isLetterOrDigit(c)) {
                key.append(c);
            }
        }
        return !key.isEmpty() && key.charAt(0) == 'r' ? key.substring(1) : key.toString();
    }

    /** Reads the catalogue from the installation. */
    static Catalogue load() {
        CatalogueFacts.Contents contents = CatalogueFacts.load();
        EquationLibrary library = EquationFacts.load();
        CurveFacts curves = CurveFacts.load();
        List<Refrigerant> all = new ArrayList<>();
        for (RefrigerantFacts facts : contents.supported()) {
            all.add(RefrigerantBuilder.build(facts, library, curves));
        }
        return new Catalogue(all, contents.unsupported());
    }

    /** Read on first use; class initialisation makes that safe between threads. */
    private static final class Standard {
        private static final Catalogue CATALOGUE = load();
    }
}
