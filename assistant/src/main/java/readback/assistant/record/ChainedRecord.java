package readback.assistant.record;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The chain of a record, from its bytes alone: what its lines say is not read. Cheap enough for every record of a
 * fleet.
 *
 * @param hashes of the lines that hold, in order, the header's first
 * @param ends where each of these lines ends, at its line feed
 * @param fault the first line that does not hold; empty when the whole chain does
 */
public record ChainedRecord(List<String> hashes, List<Integer> ends, Optional<RecordFault> fault) {

    private static final byte[] HEADER = "{\"type\":\"header\",".getBytes(StandardCharsets.US_ASCII);

    public ChainedRecord {
        hashes = List.copyOf(hashes);
        ends = List.copyOf(ends);
    }

    /** The chain of the record that lies in these bytes, all of them. */
    public static ChainedRecord of(byte[] record) {
        List<String> hashes = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        Optional<RecordFault> fault = Optional.empty();
        String previous = Chain.START;
        int from = 0;
        while (fault.isEmpty() && from < record.length) {
            int line = hashes.size() + 1;
            int end = Chain.lineEnd(record, from);
            Optional<String> hash = end == record.length ? Optional.empty() : Chain.hashOf(record, from, end);
            if (end == record.length) {
                fault = Optional.of(new RecordFault(
                        line,
                        RecordFault.Kind.TORN,
                        "was cut off while it was written (" + (end - from) + " bytes); everything before it holds"));
            } else if (hash.isEmpty()) {
                fault = Optional.of(new RecordFault(
                        line, RecordFault.Kind.CHANGED, "was changed or damaged: its hash does not fit its content"));
            } else if (!Chain.follows(record, end, previous)) {
                fault = Optional.of(
                        new RecordFault(line, RecordFault.Kind.MISPLACED, "does not follow the line before it"));
            } else {
                previous = hash.get();
                hashes.add(previous);
                ends.add(end);
                from = end + 1;
            }
        }
        return new ChainedRecord(hashes, ends, fault);
    }

    /** Whether a line that begins at a place of a file begins like the header of a record. */
    public static boolean headerAt(byte[] file, int place) {
        return place + HEADER.length <= file.length
                && Arrays.equals(HEADER, 0, HEADER.length, file, place, place + HEADER.length);
    }

    /** The hash of the last line that holds; 64 zeros where not even the header does. */
    public String head() {
        return hashes.isEmpty() ? Chain.START : hashes.get(hashes.size() - 1);
    }

    /**
     * Whether this record, or what of it holds, is an earlier state of another: the other one goes on from its head.
     */
    public boolean begins(ChainedRecord other) {
        int last = hashes.size() - 1;
        return last < 0 || (last < other.hashes.size() && hashes.get(last).equals(other.hashes.get(last)));
    }
}
