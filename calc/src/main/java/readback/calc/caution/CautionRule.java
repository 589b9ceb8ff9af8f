package readback.calc.caution;

import java.util.List;

/**
 * Every caution that can be given. Within one signal word the order here is the rank. Where a rule carries no source
 * beside it, it is common practice.
 */
public enum CautionRule {
    /** Oxygen or compressed air with oil explodes. ANSI/ASHRAE 15-1994, 10.1.2 (interim action 1997). */
    NEVER_OXYGEN(Signal.DANGER, true, Authority.SAFETY_STANDARD, Authority.EQUIPMENT_MAKER),
    /** A3 (propane class) burns readily: lower flammable limit 0.038 kg/m³ for R-290. ISO 817, from memory. */
    FLAMMABLE_A3(Signal.DANGER, true, Authority.SAFETY_STANDARD, Authority.EQUIPMENT_MAKER, Authority.LOCAL_CODE),
    /** A full nitrogen cylinder holds 2,000 psig or more. 29 CFR 1910.101, CGA P-1, from memory. */
    NITROGEN_REGULATOR(Signal.WARNING, true, Authority.TOOL_MAKER, Authority.WORKPLACE_SAFETY),
    /** A run capacitor holds its charge after the power is off. 29 CFR 1910.333, from memory. */
    CHARGED_CAPACITOR(Signal.WARNING, true, Authority.WORKPLACE_SAFETY, Authority.LICENSED_PRACTICE),
    /** Above 80 % liquid a warming cylinder may burst. 49 CFR 173.304a, AHRI Guideline K, from memory. */
    CYLINDER_OVERFILL(Signal.WARNING, true, Authority.CYLINDER_REGULATION, Authority.TOOL_MAKER),
    /** A2L burns slowly, but burns: R-32 from 0.307, R-454B from 0.296 kg/m³. ISO 817, from memory. */
    FLAMMABLE_A2L(Signal.WARNING, true, Authority.SAFETY_STANDARD, Authority.EQUIPMENT_MAKER, Authority.LOCAL_CODE),
    /** More of a refrigerant that burns than the rooms allow. UL 60335-2-40, ASHRAE 15.2, from memory. */
    CHARGE_ABOVE_ROOM_LIMIT(
            Signal.WARNING, true, Authority.SAFETY_STANDARD, Authority.EQUIPMENT_MAKER, Authority.LOCAL_CODE),
    /**
     * Vapour is heavier than air and displaces it; below 19.5 % oxygen is deficient. 29 CFR 1910.134(b), from memory.
     */
    ASPHYXIATION(Signal.WARNING, false, Authority.WORKPLACE_SAFETY),
    /** The condensing side nears what the cut-out switch allows. */
    NEAR_HIGH_PRESSURE_CUT_OUT(Signal.WARNING, false, Authority.EQUIPMENT_MAKER),
    /** Hoses and gauges under hundreds of psi. */
    HIGH_PRESSURE(Signal.WARNING, true, Authority.TOOL_MAKER, Authority.EQUIPMENT_MAKER),
    /** Refrigerant near flame or glowing metal makes hydrogen fluoride. */
    DECOMPOSITION_NEAR_FLAME(Signal.WARNING, false, Authority.SAFETY_STANDARD, Authority.WORKPLACE_SAFETY),
    /** Test pressure above what the plate allows the low side. */
    TEST_PRESSURE_ABOVE_PLATE(Signal.WARNING, true, Authority.EQUIPMENT_MAKER, Authority.LOCAL_CODE),
    /** A condenser that gets no air drives the pressure up within minutes. Common practice, no source. */
    RESTRICTED_CONDENSER(Signal.WARNING, true, Authority.EQUIPMENT_MAKER, Authority.LICENSED_PRACTICE),
    /**
     * A condenser of little volume, filled with the whole charge while it is pumped down, bursts its relief or trips
     * its cut-out. Common practice, no source.
     */
    LITTLE_ROOM_IN_CONDENSER(Signal.WARNING, false, Authority.EQUIPMENT_MAKER, Authority.LICENSED_PRACTICE),
    /** Liquid boils at -41 to -61 °F on the skin. */
    FROSTBITE(Signal.CAUTION, true, Authority.WORKPLACE_SAFETY),
    /** The discharge line burns the hand and cooks the oil. */
    DISCHARGE_TOO_HOT(Signal.CAUTION, false, Authority.EQUIPMENT_MAKER),
    /**
     * Liquid refrigerant may reach the compressor. An injury is not to be expected, a ruined compressor is: decision
     * 0003.
     */
    LIQUID_AT_COMPRESSOR(Signal.NOTICE, true, Authority.EQUIPMENT_MAKER),
    /** It condenses further above the outdoor air than equipment of its efficiency does. Common practice, no source. */
    CONDENSING_FAR_OVER_OUTDOOR(Signal.NOTICE, false, Authority.EQUIPMENT_MAKER),
    /** The evaporator works below freezing and will ice. */
    COIL_BELOW_FREEZING(Signal.NOTICE, false, Authority.EQUIPMENT_MAKER),
    /** The liquid boils on its way up to the coil. */
    LIQUID_FLASHES_ON_THE_WAY(Signal.NOTICE, false, Authority.EQUIPMENT_MAKER),
    /** Long lines need other sizes, traps or accessories, as the maker's guide has them. */
    LONG_LINE_SET(Signal.NOTICE, false, Authority.EQUIPMENT_MAKER),
    /** Releasing refrigerant is prohibited. Clean Air Act 608(c), 40 CFR 82.154(a). */
    VENTING_PROHIBITED(Signal.NOTICE, false, Authority.REFRIGERANT_REGULATION),
    /** Only a certified technician may open the circuit. 40 CFR 82.161, from memory. */
    CERTIFIED_WORK(Signal.NOTICE, false, Authority.REFRIGERANT_REGULATION, Authority.LICENSED_PRACTICE);

    @SuppressWarnings("ImmutableEnumChecker") // a record of an immutable list
    private final Caution caution;

    @SuppressWarnings("EnumOrdinal") // the order of this list is the rank, by its documentation
    CautionRule(Signal signal, boolean needsAcknowledgement, Authority... authorities) {
        this.caution = new Caution(this, signal, ordinal() + 1, needsAcknowledgement, List.of(authorities));
    }

    /** The caution that this rule gives when it fires. */
    public Caution caution() {
        return caution;
    }

    public Signal signal() {
        return caution.signal();
    }
}
