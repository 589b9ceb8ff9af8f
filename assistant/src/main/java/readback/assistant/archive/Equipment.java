package readback.assistant.archive;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The key by which visits to one piece of equipment are found together. Its serial number where the text names one,
 * written in whichever way: "SN 4471", "sn-4471" and "Outdoor unit 7, serial no. 4471" are one. Else the whole text
 * without spaces, signs and capitals.
 */
public final class Equipment {

    private static final Pattern SERIAL = Pattern.compile(
            "(?:\\bserial\\b(?:\\s*(?:number|no\\.?|nr\\.?|#))?|\\bs\\s*/\\s*n|\\bsn(?![a-z]))[\\s:.#-]*([a-z0-9][a-z0-9-]*)");
    private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{N}]+");

    private Equipment() {}

    /** The key of an equipment's name; empty for one that was not named. */
    public static String key(String appliance) {
        String small = appliance.strip().toLowerCase(Locale.ROOT);
        Matcher serial = SERIAL.matcher(small);
        return plain(serial.find() ? serial.group(1) : small);
    }

    /** A name without capitals, spaces and signs, by which it is found however it is written. */
    public static String plain(String name) {
        return SIGNS.matcher(name.toLowerCase(Locale.ROOT)).replaceAll("");
    }
}
