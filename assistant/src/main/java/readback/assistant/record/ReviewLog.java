package readback.assistant.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** The answers that an apprentice gave in drills, oldest first, sealed and chained as a record is. */
public final class ReviewLog {

    private final ChainedFile<Review> file;

    private ReviewLog(ChainedFile<Review> file) {
        this.file = file;
    }

    /** The log in a file, whether or not there is one yet. */
    public static ReviewLog in(Path file) {
        return new ReviewLog(new ChainedFile<>(file, ReviewLog::review));
    }

    /**
     * One answer.
     *
     * @param skill what was asked
     * @param review how often it was asked before
     * @param grade as in "good"
     * @param answer in the words that were understood; empty where none was given
     * @param seconds from the end of the question to the answer
     */
    public record Review(Instant at, String skill, int review, String grade, String answer, double seconds) {}

    /**
     * What the log holds.
     *
     * @param fault what is wrong with it; what stands before is trusted
     */
    public record Content(List<Review> reviews, Optional<RecordFault> fault) {
        public Content {
            reviews = List.copyOf(reviews);
        }
    }

    /**
     * Reads the log; one that is not there holds nothing.
     *
     * @throws IOException when it cannot be read
     */
    public Content read() throws IOException {
        ChainedLines<Review> lines = file.read();
        return new Content(lines.items(), lines.fault());
    }

    /**
     * Adds an answer.
     *
     * @throws IOException when it cannot be written, or the log was altered
     */
    public void add(Review review) throws IOException {
        Path folder = file.file().toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("type", "review");
        node.put("at", review.at().toString());
        node.put("skill", review.skill());
        node.put("review", review.review());
        node.put("grade", review.grade());
        node.put("answer", review.answer());
        node.put("seconds", review.seconds());
        Optional<RecordFault> fault = file.append(node);
        if (fault.isPresent()) {
            throw new IOException(fault.get().toString());
        }
    }

    private static Review review(JsonNode node) {
        return new Review(
                Instant.parse(RecordJson.text(node, "at")),
                RecordJson.text(node, "skill"),
                node.path("review").asInt(),
                RecordJson.text(node, "grade"),
                RecordJson.text(node, "answer"),
                node.path("seconds").asDouble());
    }
}
