package rigmorrow.app.cli;

import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;
import rigmorrow.app.terminal.Session;

/** The {@code rigmorrow} command with all its commands. */
@Command(
    name = "rigmorrow",
    description = "Plans the day of a floor of automated photo rigs.",
    commandListHeading = "%nCommands:%n",
    footer = {
      "Examples:",
      "  rigmorrow demo                                 try it on a made-up floor",
      "  rigmorrow fit floor.yaml shot-list.csv         which rig can take which job",
      "  rigmorrow plan floor.yaml shot-list.csv        plan tomorrow",
      "  rigmorrow plan floor.yaml shot-list.csv --time 60 --out out/monday"
    })
public final class RigmorrowCommand implements Runnable {
  @Mixin CommonOptions common;

  @Spec private CommandLine.Model.CommandSpec spec;

  private RigmorrowCommand() {}

  /**
   * Runs a command line.
   *
   * @param arguments of the program
   * @param session what to work with
   * @param version tells the program's version
   * @return the exit code: 0 done, 1 a fault of the program, 2 bad input or usage, 3 no workable
   *     plan
   */
  public static int run(List<String> arguments, Session session, IVersionProvider version) {
    FailureTeller failures = new FailureTeller(session.console(), arguments);
    try {
      CommandLine line = commandLine(session);
      arrange(line, version);
      PrintWriter out = writer(session.console().out());
      PrintWriter err = writer(session.console().err());
      boolean colour = session.console().colour();
      line.setOut(out).setErr(err);
      line.setColorScheme(Help.defaultColorScheme(colour ? Help.Ansi.ON : Help.Ansi.OFF));
      line.registerConverter(LocalDate.class, RigmorrowCommand::date);
      line.registerConverter(int.class, text -> whole(text, Integer::parseInt));
      line.registerConverter(Integer.class, text -> whole(text, Integer::parseInt));
      line.registerConverter(long.class, text -> whole(text, Long::parseLong));
      line.setCaseInsensitiveEnumValuesAllowed(true);
      line.setParameterExceptionHandler(failures);
      line.setExecutionExceptionHandler(failures);
      int exitCode = line.execute(arguments.toArray(String[]::new));
      out.flush();
      err.flush();
      return session.console().out().checkError() ? failures.unwritten() : exitCode;
    } catch (RuntimeException | Error e) {
      return failures.fault(e);
    }
  }

  private static LocalDate date(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new TypeConversionException("'" + text + "' is no date; accepted: YYYY-MM-DD");
    }
  }

  private static <N extends Number> N whole(String text, Function<String, N> parse) {
    try {
      return parse.apply(text);
    } catch (NumberFormatException e) {
      throw new TypeConversionException("'" + text + "'; accepted: a whole number");
    }
  }

  private static PrintWriter writer(PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }

  private static CommandLine commandLine(Session session) {
    return new CommandLine(new RigmorrowCommand())
        .addSubcommand(new DemoCommand(session))
        .addSubcommand(new ImportCommand(session))
        .addSubcommand(new PlanCommand(session))
        .addSubcommand(new BoardCommand(session))
        .addSubcommand(new FitCommand(session))
        .addSubcommand(new TimesCommand(session))
        .addSubcommand(new VerifyCommand(session))
        .addSubcommand(new ExplainCommand(session))
        .addSubcommand(new RunSheetsCommand(session))
        .addSubcommand(new CalendarCommand(session))
        .addSubcommand(new LabelsCommand(session))
        .addSubcommand(new WhatIfCommand(session))
        .addSubcommand(new SchemaCommand(session))
        .addSubcommand(new CompletionCommand(session))
        .addSubcommand(new CommandLine.HelpCommand());
  }

  /** Puts the examples first, in this command and all below. */
  private static void arrange(CommandLine line, IVersionProvider version) {
    line.getCommandSpec().versionProvider(version);
    List<String> sections = new ArrayList<>(line.getHelpSectionKeys());
    sections.remove(UsageMessageSpec.SECTION_KEY_FOOTER);
    sections.add(0, UsageMessageSpec.SECTION_KEY_FOOTER);
    line.setHelpSectionKeys(sections);
    line.getHelpSectionMap()
        .compute(
            UsageMessageSpec.SECTION_KEY_FOOTER,
            (key, examples) ->
                help -> {
                  String text = examples == null ? "" : examples.render(help);
                  return text.isEmpty() ? "" : text + System.lineSeparator();
                });
    line.getSubcommands().values().forEach(below -> arrange(below, version));
  }

  /** Without a command there is nothing to do but say what there is. */
  @Override
  public void run() {
    spec.commandLine().usage(spec.commandLine().getOut());
  }
}
