package rigmorrow.app.terminal;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Asks whether a stream of this process is a terminal. {@code System.console()} cannot tell: it
 * wants standard input and output both to be one, and says nothing of standard error.
 */
final class Terminals {
  private static final Path DESCRIPTORS = Path.of("/proc/self/fd");
  private static final int PATIENCE_SECONDS = 2;

  private Terminals() {}

  /**
   * @param descriptor 1 for standard output, 2 for standard error
   */
  static boolean isTerminal(int descriptor) {
    if (Files.isDirectory(DESCRIPTORS)) {
      try {
        String target = Files.readSymbolicLink(DESCRIPTORS.resolve("" + descriptor)).toString();
        return target.startsWith("/dev/pts/")
            || target.startsWith("/dev/tty")
            || target.equals("/dev/console");
      } catch (IOException e) {
        return false; // the stream is closed
      }
    }
    return System.console() != null || shellSaysTerminal(descriptor);
  }

  /** Width of the terminal: what COLUMNS says, or stty, or 80. */
  static int columns(Map<String, String> environment) {
    String told = environment.getOrDefault("COLUMNS", "");
    if (told.matches("[1-9][0-9]{0,3}")) {
      return Integer.parseInt(told);
    }
    String[] size = answer("stty size < /dev/tty 2> /dev/null").split(" ");
    return size.length == 2 && size[1].matches("[1-9][0-9]{0,3}")
        ? Integer.parseInt(size[1])
        : Console.USUAL_COLUMNS;
  }

  private static boolean shellSaysTerminal(int descriptor) {
    ProcessBuilder test =
        new ProcessBuilder("sh", "-c", "test -t " + descriptor)
            .redirectOutput(ProcessBuilder.Redirect.INHERIT)
            .redirectError(ProcessBuilder.Redirect.INHERIT);
    try {
      return exitCode(test.start()) == 0;
    } catch (IOException e) {
      return false; // no shell here
    }
  }

  private static String answer(String command) {
    try {
      Process process = new ProcessBuilder("sh", "-c", command).start();
      String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return exitCode(process) == 0 ? text.strip() : "";
    } catch (IOException e) {
      return ""; // no shell here
    }
  }

  private static int exitCode(Process process) {
    try {
      if (process.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS)) {
        return process.exitValue();
      }
      process.destroy();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
    return -1;
  }
}
