package readback.assistant.setup;

import readback.calc.name.ConstantName;

/** Something that can be chosen by touch, key or voice. */
public enum Choice {
    SET_UP,
    DEMO,
    PRACTICE,
    CHECK,
    SELFCHECK,
    LEAVE,
    /** The device of the offer's name. */
    DEVICE,
    YES,
    NO,
    NEXT,
    SKIP,
    BACK,
    AGAIN,
    US,
    METRIC;

    /** The key of the word that is said for it. */
    String wordsKey() {
        return "setup.option." + ConstantName.of(this) + ".words";
    }
}
