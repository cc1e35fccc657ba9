package rigmorrow.app.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** What every command understands. */
@Command(
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = false,
    sortOptions = false,
    optionListHeading = "%nOptions:%n",
    parameterListHeading = "%nFiles:%n",
    descriptionHeading = "%n",
    exitCodeListHeading = "%nExit codes:%n",
    exitCodeList = {
      "0:done, also when Ctrl-C ended a search early and the best plan was kept",
      "1:a fault of the program; please report it",
      "2:something is wrong with an input file or the command line",
      "3:no workable plan, one that breaks rules, or one that leaves out a must-promise",
      "130:Ctrl-C before there was a plan to keep, or anything to tell of scenarios"
    })
final class CommonOptions {
  /** One document on standard output in place of text. */
  @Option(names = "--json", description = "Print one JSON document, errors too.")
  boolean json;

  /** Read before the command line is parsed; see {@link RigmorrowCommand}. */
  @Option(
      names = "--no-color",
      description = "No colours (also: NO_COLOR in the environment, TERM=dumb).")
  boolean noColour;

  /** Read before the command line is parsed; see {@link FailureTeller}. */
  @Option(names = "--debug", description = "Show where in the program a fault of ours happened.")
  boolean debug;
}
