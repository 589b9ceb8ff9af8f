package readback.assistant.dialogue;

import java.util.List;
import readback.calc.diagnosis.Finding;
import readback.calc.name.ConstantName;
import readback.prompts.checklist.Slot;

/** The slots that the program itself reads. Each is filled by a step of a checklist: {@link ChecklistValidator}. */
public final class Slots {

    /** Begins the slots that are filled with what was seen or tried. */
    static final String LOOK = "look-";

    /** Its options are ASHRAE designations. */
    public static final Slot REFRIGERANT = new Slot("refrigerant");

    public static final Slot METERING_DEVICE = new Slot("metering-device");

    public static final Slot CAPS_AND_LEAKS = new Slot("caps-and-leaks");

    /** Told whenever another cylinder is taken; no step asks for it. */
    public static final Slot CYLINDER_IN_USE = new Slot("cylinder-in-use");

    /** Told at any moment: who works, by number; no step asks for it. */
    public static final Slot TECHNICIAN_NUMBER = new Slot("technician-number");

    /** Told at any moment: on which unit, by number; no step asks for it. */
    public static final Slot UNIT_NUMBER = new Slot("unit-number");

    /** Told at any moment: at which site, by number; no step asks for it. */
    public static final Slot SITE_NUMBER = new Slot("site-number");

    /** Told whenever something besides the charge was put right or a part put in; no step asks for it. */
    public static final Slot WORK_DONE = new Slot("work-done");

    /** How the system was tested for leaks. */
    public static final Slot LEAK_TEST = new Slot("leak-test");

    /** Where recovered refrigerant goes. */
    public static final Slot RECOVERED_TO = new Slot("recovered-to");

    public static final Slot AIR_PATH = new Slot("air-path");
    public static final Slot STEADY_RUNNING = new Slot("steady-running");

    /** A restrictor sits on the condenser. */
    public static final Slot RESTRICTOR_ON = new Slot("restrictor-on");

    public static final Slot RESTRICTOR_OFF = new Slot("restrictor-off");
    public static final Slot RESTRICTOR_ALLOWED = new Slot("restrictor-allowed");
    public static final Slot WINTER_SUCTION = new Slot("winter-suction");
    public static final Slot WINTER_LIQUID = new Slot("winter-liquid");

    public static final Slot SYSTEM_KIND = new Slot("system-kind");
    public static final Slot MAKERS_PROCEDURE = new Slot("makers-procedure");
    public static final Slot CIRCUIT_OPENED = new Slot("circuit-opened");
    public static final Slot VARIABLE_SPEED = new Slot("variable-speed");

    /** Told at any moment: the outdoor coil is a micro-channel coil; no step asks for it. */
    public static final Slot MICRO_CHANNEL = new Slot("micro-channel");

    /** Told at any moment: an accumulator sits in the suction line; no step asks for it. */
    public static final Slot ACCUMULATOR = new Slot("accumulator");

    /** Told at any moment: the efficiency that the plate rates; no step asks for it. */
    public static final Slot SEER_RATING = new Slot("seer-rating");

    /** Told at any moment: how old the equipment is; no step asks for it. */
    public static final Slot YEARS_OLD = new Slot("years-old");

    public static final Slot HEATER_RETURN = new Slot("heater-return");
    public static final Slot HEATER_SUPPLY = new Slot("heater-supply");

    /** Where the gauge sits while a heat pump heats. */
    public static final Slot SUCTION_PORT = new Slot("suction-port");

    public static final Slot HEATING_RETURN = new Slot("heating-return");
    public static final Slot HEATING_SUPPLY = new Slot("heating-supply");
    public static final Slot HEATING_DISCHARGE = new Slot("heating-discharge");
    public static final Slot HEATING_SUCTION = new Slot("heating-suction");
    public static final Slot HEATING_SUCTION_LINE = new Slot("heating-suction-line");

    public static final Slot SECOND_CHART_OUTDOOR = new Slot("second-chart-outdoor");
    public static final Slot SECOND_CHART_TARGET = new Slot("second-chart-target");

    public static final Slot PRESSURE_START = new Slot("pressure-start");
    public static final Slot PRESSURE_END = new Slot("pressure-end");
    public static final Slot GAS_START = new Slot("gas-start");
    public static final Slot GAS_END = new Slot("gas-end");

    public static final Slot VACUUM_LIMIT = new Slot("vacuum-limit");
    public static final Slot VACUUM_ISOLATED = new Slot("vacuum-isolated");
    public static final Slot VACUUM_FIRST_HALF = new Slot("vacuum-first-half");
    public static final Slot VACUUM_HALF = new Slot("vacuum-half");
    public static final Slot VACUUM_HELD = new Slot("vacuum-held");

    public static final Slot INCLUDED_TUBE_SIZE = new Slot("included-tube-size");
    public static final Slot INCLUDED_SUCTION_SIZE = new Slot("included-suction-size");
    public static final Slot FILTER_DRIER_ADDED = new Slot("filter-drier-added");

    /** Told by whoever added more than one; the question asks for one only. */
    public static final Slot DRIERS_ADDED = new Slot("driers-added");

    /** Told where somebody else reads the scale as well. */
    public static final Slot SCALE_WITNESS = new Slot("scale-witness");

    public static final Slot SCALE_BEFORE = new Slot("scale-before");
    public static final Slot SCALE_AFTER = new Slot("scale-after");

    public static final Slot FUNCTIONAL_SUCTION_PRESSURE = new Slot("functional-suction-pressure");
    public static final Slot FUNCTIONAL_SUCTION_LINE = new Slot("functional-suction-line");
    public static final Slot FUNCTIONAL_LIQUID_PRESSURE = new Slot("functional-liquid-pressure");
    public static final Slot FUNCTIONAL_LIQUID_LINE = new Slot("functional-liquid-line");
    public static final Slot FUNCTIONAL_RETURN = new Slot("functional-return");
    public static final Slot FUNCTIONAL_SUPPLY = new Slot("functional-supply");

    public static final Slot REST_TEMPERATURE = new Slot("rest-temperature");

    /** Filled with what was seen. */
    public static final Slot ICE_ON_COIL = look(Finding.ICE_ON_COIL);

    public static final Slot THAWING = new Slot("thaw-wait");

    public static final Slot COIL_FREE_OF_ICE = new Slot("thaw-clear");

    /** What the technician takes to be wrong, where he is examined. */
    public static final Slot OWN_VERDICT = new Slot("likely-fault");

    /** Sets of choices that are told, whatever is asked; a step may depend on them, none asks for them. */
    static final List<Slot> TOLD = List.of(CYLINDER_IN_USE, WORK_DONE, DRIERS_ADDED, SCALE_WITNESS);

    static final List<Slot> ALL = List.of(
            REFRIGERANT,
            METERING_DEVICE,
            CAPS_AND_LEAKS,
            LEAK_TEST,
            RECOVERED_TO,
            AIR_PATH,
            STEADY_RUNNING,
            RESTRICTOR_ON,
            RESTRICTOR_OFF,
            RESTRICTOR_ALLOWED,
            WINTER_SUCTION,
            WINTER_LIQUID,
            SYSTEM_KIND,
            MAKERS_PROCEDURE,
            CIRCUIT_OPENED,
            VARIABLE_SPEED,
            HEATER_RETURN,
            HEATER_SUPPLY,
            SUCTION_PORT,
            HEATING_RETURN,
            HEATING_SUPPLY,
            HEATING_DISCHARGE,
            HEATING_SUCTION,
            HEATING_SUCTION_LINE,
            SECOND_CHART_OUTDOOR,
            SECOND_CHART_TARGET,
            PRESSURE_START,
            PRESSURE_END,
            GAS_START,
            GAS_END,
            VACUUM_LIMIT,
            VACUUM_ISOLATED,
            VACUUM_FIRST_HALF,
            VACUUM_HALF,
            VACUUM_HELD,
            INCLUDED_TUBE_SIZE,
            INCLUDED_SUCTION_SIZE,
            FILTER_DRIER_ADDED,
            SCALE_BEFORE,
            SCALE_AFTER,
            FUNCTIONAL_SUCTION_PRESSURE,
            FUNCTIONAL_SUCTION_LINE,
            FUNCTIONAL_LIQUID_PRESSURE,
            FUNCTIONAL_LIQUID_LINE,
            FUNCTIONAL_RETURN,
            FUNCTIONAL_SUPPLY,
            REST_TEMPERATURE,
            OWN_VERDICT,
            ICE_ON_COIL,
            THAWING,
            COIL_FREE_OF_ICE);

    private Slots() {}

    /** The slot of a question about what can be seen or tried. */
    static Slot look(Finding finding) {
        return new Slot(LOOK + ConstantName.of(finding));
    }
}
