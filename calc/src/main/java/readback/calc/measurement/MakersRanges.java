package readback.calc.measurement;

import java.util.Optional;

/**
 * Ranges that the maker states for this unit; they come before every general limit.
 *
 * @param subcoolingDeviation allowed actual minus plate subcooling
 * @param valveSuperheat superheat that the expansion valve must hold
 */
public record MakersRanges(Optional<Band> subcoolingDeviation, Optional<Band> valveSuperheat) {

    /** The maker states none, or none was found. */
    public static final MakersRanges NONE = new MakersRanges(Optional.empty(), Optional.empty());
}
