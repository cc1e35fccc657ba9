package rigmorrow.app.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.schema.FileSchema;

/** Prints what an editor needs to complete and check our files. */
@Command(
    name = "schema",
    description = "Print the JSON Schema of a kind of file, for your editor.",
    footer = {
      "Examples:",
      "  rigmorrow schema floor > floor.schema.json",
      "  rigmorrow schema shot-list > shot-list.schema.json"
    })
final class SchemaCommand implements Callable<Integer> {
  @Mixin CommonOptions common;

  @Parameters(paramLabel = "KIND", description = "One of: floor, shot-list, plan, scenarios.")
  private FileSchema schema;

  private final Session session;

  SchemaCommand(Session session) {
    this.session = session;
  }

  /** A schema is one JSON document, with {@code --json} and without. */
  @Override
  public Integer call() {
    session.print(schema.text().lines().toList());
    return ExitCodes.DONE;
  }
}
