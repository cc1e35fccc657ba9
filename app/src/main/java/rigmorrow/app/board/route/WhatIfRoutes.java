package rigmorrow.app.board.route;

import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.board.api.Answer;
import rigmorrow.app.board.api.Exchange;
import rigmorrow.app.board.api.Parameter;
import rigmorrow.app.board.api.Refusal;
import rigmorrow.app.board.api.Requests.CompareRequest;
import rigmorrow.app.board.api.Requests.NothingRequest;
import rigmorrow.app.board.api.Requests.PurchaseRequest;
import rigmorrow.app.board.api.Requests.ScenarioNameRequest;
import rigmorrow.app.board.api.Requests.ScenarioRequest;
import rigmorrow.app.board.api.Route;
import rigmorrow.app.board.view.ReportView;
import rigmorrow.app.board.view.WhatIfView;
import rigmorrow.app.board.view.WhatIfView.ComparisonView;
import rigmorrow.app.board.view.WhatIfView.EstimateView;
import rigmorrow.app.board.whatif.ComparisonDesk;
import rigmorrow.app.board.whatif.ComparisonRun;
import rigmorrow.app.board.whatif.ReportViews;
import rigmorrow.app.board.whatif.WhatIfViews;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.app.whatif.page.AskedBy;
import rigmorrow.app.whatif.page.ReportFolder.Report;
import rigmorrow.data.InputFile;
import rigmorrow.data.problem.InputException;
import rigmorrow.model.money.Investment;

/** Scenarios: choose them, compare them over past days, see what comes of it. */
public final class WhatIfRoutes {
  /** The largest scenario file that is taken. */
  public static final int MOST_FILE_BYTES = 1_000_000;

  private static final int BEGUN = 202;
  private static final String YAML = "application/yaml";

  private final ComparisonDesk comparisons;
  private final int cores = Runtime.getRuntime().availableProcessors();

  /**
   * @param comparisons what the board compares
   */
  public WhatIfRoutes(ComparisonDesk comparisons) {
    this.comparisons = comparisons;
  }

  /** Every route. */
  public List<Route> all() {
    return Stream.concat(choosing(), comparing()).toList();
  }

  private Stream<Route> choosing() {
    return Stream.of(
        Route.get(
            "/api/whatif",
            "Which scenarios are compared on which days, and how far that is.",
            WhatIfView.class,
            this::look),
        new Route(
            Route.Method.POST,
            "/api/whatif/scenarios",
            "Take a scenario file, or say what is wrong with it.",
            List.of(DroppedName.PARAMETER),
            Route.Body.FILE,
            List.of(Answer.of(WhatIfView.class, "What there is now.")),
            this::bring),
        new Route(
            Route.Method.GET,
            "/api/whatif/scenarios.yaml",
            "The scenarios as a file that the command whatif reads.",
            List.of(),
            Route.Body.NONE,
            List.of(Answer.of(YAML, "The file.")),
            this::file),
        Route.post(
            "/api/whatif/scenarios/add",
            "Compare a usual change besides, or say why that cannot be.",
            ScenarioRequest.class,
            WhatIfView.class,
            this::add),
        Route.post(
            "/api/whatif/scenarios/remove",
            "Compare a scenario no longer.",
            ScenarioNameRequest.class,
            WhatIfView.class,
            this::remove));
  }

  private Stream<Route> comparing() {
    String names =
        Stream.of(Report.values()).map(Report::fileName).collect(Collectors.joining(", "));
    return Stream.of(
        Route.post(
            "/api/whatif/estimate",
            "How many plans a comparison takes, and how long.",
            CompareRequest.class,
            EstimateView.class,
            this::estimate),
        Route.post(
                "/api/whatif/compare",
                "Compare the scenarios, or go on with the same comparison.",
                CompareRequest.class,
                ComparisonView.class,
                this::compare)
            .answering(Answer.begun(ComparisonView.class, "The comparison has begun.")),
        Route.post(
            "/api/whatif/stop",
            "End the comparison; what is finished is kept.",
            NothingRequest.class,
            ComparisonView.class,
            this::stop),
        Route.get(
            "/api/whatif/report",
            "What came of the comparison so far.",
            ReportView.class,
            this::report),
        new Route(
            Route.Method.GET,
            "/api/whatif/report/{name}",
            "The same as a file.",
            List.of(Parameter.path("name", "one of " + names)),
            Route.Body.NONE,
            Stream.of(Report.values())
                .map(report -> Answer.of(report.contentType(), "The file."))
                .toList(),
            this::download));
  }

  private void look(Context context) {
    Exchange.answer(context, WhatIfViews.of(comparisons.look(), null));
  }

  /** Makes a change; what is wrong with it goes into the answer, as with a file. */
  private void choose(Context context, String what, Choice choice) {
    WhatIfView.RefusedView refused = null;
    try {
      accepted(
          () -> {
            choice.make();
            return what;
          });
    } catch (InputException e) {
      refused = WhatIfViews.refused(what, e.problems());
    }
    Exchange.answer(context, WhatIfViews.of(comparisons.look(), refused));
  }

  /** A change of the scenarios. */
  @FunctionalInterface
  private interface Choice {
    void make() throws InputException;
  }

  private void bring(Context context) {
    String name = DroppedName.of(context);
    InputFile file = new InputFile(name, Exchange.bytes(context, MOST_FILE_BYTES));
    choose(context, name, () -> comparisons.bring(file));
  }

  private void add(Context context) {
    ScenarioRequest wish = Exchange.body(context, ScenarioRequest.class);
    choose(
        context,
        "The change",
        () -> comparisons.add(wish.number(), wish.change(), purchase(wish.purchase())));
  }

  private void remove(Context context) {
    ScenarioNameRequest wish = Exchange.body(context, ScenarioNameRequest.class);
    choose(context, wish.name(), () -> comparisons.remove(wish.number(), wish.name()));
  }

  private void file(Context context) {
    String text =
        comparisons
            .text()
            .orElseThrow(() -> Refusal.unknown("There are no scenarios yet; choose some."));
    context.header("Content-Disposition", "attachment; filename=\"scenarios.yaml\"");
    context.contentType(YAML).result(text.getBytes(StandardCharsets.UTF_8));
  }

  private void estimate(Context context) throws InputException {
    CompareRequest wish = Exchange.body(context, CompareRequest.class);
    Exchange.answer(
        context,
        accepted(() -> WhatIfViews.estimate(comparisons.estimate(wish.number(), settings(wish)))));
  }

  private void compare(Context context) throws InputException {
    CompareRequest wish = Exchange.body(context, CompareRequest.class);
    Exchange.answer(
        context,
        BEGUN,
        accepted(
            () -> {
              comparisons.begin(wish.number(), settings(wish));
              return progress();
            }));
  }

  private void stop(Context context) {
    Exchange.body(context, NothingRequest.class);
    comparisons.stop();
    Exchange.answer(context, progress());
  }

  private ComparisonView progress() {
    return WhatIfViews.comparison(comparisons.change(), comparisons.progress());
  }

  private void report(Context context) {
    ComparisonRun run = comparisons.latest().orElseThrow(WhatIfRoutes::nothing);
    Exchange.answer(context, ReportViews.of(run.report(), run.progress().done()));
  }

  private void download(Context context) {
    Report report =
        Report.of(context.pathParam("name"))
            .orElseThrow(() -> Refusal.unknown("There is no such report."));
    ComparisonRun run =
        comparisons.latest().filter(ComparisonRun::tells).orElseThrow(WhatIfRoutes::nothing);
    byte[] bytes = report.made(run.compared(), AskedBy.BOARD).bytes();
    String how = report == Report.HTML ? "inline" : "attachment";
    context.header("Content-Disposition", how + "; filename=\"whatif-" + report.fileName() + "\"");
    context.header("Content-Security-Policy", HandOutRoutes.DOCUMENT_POLICY);
    boolean text = report.contentType().startsWith("text/");
    context.contentType(report.contentType() + (text ? "; charset=utf-8" : "")).result(bytes);
  }

  private static Refusal nothing() {
    return Refusal.unknown("Nothing can be told yet: no scenario was planned on any day.");
  }

  private RunSettings settings(CompareRequest wish) {
    Integer seconds = wish.seconds();
    Long steps = wish.steps();
    if ((seconds == null) == (steps == null)) {
      throw new IllegalArgumentException("seconds and steps: accepted: one of them");
    }
    return new RunSettings(
        seconds == null ? null : Duration.ofSeconds(seconds),
        steps == null ? 0 : steps,
        wish.seeds(),
        cores,
        wish.demand(),
        wish.again(),
        wish.oneMore());
  }

  private static @Nullable Investment purchase(@Nullable PurchaseRequest wish) {
    return wish == null
        ? null
        : new Investment(
            wish.price(), wish.lifeYears(), wish.interestPercent(), wish.runningPerYear());
  }

  /** Something that may be refused for what is wrong with the days. */
  @FunctionalInterface
  private interface Work<T> {
    T done() throws InputException;
  }

  private static <T> T accepted(Work<T> work) throws InputException {
    try {
      return work.done();
    } catch (IllegalArgumentException e) {
      throw Refusal.malformed("" + e.getMessage());
    }
  }
}
