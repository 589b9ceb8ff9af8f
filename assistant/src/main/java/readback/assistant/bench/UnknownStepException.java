package readback.assistant.bench;

/** The dialogue asks for something that the simulated technician has never been taught to answer. */
public final class UnknownStepException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    UnknownStepException(String step, int number) {
        super("The simulated technician does not know the step '" + step + "' of call " + number
                + ": teach it in Technician.");
    }
}
