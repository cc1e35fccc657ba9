package rigmorrow.benchmarks.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Locale;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;
import rigmorrow.benchmarks.instance.LiteratureFolder.LiteratureSet;
import rigmorrow.benchmarks.instance.Project;
import rigmorrow.benchmarks.peer.Peer;
import rigmorrow.benchmarks.run.Peers;

class ProtocolPageTest {
  private static String page;

  @BeforeAll
  static void read() throws IOException {
    page = Files.readString(Project.folder("PROTOCOL.md"));
  }

  @Test
  void namesEveryTierAndOption() {
    CommandLine line = BenchmarksCommand.commandLine(System.out, System.err);
    line.getSubcommands()
        .forEach(
            (name, command) -> {
              assertThat(page).contains("benchmarks.jar " + name);
              for (OptionSpec option : command.getCommandSpec().options()) {
                if (!option.usageHelp()) {
                  assertThat(page).contains("`" + option.longestName());
                }
              }
            });
  }

  @Test
  void namesEveryPeerAndSet() {
    for (Peer peer : Peers.all()) {
      assertThat(page).contains("| `" + peer.name() + "` |");
    }
    for (LiteratureSet set : LiteratureSet.values()) {
      assertThat(page).contains("set `" + set.name().toLowerCase(Locale.ROOT) + "`");
    }
  }
}
