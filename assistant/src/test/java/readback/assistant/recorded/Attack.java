package readback.assistant.recorded;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import java.util.zip.CRC32C;
import readback.assistant.record.FolderLedger;
import readback.assistant.record.Forger;
import readback.assistant.record.RemarkFile;
import readback.assistant.record.SessionRecord;

/**
 * What somebody with the tablet in hand may do to a folder of sessions. {@code Attack NAME FOLDER} does it; without
 * arguments the names are printed. Each works on the first session by name, some on the second too.
 */
public enum Attack {
    /** The last two events are cut off at a line end. */
    CUT {
        @Override
        void on(Path sessions) throws IOException {
            List<String> lines = lines(first(sessions));
            write(first(sessions), lines.subList(0, lines.size() - 2));
        }
    },
    /** The record and the ledger are both put back to an earlier state. */
    ROLL_BACK_RECORD_AND_LEDGER {
        @Override
        void on(Path sessions) throws IOException {
            CUT.on(sessions);
            Path ledger = sessions.resolve(FolderLedger.FILE);
            Files.writeString(ledger, Files.readAllLines(ledger).get(0) + "\n");
        }
    },
    /** Two lines change places. */
    REORDER {
        @Override
        void on(Path sessions) throws IOException {
            List<String> lines = new ArrayList<>(lines(first(sessions)));
            Collections.swap(lines, 2, 3);
            write(first(sessions), lines);
        }
    },
    /** One bit of one byte. */
    FLIP {
        @Override
        void on(Path sessions) throws IOException {
            Path file = first(sessions).resolve(SessionRecord.FILE);
            byte[] bytes = Files.readAllBytes(file);
            bytes[bytes.length / 2] ^= 1;
            Files.write(file, bytes);
        }
    },
    /** The last verdict is a better one, and the whole chain is made anew. */
    FORGE_VERDICT {
        @Override
        void on(Path sessions) throws IOException {
            Forger.rewrite(first(sessions), (line, node) -> {
                if (node.path("outcome").path("standing") instanceof ArrayNode standing) {
                    standing.forEach(each -> ((ObjectNode) each).put("verdict", "IN_TOLERANCE"));
                }
            });
        }
    },
    /** A field that says that all was well, in a chain made anew. */
    ADD_FIELD {
        @Override
        void on(Path sessions) throws IOException {
            Forger.rewrite(first(sessions), (line, node) -> {
                if (line == 1) {
                    node.put("approved", true);
                }
            });
        }
    },
    /** The record goes, its folder stays. */
    DELETE_RECORD {
        @Override
        void on(Path sessions) throws IOException {
            Files.delete(first(sessions).resolve(SessionRecord.FILE));
        }
    },
    /** The whole folder of a session goes. */
    DELETE_FOLDER {
        @Override
        void on(Path sessions) throws IOException {
            delete(first(sessions));
        }
    },
    /** The ledger goes. */
    DELETE_LEDGER {
        @Override
        void on(Path sessions) throws IOException {
            Files.delete(sessions.resolve(FolderLedger.FILE));
        }
    },
    /** The index says another verdict, with a sum that fits. */
    EDIT_INDEX {
        @Override
        void on(Path sessions) throws IOException {
            Path index = sessions.resolve(".readback-index");
            List<String> forged = new ArrayList<>();
            for (String line : Files.readAllLines(index)) {
                String[] parts = line.split("\t", 5);
                if (parts.length == 5) {
                    parts[4] = parts[4].replace("\"verdict\":\"add\"", "\"verdict\":\"in-tolerance\"");
                    CRC32C sum = new CRC32C();
                    sum.update(String.join("\t", parts[0], parts[1], parts[2], parts[4])
                            .getBytes(StandardCharsets.UTF_8));
                    parts[3] = Long.toHexString(sum.getValue());
                    forged.add(String.join("\t", parts));
                } else {
                    forged.add(line);
                }
            }
            Files.writeString(index, String.join("\n", forged) + "\n");
        }
    },
    /** The remarks on one session are put to another. */
    SWAP_REMARKS {
        @Override
        void on(Path sessions) throws IOException {
            Path one = first(sessions).resolve(RemarkFile.FILE);
            Path other = folders(sessions).get(1).resolve(RemarkFile.FILE);
            byte[] bytes = Files.readAllBytes(one);
            Files.write(one, Files.readAllBytes(other));
            Files.write(other, bytes);
        }
    },
    /** The remarks go. */
    DELETE_REMARKS {
        @Override
        void on(Path sessions) throws IOException {
            Files.delete(first(sessions).resolve(RemarkFile.FILE));
        }
    },
    /** A session's folder gets another name. */
    RENAME_FOLDER {
        @Override
        void on(Path sessions) throws IOException {
            Files.move(first(sessions), sessions.resolve("2026-01-01T00-00-00Z-0000"));
        }
    },
    /** A session is there twice. */
    COPY {
        @Override
        void on(Path sessions) throws IOException {
            Path copy = Files.createDirectory(sessions.resolve("copy"));
            Files.copy(first(sessions).resolve(SessionRecord.FILE), copy.resolve(SessionRecord.FILE));
        }
    },
    /** A pipe that never ends stands in the place of the record, and another in that of the remarks. */
    FIFO {
        @Override
        void on(Path sessions) throws IOException {
            pipe(first(sessions).resolve(SessionRecord.FILE));
            pipe(folders(sessions).get(1).resolve(RemarkFile.FILE));
        }
    },
    /** A line that is longer than any record. */
    HUGE_LINE {
        @Override
        void on(Path sessions) throws IOException {
            try (RandomAccessFile file = new RandomAccessFile(
                    first(sessions).resolve(SessionRecord.FILE).toFile(), "rw")) {
                file.setLength(3_000_000_000L);
            }
        }
    };

    abstract void on(Path sessions) throws IOException;

    /** Does it to a folder of sessions. */
    public void perform(Path sessions) throws IOException {
        on(sessions);
    }

    public static void main(String[] args) throws IOException {
        if (args.length != 2) {
            for (Attack attack : values()) {
                System.out.println(attack.name().toLowerCase(Locale.ROOT).replace('_', '-'));
            }
            return;
        }
        valueOf(args[0].toUpperCase(Locale.ROOT).replace('-', '_')).perform(Path.of(args[1]));
    }

    /** The folders of sessions, by name. */
    public static List<Path> folders(Path sessions) throws IOException {
        try (Stream<Path> all = Files.list(sessions)) {
            return all.filter(Files::isDirectory).sorted().toList();
        }
    }

    private static Path first(Path sessions) throws IOException {
        return folders(sessions).get(0);
    }

    private static List<String> lines(Path session) throws IOException {
        return Files.readAllLines(session.resolve(SessionRecord.FILE));
    }

    private static void write(Path session, List<String> lines) throws IOException {
        Files.writeString(session.resolve(SessionRecord.FILE), String.join("\n", lines) + "\n");
    }

    private static void delete(Path folder) throws IOException {
        List<Path> all;
        try (Stream<Path> tree = Files.walk(folder)) {
            all = tree.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path each : all) {
            Files.delete(each);
        }
    }

    private static void pipe(Path file) throws IOException {
        Files.deleteIfExists(file);
        try {
            if (new ProcessBuilder("mkfifo", file.toString()).start().waitFor() != 0) {
                throw new IOException("no pipe could be made at " + file);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }
}
