package readback.assistant.archive;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import readback.assistant.digest.Sha256;
import readback.assistant.record.ChainedRecord;
import readback.assistant.record.RecordFault;

/**
 * A bundle: whole records of sessions one behind the other, byte for byte, so that engines for many records need not
 * open a file for each (decision 0025). Beside it lies its index, a {@link BundledSession} a line. What a bundle holds
 * is found from its own lines; the index tells what has been taken out or cut off since it was packed.
 *
 * @param sessions in the order in which they lie there
 * @param troubles what is wrong with the bundle as a whole, a sentence each without its name; empty where it is as it
 *     was packed
 */
public record Bundle(List<Held> sessions, List<String> troubles) {

    /** How names of bundles end. */
    public static final String ENDING = ".bundle";

    /** What the name of a bundle's index has behind that of the bundle. */
    public static final String INDEX = ".index";

    private static final ObjectMapper JSON = new ObjectMapper();

    /** More sessions that a bundle lacks are counted, not named. */
    private static final int MOST_NAMED = 5;

    /**
     * A session of a bundle, and whether its chain holds.
     *
     * @param session its name; empty where neither header nor index tell it
     * @param offset bytes of the bundle before it
     * @param length bytes of its record
     * @param lines that hold, the header among them
     * @param head hash of the last of these lines
     * @param fault the first line that does not hold; empty when the whole chain does
     */
    public record Held(String session, int offset, int length, int lines, String head, Optional<RecordFault> fault) {}

    public Bundle {
        sessions = List.copyOf(sessions);
        troubles = List.copyOf(troubles);
    }

    /**
     * What the bytes of a bundle hold.
     *
     * @param index what its index says; empty where there is none
     */
    public static Bundle of(byte[] bundle, Optional<List<BundledSession>> index) {
        return new Scan(bundle, index.orElse(List.of())).bundle(index.isPresent());
    }

    /** One pass over the bytes of a bundle. */
    private static final class Scan {
        private final byte[] bytes;
        private final List<BundledSession> index;
        private final Map<Integer, BundledSession> listed = new HashMap<>();
        private final List<String> troubles = new ArrayList<>();

        Scan(byte[] bytes, List<BundledSession> index) {
            this.bytes = bytes;
            this.index = index;
            index.forEach(each -> listed.put(each.offset(), each));
        }

        Bundle bundle(boolean indexed) {
            List<Integer> starts = List.copyOf(starts());
            if (starts.isEmpty()) {
                return new Bundle(List.of(), List.of("is no bundle: it does not begin with the header of a session"));
            }
            if (starts.get(0) > 0) {
                troubles.add("begins with " + starts.get(0) + " bytes that belong to no session");
            }
            List<Held> held = new ArrayList<>();
            for (int i = 0; i < starts.size(); i++) {
                int next = i + 1 < starts.size() ? starts.get(i + 1) : bytes.length;
                held.add(held(starts.get(i), next));
            }
            if (indexed) {
                compare(held);
            } else {
                troubles.add("has no index beside it, so that nobody can tell whether it is whole: copy its index too");
            }
            return new Bundle(held, troubles);
        }

        /** Where a line begins like a header, and where the index has a session at the beginning of a line. */
        private SortedSet<Integer> starts() {
            SortedSet<Integer> starts = new TreeSet<>();
            for (int at = 0; at < bytes.length; at++) {
                boolean lineBegins = at == 0 || bytes[at - 1] == '\n';
                if (lineBegins && (ChainedRecord.headerAt(bytes, at) || listed.containsKey(at))) {
                    starts.add(at);
                }
            }
            return starts;
        }

        private Held held(int from, int next) {
            Optional<BundledSession> known = Optional.ofNullable(listed.get(from));
            // A torn last line got a line feed when it was packed, which is none of its own.
            int to = known.map(BundledSession::end)
                    .filter(end -> end == next - 1 && bytes[end] == '\n')
                    .orElse(next);
            byte[] record = Arrays.copyOfRange(bytes, from, to);
            ChainedRecord chain = ChainedRecord.of(record);
            String name =
                    nameOf(record).or(() -> known.map(BundledSession::session)).orElse("");
            Optional<RecordFault> fault = chain.fault()
                    .map(each -> known.filter(was -> !was.sha256().equals(sha256(record)))
                            .map(since -> new RecordFault(
                                    each.line(), each.kind(), each.sentence() + "; it was not so when it was packed"))
                            .orElse(each));
            return new Held(name, from, to - from, chain.hashes().size(), chain.head(), fault);
        }

        private void compare(List<Held> held) {
            int whole = index.stream().mapToInt(BundledSession::end).max().orElse(0);
            if (bytes.length < whole) {
                troubles.add(
                        "was cut: it has " + bytes.length + " bytes, and its index knows " + whole + ": copy it again");
            } else if (bytes.length > whole + 1) {
                troubles.add("goes on for " + (bytes.length - whole) + " bytes behind what its index knows");
            }
            Set<String> heads = new HashSet<>();
            Set<String> names = new HashSet<>();
            held.forEach(each -> {
                heads.add(each.session() + " " + each.head());
                names.add(each.session());
            });
            List<String> gone = new ArrayList<>();
            for (BundledSession each : index) {
                if (!names.contains(each.session())) {
                    gone.add(each.session());
                } else if (!heads.contains(each.session() + " " + each.head()) && sound(each, held)) {
                    troubles.add("holds another session " + each.session() + " than was packed: its index knows "
                            + each.lines() + " lines with the head " + each.head());
                }
            }
            if (!gone.isEmpty()) {
                troubles.add("lacks " + gone.size() + " sessions that were packed: "
                        + String.join(", ", gone.subList(0, Math.min(MOST_NAMED, gone.size())))
                        + (gone.size() > MOST_NAMED ? ", ..." : ""));
            }
        }

        /** Whether a session of that name is there whose chain holds, so that nothing else tells of the change. */
        private static boolean sound(BundledSession packed, List<Held> held) {
            return held.stream()
                    .anyMatch(each -> each.session().equals(packed.session())
                            && each.fault().isEmpty());
        }
    }

    /** The name of the session that these bytes are the record of, if its header can be read. */
    static Optional<String> nameOf(byte[] record) {
        int end = 0;
        while (end < record.length && record[end] != '\n') {
            end++;
        }
        try {
            JsonNode header = JSON.readTree(new String(record, 0, end, StandardCharsets.UTF_8));
            return Optional.ofNullable(header.get("session")).map(JsonNode::asText);
        } catch (JsonProcessingException e) {
            return Optional.empty();
        }
    }

    static String sha256(byte[] bytes) {
        return new Sha256().add(bytes, 0, bytes.length).hex();
    }
}
