package readback.prompts.checklist;

/** A checklist file that cannot be used: names file, line and fault. Thrown at start-up and by the build's tests. */
public final class ChecklistFault extends IllegalStateException {

    private static final long serialVersionUID = 1L;

    ChecklistFault(String file, long line, String fault) {
        super(file + ":" + line + ": " + fault);
    }
}
