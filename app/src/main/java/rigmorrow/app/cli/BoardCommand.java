package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.server.BoardServer;
import rigmorrow.app.board.server.ServerSettings;
import rigmorrow.app.board.server.Tokens;
import rigmorrow.app.cli.options.Bounds;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.PlannedBatch;
import rigmorrow.app.files.ShotListSource;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.demo.Demo;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.shot.Batch;

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
      "  rigmorrow board floor.yaml tuesday.csv --new              put the old one aside"
    })
final class BoardCommand implements Callable<Integer> {
  private static final int LAST_PORT = 65_535;
  private static final int DEMO_JOBS = 150;

  @Parameters(
      index = "0",
      arity = "0..1",
      paramLabel = "FLOOR",
      description = "Floor file, YAML or JSON.")
  private @Nullable Path floor;

  @Parameters(
      index = "1",
      arity = "0..1",
      paramLabel = "SHOTLIST",
      description = "Shot list: XLSX, CSV, JSON or YAML.")
  private @Nullable Path shotList;

  @Parameters(
      index = "2",
      arity = "0..1",
      paramLabel = "PLAN",
      description = "Plan to begin with. Default: one by dispatch rules.")
  private @Nullable Path plan;

  @Option(names = "--demo", description = "Begin with an invented day of 150 jobs on 6 rigs.")
  private boolean demo;

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      defaultValue = "out/board",
      description = "Folder that holds the board. Default: ${DEFAULT-VALUE}.")
  private Path folder;

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

  @Mixin private ReadingOptions reading;

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
    try (Desk desk = desk();
        BoardServer server = BoardServer.start(desk, settings, session.clock(), version())) {
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

  private Desk desk() throws IOException, InputException {
    Path at = session.folder().resolve(folder);
    if (demo) {
      return Desk.open(at, demoBatch(), null, session.clock());
    }
    if (floor == null || shotList == null) {
      return Desk.open(at, null, null, session.clock());
    }
    ShotListSource source = reading.source(floor, shotList);
    if (plan == null) {
      return Desk.open(at, new Inputs(session).batch(source, null), null, session.clock());
    }
    PlannedBatch planned = new Inputs(session).planned(source, plan);
    return Desk.open(at, planned.batch(), planned.plan(), session.clock());
  }

  private Batch demoBatch() {
    return Demo.batch(DEMO_JOBS, 1, LocalDate.now(session.clock()).plusDays(1));
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
