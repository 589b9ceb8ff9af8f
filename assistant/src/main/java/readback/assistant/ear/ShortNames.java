package readback.assistant.ear;

import java.util.Optional;

/** The short names that Windows keeps beside long ones, as {@code C:\\Users\\JOS~1}. */
@FunctionalInterface
interface ShortNames {

    /** The whole path by its short names; empty where there is no such file, or the disk keeps no short names. */
    Optional<String> of(String path);
}
