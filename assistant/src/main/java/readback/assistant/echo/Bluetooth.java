package readback.assistant.echo;

import java.util.List;
import java.util.Locale;

/** Sound devices by radio: their sound is on its way for too long to take its echo away, 600 ms and more. */
public final class Bluetooth {

    /** What operating systems put into the names of such devices. */
    private static final List<String> MARKS = List.of("bluetooth", "bluez", "hands-free");

    private Bluetooth() {}

    /** Whether a device of this name is one. */
    public static boolean named(String device) {
        String name = device.toLowerCase(Locale.ROOT);
        return MARKS.stream().anyMatch(name::contains);
    }
}
