package readback.calc.fluid;

/**
 * Where coefficients were published.
 *
 * @param doi digital object identifier, or "-" where there is none
 */
public record Paper(String authors, String title, String published, String year, String doi) {

    @Override
    public String toString() {
        String reference = authors + ": " + title + ". " + published + " (" + year + ")";
        return doi.equals("-") ? reference : reference + ", doi " + doi;
    }
}
