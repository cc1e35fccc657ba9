package rigmorrow.app.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import rigmorrow.data.problem.Words;

/**
 * What is wrong with a command line, and what was probably meant.
 *
 * @param lines to show, the help line last
 * @param accepted what would be accepted, as a phrase
 */
record UsageFault(List<String> lines, String accepted) {
  UsageFault {
    lines = List.copyOf(lines);
  }

  static UsageFault of(ParameterException failure, List<String> arguments) {
    CommandLine command = failure.getCommandLine();
    List<String> lines = new ArrayList<>(List.of("" + failure.getMessage()));
    List<String> strangers = strangers(failure, arguments);
    if (failure instanceof MissingParameterException) {
      strangers.forEach(stranger -> lines.add("Unknown option: '" + stranger + "'"));
    }
    List<String> meant =
        strangers.stream()
            .flatMap(stranger -> nearest(command, stranger).stream())
            .distinct()
            .toList();
    String help = command.getCommandSpec().qualifiedName() + " --help";
    String accepted = "what '" + help + "' lists";
    if (!meant.isEmpty()) {
      String question = "Did you mean: " + String.join(" or ", meant) + "?";
      lines.add(question);
      accepted += " (" + question + ")";
    }
    lines.add("Help: " + help);
    return new UsageFault(lines, accepted);
  }

  /** Words of the command line that are neither option nor command. */
  private static List<String> strangers(ParameterException failure, List<String> arguments) {
    if (failure instanceof UnmatchedArgumentException unmatched) {
      return unmatched.getUnmatched();
    }
    if (failure instanceof MissingParameterException) {
      // The parser stops at a missing file and keeps quiet about the option that hides it.
      Set<String> known = failure.getCommandLine().getCommandSpec().optionsMap().keySet();
      return arguments.stream()
          .filter(word -> word.startsWith("--") && !word.equals("--"))
          .map(word -> word.replaceFirst("=.*", ""))
          .filter(word -> !known.contains(word))
          .toList();
    }
    return List.of();
  }

  private static Optional<String> nearest(CommandLine command, String stranger) {
    if (stranger.startsWith("-")) {
      Set<String> options = command.getCommandSpec().optionsMap().keySet();
      return Words.nearest(options, stranger.replaceFirst("=.*", ""));
    }
    CommandLine root = command;
    while (root.getParent() != null) {
      root = root.getParent();
    }
    boolean asksForCommand =
        !command.getSubcommands().isEmpty()
            || command.getCommand() instanceof CommandLine.HelpCommand;
    String name = root.getCommandName();
    return asksForCommand
        ? Words.nearest(root.getSubcommands().keySet(), stranger).map(word -> name + " " + word)
        : Optional.empty();
  }
}
