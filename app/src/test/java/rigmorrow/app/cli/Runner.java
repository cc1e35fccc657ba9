package rigmorrow.app.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import rigmorrow.app.terminal.Console;
import rigmorrow.app.terminal.EarlyStop;
import rigmorrow.app.terminal.Session;

/** Runs command lines in this JVM and keeps what they print. */
final class Runner {
  /** A Tuesday. */
  static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-03T10:00:00Z"), ZoneOffset.UTC);

  private Runner() {}

  /**
   * What came of a run.
   *
   * @param exitCode of the program
   * @param out standard output
   * @param err standard error
   */
  record Ran(int exitCode, String out, String err) {
    JsonNode json() {
      try {
        // A second document or any other text behind the first is an error.
        return new ObjectMapper()
            .enable(com.fasterxml.jackson.databind.DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .readTree(out);
      } catch (JsonProcessingException e) {
        throw new AssertionError("no single JSON document: " + out, e);
      }
    }
  }

  static Ran run(Path folder, String... arguments) {
    return run(folder, CLOCK, false, arguments);
  }

  static Ran onTerminal(Path folder, String... arguments) {
    return run(folder, CLOCK, true, arguments);
  }

  /** The same where it was asked to stop before it began. */
  static Ran stopped(Path folder, String... arguments) {
    EarlyStop stop = new EarlyStop();
    stop.request();
    return run(folder, CLOCK, false, stop, arguments);
  }

  static Ran run(Path folder, Clock clock, boolean terminal, String... arguments) {
    return run(folder, clock, terminal, new EarlyStop(), arguments);
  }

  private static Ran run(
      Path folder, Clock clock, boolean terminal, EarlyStop stop, String... arguments) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    Console console =
        new Console(
            new PrintStream(out, true, UTF_8),
            new PrintStream(err, true, UTF_8),
            Console.USUAL_COLUMNS,
            terminal,
            terminal,
            terminal);
    Session session = new Session(console, stop, clock, folder);
    int exitCode =
        RigmorrowCommand.run(List.of(arguments), session, () -> new String[] {"rigmorrow test"});
    return new Ran(exitCode, out.toString(UTF_8), err.toString(UTF_8));
  }
}
