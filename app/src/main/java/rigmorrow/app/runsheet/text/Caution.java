package rigmorrow.app.runsheet.text;

/**
 * Something to mind with one job.
 *
 * @param full the whole sentence
 * @param brief the hazard alone, for a place where the whole sentence stands a few lines above
 */
public record Caution(String full, String brief) {}
