package rigmorrow.app.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.server.BoardServer;
import rigmorrow.app.board.server.ServerSettings;
import rigmorrow.app.board.server.Tokens;
import rigmorrow.app.board.whatif.ComparisonDesk;
import rigmorrow.app.board.whatif.DaySource;
import rigmorrow.app.cli.options.BoardOptions;
import rigmorrow.app.cli.options.Bounds;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;

/** Shows a plan on a local web page, to be touched and asked. */
@Command(
    name = "board",
    description = {
      "Show the plan on a local web page: see it, move jobs by hand, plan again, ask why.",
      "Without files it goes on with the board that the folder holds. Ctrl-C ends it;",
      "everything that was kept is stored."
    },
    footer = {
      "Examples:",
      "  rigmorrow board --demo                                    an invented day",
      "  rigmorrow board floor.yaml shot-list.csv                  begin with dispatch rules",
      "  rigmorrow board floor.yaml shot-list.csv plan.json        begin with that plan",
      "  rigmorrow board                                           go on",
      "  rigmorrow board floor.yaml tuesday.csv --new              put the old one aside",
      "  rigmorrow board --past-days days                          compare scenarios on them"
    })
final class BoardCommand implements Callable<Integer> {
  private static final int LAST_PORT = 65_535;

  @Mixin private BoardOptions which;

  @Option(
      names = "--port",
      paramLabel = "N",
      defaultValue = "8017",
      description = "Port to listen on; 0 for any that is free. Default: ${DEFAULT-VALUE}.")
  private int port;

  @Option(
      names = "--host",
      paramLabel = "HOST",
      defaultValue = ServerSettings.LOOPBACK,
      description = "Address to listen on. Default: this machine only. Others need a token.")
  private String host;

  @Option(
      names = "--token",
      paramLabel = "TOKEN",
      description = "What visitors must bring. Default: none on this machine, else a new one.")
  private @Nullable String token;

  @Mixin private CommonOptions common;

  @Spec private CommandLine.Model.CommandSpec spec;

  private final Session session;

  BoardCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws Exception {
    new Bounds(spec).between("--port", port, 0, LAST_PORT);
    ServerSettings settings = settings();
    DaySource days = which.pastDays(session);
    BoardServer.requireFree(settings);
    try (Desk desk = which.open(session);
        ComparisonDesk comparisons =
            new ComparisonDesk(days, which.comparisons(session), desk.cores(), version());
        BoardServer server =
            BoardServer.start(desk, comparisons, settings, session.clock(), version())) {
      server.warmUp();
      tell(server);
      session.stop().await();
      session.note("the board ends; everything that was kept is stored");
    }
    return ExitCodes.DONE;
  }

  private String version() throws Exception {
    return String.join(" ", spec.root().versionProvider().getVersion());
  }

  private ServerSettings settings() {
    String needed = token != null || ServerSettings.loopback(host) ? token : Tokens.made();
    try {
      return new ServerSettings(host, port, needed);
    } catch (IllegalArgumentException e) {
      throw new CommandLine.ParameterException(spec.commandLine(), "" + e.getMessage());
    }
  }

  private void tell(BoardServer server) {
    if (common.json) {
      session.print(List.of(Json.text(Json.document().put("address", server.address()))));
    } else {
      session.print(List.of(server.address()));
    }
    session.note("the board is at " + server.address() + " until Ctrl-C");
  }
}
