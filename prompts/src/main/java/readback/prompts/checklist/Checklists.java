package readback.prompts.checklist;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** All jobs and checklists, read and checked as a whole. Immutable. */
public final class Checklists {

    private static final String FOLDER = "/readback/prompts/checklists/";

    private final Map<JobId, Job> jobs;
    private final Map<String, Checklist> checklists;

    private Checklists(Map<String, Checklist> checklists, Map<JobId, Job> jobs) {
        this.checklists = Map.copyOf(checklists);
        this.jobs = new LinkedHashMap<>(jobs);
    }

    /**
     * The checklists that come with Readback.
     *
     * @throws ChecklistFault if a file is faulty
     */
    public static Checklists standard() {
        return read(Checklists::resource);
    }

    /** A place that checklist files are read from. */
    public interface Source {
        /** The text of a file, or null if there is none. */
        @Nullable String text(String file);
    }

    /**
     * Reads {@code jobs.json} and every checklist that it names.
     *
     * @throws ChecklistFault naming file, line and fault
     */
    public static Checklists read(Source source) {
        ChecklistReader index = ChecklistReader.open("jobs.json", source);
        Map<String, Checklist> checklists = new LinkedHashMap<>();
        Map<JobId, Job> jobs = new LinkedHashMap<>();
        Set<String> stepIds = new LinkedHashSet<>();
        for (ChecklistReader.JobEntry entry : index.jobs()) {
            List<Job.Part> parts = entry.parts().stream()
                    .map(part -> new Job.Part(
                            checklists.computeIfAbsent(
                                    part.checklist(), id -> readChecklist(id, source, stepIds, index, part.line())),
                            part.when()))
                    .toList();
            JobId id = new JobId(entry.id());
            jobs.put(id, new Job(id, parts));
        }
        if (jobs.isEmpty()) {
            throw new ChecklistFault("jobs.json", 1, "no job is listed");
        }
        return new Checklists(checklists, jobs);
    }

    private static Checklist readChecklist(
            String id, Source source, Set<String> stepIds, ChecklistReader index, long line) {
        String file = id + ".json";
        if (source.text(file) == null) {
            throw index.fault(line, "checklist \"" + id + "\" has no file " + file);
        }
        return ChecklistReader.open(file, source).checklist(id, stepIds);
    }

    private static @Nullable String resource(String file) {
        try (InputStream in = Checklists.class.getResourceAsStream(FOLDER + file)) {
            return in == null ? null : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("checklist resource " + file + " could not be read", e);
        }
    }

    /** The resources that these were read from, in alphabetical order. */
    public List<String> files() {
        return Stream.concat(Stream.of("jobs"), checklists.keySet().stream())
                .sorted()
                .map(id -> FOLDER + id + ".json")
                .toList();
    }

    /** The job with this name. */
    public Optional<Job> job(JobId id) {
        return Optional.ofNullable(jobs.get(id));
    }

    /** All jobs in the order of the index; the first is the main job. */
    public List<Job> jobs() {
        return List.copyOf(jobs.values());
    }

    /** The checklist with this name. */
    public Optional<Checklist> checklist(String id) {
        return Optional.ofNullable(checklists.get(id));
    }

    /** All checklists, in no particular order. */
    public List<Checklist> all() {
        return List.copyOf(checklists.values());
    }
}
