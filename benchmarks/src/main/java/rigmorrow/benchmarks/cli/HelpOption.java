package rigmorrow.benchmarks.cli;

import picocli.CommandLine.Option;

/** What every command understands. */
final class HelpOption {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      description = "Show this help.")
  boolean asked;
}
