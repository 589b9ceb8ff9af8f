package readback.prompts.text;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import readback.calc.quantity.Quantity;
import readback.calc.quantity.Reading;
import readback.calc.quantity.Temperature;
import readback.calc.quantity.TemperatureDifference;
import readback.calc.quantity.Unit;
import readback.calc.quantity.UnitSetting;

/** Something that a text has a place for. Typed, so that the ear and the eye each get their own form. */
public sealed interface Fact {

    /** What the case of this kind makes of the fact. */
    <T> T fold(Cases<T> cases);

    /** What is to be made of each kind of fact. */
    interface Cases<T> {

        T stated(Stated stated);

        T amount(Amount amount);

        T count(Count count);

        T counted(Counted counted);

        T term(Term term);

        T pressureDifference(PressureDifference difference);

        T refrigerant(Refrigerant refrigerant);

        T quoted(Quoted quoted);

        T text(Text text);

        T listing(Listing listing);
    }

    /** A value with its name: "suction, one one eight, p s i". */
    record Stated(Reading reading) implements Fact {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.stated(this);
        }
    }

    /** A value without a name: "one one eight p s i". */
    record Amount(BigDecimal value, Unit unit) implements Fact {

        /** The written form, as in "118 psig" or "7 lb 4 oz". */
        public String shown() {
            return PoundsAndOunces.of(value, unit)
                    .map(PoundsAndOunces::shown)
                    .orElseGet(() -> value.toPlainString() + " " + unit.symbol());
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.amount(this);
        }
    }

    /** A plain count: "two". */
    record Count(int value) implements Fact {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.count(this);
        }
    }

    /** A count with its unit in full, on the screen too: "two minutes", "one minute". */
    record Counted(int value, Unit unit) implements Fact {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.counted(this);
        }
    }

    /** A word of the trade that the catalogue knows under {@code term.<key>}. */
    record Term(String key) implements Fact {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.term(this);
        }
    }

    /** A difference of pressures in psi or bar, neither gauge nor absolute: "2 psi". */
    record PressureDifference(BigDecimal value, Unit unit) implements Fact {

        /** The written form. */
        public String shown() {
            return value.toPlainString() + " " + (unit == Unit.PSIG ? "psi" : "bar");
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.pressureDifference(this);
        }
    }

    /** A refrigerant, written by its designation and spoken as the catalogue has it: "R-410A", "r four ten a". */
    record Refrigerant(String designation) implements Fact {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.refrigerant(this);
        }
    }

    /** Words as they were heard or typed. */
    record Quoted(String words) implements Fact {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.quoted(this);
        }
    }

    /** A text of the catalogue, filled in turn. */
    record Text(Message message) implements Fact {
        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.text(this);
        }
    }

    /** Several facts: "a, b and c". */
    record Listing(List<Fact> facts) implements Fact {
        public Listing {
            facts = List.copyOf(facts);
        }

        @Override
        public <T> T fold(Cases<T> cases) {
            return cases.listing(this);
        }
    }

    /** The name of a quantity. */
    static Fact name(Quantity quantity) {
        return new Term("quantity." + quantity.name());
    }

    /** A value without its name. */
    static Amount amount(Reading reading) {
        return new Amount(reading.value(), reading.unit());
    }

    /** A computed temperature, to a tenth of a degree in the unit of the setting. */
    static Fact temperature(Temperature temperature, UnitSetting units) {
        Unit unit = units.temperature();
        return new Amount(rounded(unit.fromBase(temperature.kelvin())), unit);
    }

    /** A computed temperature difference, to a tenth of a degree in the unit of the setting. */
    static Amount difference(TemperatureDifference difference, UnitSetting units) {
        Unit unit = units.temperatureDifference();
        return new Amount(rounded(unit.fromBase(difference.kelvins())), unit);
    }

    /** A number to one decimal, without a trailing zero and without a negative zero. */
    public static BigDecimal rounded(double value) {
        BigDecimal tenths = BigDecimal.valueOf(value).setScale(1, RoundingMode.HALF_UP);
        BigDecimal plain = tenths.stripTrailingZeros();
        return plain.scale() < 0 ? plain.setScale(0, RoundingMode.UNNECESSARY) : plain;
    }
}
