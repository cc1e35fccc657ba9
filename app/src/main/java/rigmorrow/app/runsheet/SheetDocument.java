package rigmorrow.app.runsheet;

import java.util.List;

/** Everything that the template prints. */
record SheetDocument(FrontPage front, List<RigSheet> rigs, List<OperatorSheet> operators) {

  /** A figure with its name, at the head of a sheet. */
  record Fact(String label, String value) {}
}
