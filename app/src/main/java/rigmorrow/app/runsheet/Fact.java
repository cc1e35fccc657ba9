package rigmorrow.app.runsheet;

/** A figure with its name, at the head of a sheet. */
record Fact(String label, String value) {}
