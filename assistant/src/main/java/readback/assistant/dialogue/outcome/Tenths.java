package readback.assistant.dialogue.outcome;

import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.UnitSetting;

/** A temperature difference as most outcomes keep it: in whole tenths of a degree Fahrenheit. */
final class Tenths {

    private Tenths() {}

    static long of(TemperatureDifference difference) {
        return Math.round(difference.fahrenheit() * 10);
    }

    static Figure figure(String name, long tenths, UnitSetting units) {
        return Figure.difference(name, TemperatureDifference.fahrenheit(tenths / 10.0), units);
    }

    /** As it stands in the line of an outcome: "12.5F". */
    static String shown(long tenths) {
        return tenths / 10.0 + "F";
    }
}
