package readback.fleet;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.TreeMap;
import readback.assistant.archive.SessionPacker;

/** Five hundred calls of one fleet, by their number; single ones can be tampered with before they are packed. */
final class SmallFleet {

    static final int CALLS = 500;

    private static final ManyCalls MAKER = new ManyCalls();

    private final TreeMap<Integer, byte[]> records = new TreeMap<>();
    private final List<byte[]> more = new ArrayList<>();

    SmallFleet() {
        this(CALLS);
    }

    /** The first calls of the fleet. */
    SmallFleet(int calls) {
        for (int i = 0; i < calls; i++) {
            records.put(i, MAKER.record(i, CALLS));
        }
    }

    /** The call that a number's record is a copy of. */
    static RecordedCall kind(int number) {
        return MAKER.kind(number);
    }

    static RecordedCall.Identity identity(int number) {
        return ManyCalls.identity(number, CALLS);
    }

    byte[] get(int number) {
        return Objects.requireNonNull(records.get(number)).clone();
    }

    /** Another record in place of a number's. */
    SmallFleet with(int number, byte[] record) {
        records.put(number, record);
        return this;
    }

    /** One more record. */
    SmallFleet and(byte[] record) {
        more.add(record);
        return this;
    }

    SmallFleet without(int number) {
        records.remove(number);
        return this;
    }

    /** Packs all records in their order. */
    Path packed(Path folder, int per) throws IOException {
        return packed(folder, per, all());
    }

    /** Packs the records of some numbers. */
    Path packed(Path folder, int from, int to) throws IOException {
        return packed(
                folder, to - from, new ArrayList<>(records.subMap(from, to).values()));
    }

    /** Packs all records in another order. */
    Path shuffled(Path folder, int per) throws IOException {
        List<byte[]> shuffled = all();
        Collections.shuffle(shuffled, new Random(4));
        return packed(folder, per, shuffled);
    }

    private List<byte[]> all() {
        List<byte[]> all = new ArrayList<>(records.values());
        all.addAll(more);
        return all;
    }

    private static Path packed(Path folder, int per, List<byte[]> records) throws IOException {
        SessionPacker packer = new SessionPacker(folder, per);
        for (byte[] record : records) {
            packer.add(record, "a call");
        }
        packer.close();
        return folder;
    }
}
