package readback.assistant.record;

import java.util.List;

/** Names of what a header may say about the job. All are optional and none is ever taken from the machine. */
public final class About {

    /** Who does the work. */
    public static final String TECHNICIAN = "technician";

    /** Number and type of the technician's certificate. */
    public static final String CERTIFICATE = "certificate";

    /** The owner or operator who gets the report. */
    public static final String CUSTOMER = "customer";

    /** Where the equipment stands. */
    public static final String PLACE = "place";

    /** What identifies the equipment: model and serial number, or the owner's name for it. */
    public static final String APPLIANCE = "appliance";

    /** Number of the cylinder in use. */
    public static final String CYLINDER = "cylinder";

    /** Name or number of the tablet, as its owner calls it. */
    public static final String TABLET = "tablet";

    /** Name of the scenario where the session was practice at a simulated unit; absent for real work. */
    public static final String PRACTICE = "practice";

    /** All names, in the order of a report. */
    public static final List<String> ALL =
            List.of(PRACTICE, TECHNICIAN, CERTIFICATE, CUSTOMER, PLACE, APPLIANCE, CYLINDER, TABLET);

    private About() {}
}
