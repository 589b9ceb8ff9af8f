package readback.grammar.lexicon;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import readback.calc.fluid.Catalogue;

/** How the refrigerants of the catalogue are said and typed. */
final class RefrigerantNames {

    /** The set of choices that they are the options of. */
    static final String SET = "refrigerant";

    private RefrigerantNames() {}

    /**
     * Every refrigerant that is known, supported or not, with its names; what is said comes before what is typed.
     *
     * @param heard words that can be heard; a name with another word can only be typed
     */
    static Map<String, List<Phrase>> of(Catalogue catalogue, Set<String> heard) {
        Map<String, Integer> ofNumber = new TreeMap<>();
        catalogue.spokenNames().keySet().forEach(name -> ofNumber.merge(number(name), 1, Integer::sum));
        Map<String, List<Phrase>> options = new LinkedHashMap<>();
        catalogue.spokenNames().forEach((designation, spoken) -> {
            Set<String> names = new LinkedHashSet<>();
            for (String name : spoken) {
                names.add(name);
                names.add("r " + name);
            }
            List<Phrase> phrases = new ArrayList<>();
            names.forEach(name -> phrases.add(new Phrase(name, heard.containsAll(List.of(name.split(" ", -1))))));
            Set<String> typed = typed(designation, names, ofNumber.getOrDefault(number(designation), 0) == 1);
            typed.removeAll(names);
            typed.forEach(name -> phrases.add(new Phrase(name, false)));
            options.put(designation, phrases);
        });
        return options;
    }

    /** "410a", "r410a", "r 410 a", "four o seven c"; "410" only where no other refrigerant has the number. */
    private static Set<String> typed(String designation, Set<String> spoken, boolean only) {
        String number = number(designation);
        String letters = designation
                .substring(designation.indexOf(number) + number.length())
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z]", "");
        String apart = letters.isEmpty() ? "" : " " + String.join(" ", letters.split("", -1));
        Set<String> typed = new LinkedHashSet<>();
        for (String r : List.of("", "r ", "r")) {
            typed.add(r + number + letters);
            typed.add((r + number + " " + letters).strip());
            typed.add(r + number + apart.stripTrailing());
            // the isomer in brackets is written apart or left away: R-1234ze(E)
            String written = designation.substring(designation.indexOf(number)).toLowerCase(Locale.ROOT);
            typed.add(r + written.replaceAll("[()]", " ").strip());
            typed.add(r + written.replaceAll("\\(.*\\)", ""));
            typed.add((r + number + " " + written.substring(number.length()).replaceAll("\\(.*\\)", "")).strip());
            if (only) {
                typed.add(r + number);
            }
        }
        for (String name : spoken) {
            typed.add(name.replaceAll("\\boh\\b", "o"));
        }
        return typed;
    }

    private static String number(String designation) {
        return designation.replaceFirst("^\\D*(\\d+).*$", "$1");
    }
}
