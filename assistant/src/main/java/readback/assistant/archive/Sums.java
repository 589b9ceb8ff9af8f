package readback.assistant.archive;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/** Totals over the sessions that were chosen. One thread. */
public final class Sums {

    private final Map<String, Amount> byCylinder = new TreeMap<>();
    private final Map<String, Amount> byAppliance = new TreeMap<>();
    private final Map<String, Amount> byRefrigerant = new TreeMap<>();
    private final Map<String, Integer> byVerdict = new TreeMap<>();
    private int sessions;
    private int doubtful;

    /** Kilograms into systems and out of them. */
    public record Amount(double addedKilograms, double recoveredKilograms) {
        private Amount plus(Amount other) {
            return new Amount(addedKilograms + other.addedKilograms, recoveredKilograms + other.recoveredKilograms);
        }
    }

    /** Adds a session. */
    public void add(Summary summary) {
        sessions++;
        doubtful += summary.doubts() > 0 ? 1 : 0;
        byVerdict.merge(summary.verdict(), 1, Integer::sum);
        for (Summary.Moved moved : summary.moves()) {
            Amount amount = new Amount(moved.addedKilograms(), moved.recoveredKilograms());
            byCylinder.merge(moved.cylinder(), amount, Amount::plus);
            byAppliance.merge(summary.appliance(), amount, Amount::plus);
            byRefrigerant.merge(summary.refrigerant(), amount, Amount::plus);
        }
    }

    public int sessions() {
        return sessions;
    }

    /** Sessions with at least one doubt. */
    public int doubtful() {
        return doubtful;
    }

    /** Refrigerant by cylinder; "" for cylinders that were not named. */
    public Map<String, Amount> byCylinder() {
        return Collections.unmodifiableMap(byCylinder);
    }

    /** Refrigerant by equipment; "" where it was not named. */
    public Map<String, Amount> byAppliance() {
        return Collections.unmodifiableMap(byAppliance);
    }

    /** Refrigerant moved, by its designation. */
    public Map<String, Amount> byRefrigerant() {
        return Collections.unmodifiableMap(byRefrigerant);
    }

    /** Number of sessions by last verdict; "" for none. */
    public Map<String, Integer> byVerdict() {
        return Collections.unmodifiableMap(byVerdict);
    }
}
