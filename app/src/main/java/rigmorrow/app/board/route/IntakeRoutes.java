package rigmorrow.app.board.route;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rigmorrow.app.board.api.Answer;
import rigmorrow.app.board.api.Exchange;
import rigmorrow.app.board.api.Parameter;
import rigmorrow.app.board.api.Refusal;
import rigmorrow.app.board.api.Requests.CellRequest;
import rigmorrow.app.board.api.Requests.CellsRequest;
import rigmorrow.app.board.api.Requests.OptionsRequest;
import rigmorrow.app.board.api.Requests.RevisionRequest;
import rigmorrow.app.board.api.Route;
import rigmorrow.app.board.desk.Desk;
import rigmorrow.app.board.intake.Intake;
import rigmorrow.app.board.intake.IntakeOptions;
import rigmorrow.app.board.intake.IntakeViews;
import rigmorrow.app.board.intake.Intakes;
import rigmorrow.app.board.intake.Reading;
import rigmorrow.app.board.view.BoardView;
import rigmorrow.app.board.view.IntakeView;
import rigmorrow.app.report.Counted;
import rigmorrow.data.InputFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.table.CellEdit;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/** Shot lists that are dropped on the page. The name of a file is shown, never opened. */
public final class IntakeRoutes {
  /** The largest file that is taken. */
  public static final int MOST_FILE_BYTES = 20 * 1024 * 1024;

  private static final Parameter ID = Parameter.path("id", "id of the intake");

  private final Desk desk;
  private final Shown shown;
  private final Clock clock;
  private final Intakes intakes = new Intakes();

  /**
   * @param desk whose floor a list is read for
   * @param shown its plan for the page
   * @param clock tells today
   */
  public IntakeRoutes(Desk desk, Shown shown, Clock clock) {
    this.desk = desk;
    this.shown = shown;
    this.clock = clock;
  }

  /** Every route. */
  public List<Route> all() {
    return List.of(
        new Route(
            Route.Method.POST,
            "/api/intake",
            "Read a shot list and say what is wrong with it.",
            List.of(
                DroppedName.PARAMETER,
                Parameter.query("date", "first day to plan, YYYY-MM-DD"),
                Parameter.query("days", "days to plan, 1 to 31"),
                Parameter.query("delimiter", "comma, semicolon or tab"),
                Parameter.query("decimal", "comma or point"),
                Parameter.query("sheet", "sheet of a workbook")),
            Route.Body.FILE,
            List.of(Answer.of(IntakeView.class, "What it was read as.")),
            this::take),
        Route.post(
                "/api/intake/{id}/cells",
                "Mend cells and read the list again.",
                CellsRequest.class,
                IntakeView.class,
                this::mend)
            .with(ID),
        Route.post(
                "/api/intake/{id}/options",
                "Read the list in another way.",
                OptionsRequest.class,
                IntakeView.class,
                this::readAs)
            .with(ID),
        new Route(
            Route.Method.GET,
            "/api/intake/{id}/annotated",
            "A copy of the file with what is wrong beside its rows.",
            List.of(ID),
            Route.Body.NONE,
            List.of(
                Answer.of("text/csv", "A table as text."),
                Answer.of(
                    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
                    "A workbook.")),
            this::annotated),
        Route.post(
                "/api/intake/{id}/plan",
                "Plan the list in place of the one there is; that can be undone.",
                RevisionRequest.class,
                BoardView.class,
                this::plan)
            .with(ID));
  }

  private void take(Context context) {
    IntakeOptions options =
        accepted(
            () ->
                IntakeOptions.of(
                    context.queryParam("date"),
                    context.queryParam("days"),
                    context.queryParam("delimiter"),
                    context.queryParam("decimal"),
                    context.queryParam("sheet")));
    InputFile file =
        new InputFile(DroppedName.of(context), Exchange.bytes(context, MOST_FILE_BYTES));
    answer(context, Optional.of(intakes.add(file, options, floor(), usual())));
  }

  private void mend(Context context) {
    CellsRequest wish = Exchange.body(context, CellsRequest.class);
    answer(
        context,
        accepted(
            () -> {
              List<CellEdit> edits = new ArrayList<>();
              for (CellRequest cell : wish.cells()) {
                edits.add(new CellEdit(cell.row(), cell.column(), cell.value()));
              }
              return intakes.mend(context.pathParam("id"), edits, floor());
            }));
  }

  private void readAs(Context context) {
    OptionsRequest wish = Exchange.body(context, OptionsRequest.class);
    IntakeOptions options =
        accepted(
            () ->
                IntakeOptions.of(
                    wish.date(),
                    wish.days() == null ? null : String.valueOf(wish.days()),
                    wish.delimiter(),
                    wish.decimal(),
                    wish.sheet()));
    answer(context, intakes.readAs(context.pathParam("id"), options, floor()));
  }

  private void annotated(Context context) throws InputException {
    Intake intake = intake(context);
    String name = intake.file().name();
    if (!InputFile.isTable(name)) {
      throw Refusal.of(422, "Only a table has rows to tell problems beside; mend the file itself.");
    }
    byte[] copy = intake.annotated();
    boolean workbook = InputFile.isWorkbook(name);
    int dot = name.lastIndexOf('.');
    String saved =
        name.substring(0, dot) + "-annotated" + (workbook ? ".xlsx" : name.substring(dot));
    context.header(
        "Content-Disposition",
        "attachment; filename*=UTF-8''"
            + URLEncoder.encode(saved, StandardCharsets.UTF_8).replace("+", "%20"));
    context
        .contentType(
            workbook
                ? "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"
                : "text/csv")
        .result(copy);
  }

  private void plan(Context context) {
    RevisionRequest wish = Exchange.body(context, RevisionRequest.class);
    Intake intake = intake(context);
    ShotList list = intake.reading().shotList();
    if (list == null) {
      throw Refusal.of(
          422,
          "The list has "
              + Counted.of(intake.reading().problems().size(), "problem")
              + "; mend them first.");
    }
    desk.replace(
        wish.revision(),
        new Batch(floor(), list),
        "Plan " + Counted.of(list.jobs().size(), "job") + " of " + intake.file().name());
    Exchange.answer(context, shown.board());
  }

  private Intake intake(Context context) {
    return intakes.find(context.pathParam("id")).orElseThrow(IntakeRoutes::gone);
  }

  private void answer(Context context, Optional<Intake> intake) {
    Exchange.answer(context, IntakeViews.of(intake.orElseThrow(IntakeRoutes::gone), floor()));
  }

  private static Refusal gone() {
    return Refusal.unknown(
        "There is no such list any more; the last " + Intakes.MOST + " are kept. Drop it again.");
  }

  private Floor floor() {
    return desk.now().batch().floor();
  }

  /** The board's own days while they are not over, else tomorrow. */
  private Reading.Usual usual() {
    ShotList list = desk.now().batch().shotList();
    LocalDate today = LocalDate.now(clock.withZone(floor().zone()));
    return list.date().isBefore(today)
        ? new Reading.Usual(today.plusDays(1), 1)
        : new Reading.Usual(list.date(), list.days());
  }

  private static <T> T accepted(Supplier<T> made) {
    try {
      return made.get();
    } catch (IllegalArgumentException e) {
      throw Refusal.malformed("" + e.getMessage());
    }
  }
}
