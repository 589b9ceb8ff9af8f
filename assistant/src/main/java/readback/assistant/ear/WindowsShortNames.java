package readback.assistant.ear;

import com.sun.jna.Function;
import com.sun.jna.WString;
import java.util.Optional;

/** Asks Windows itself. */
final class WindowsShortNames implements ShortNames {

    /** The longest path of the Unicode functions; "Maximum Path Length Limitation" in the documentation of Windows. */
    private static final int LONGEST = 32_767;

    @Override
    public Optional<String> of(String path) {
        char[] name = new char[LONGEST];
        int length = Function.getFunction("kernel32", "GetShortPathNameW")
                .invokeInt(new Object[] {new WString(path), name, name.length});
        return length > 0 && length < name.length ? Optional.of(new String(name, 0, length)) : Optional.empty();
    }
}
