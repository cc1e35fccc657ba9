package rigmorrow.app.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.fit.FitReason;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.fit.RigFit;
import rigmorrow.model.lifting.LiftAdvice;
import rigmorrow.model.plan.Breach;
import rigmorrow.model.setup.Changeover;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.TimeTerm;

/**
 * The documents that {@code --json} prints. Names are added as the program grows, never renamed or
 * taken away under one version number.
 */
public final class Json {
  /** Stands first in every document. */
  public static final int VERSION = 1;

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private Json() {}

  /** The document as text, without a line break at its end. */
  public static String text(ObjectNode document) {
    try {
      return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(document);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a document of plain nodes cannot be written", e);
    }
  }

  /** A document with nothing but its version. */
  public static ObjectNode document() {
    return NODES.objectNode().put("version", VERSION);
  }

  /** A node with nothing in it, to be put into a document. */
  static ObjectNode node() {
    return NODES.objectNode();
  }

  /** What went wrong. */
  public static ObjectNode error(int exitCode, String message, List<InputProblem> problems) {
    ObjectNode document = document();
    ObjectNode error = document.putObject("error").put("exitCode", exitCode);
    error.put("message", message);
    ArrayNode list = error.putArray("problems");
    for (InputProblem problem : problems) {
      list.addObject()
          .put("file", problem.file())
          .put("where", problem.where())
          .put("field", problem.field())
          .put("value", problem.value())
          .put("accepted", problem.accepted());
    }
    return document;
  }

  /** The answers of the fit check. */
  public static ObjectNode fit(List<JobFit> fits) {
    ObjectNode document = document();
    ArrayNode jobs = document.putArray("jobs");
    for (JobFit fit : fits) {
      ObjectNode job = jobs.addObject().put("job", fit.job());
      job.put("fitsSomewhere", fit.fitsSomewhere()).put("estimated", fit.estimated());
      strings(job.putArray("unmeasured"), fit.unmeasured());
      job.put("nearestMiss", fit.nearestMiss().map(RigFit::rig).orElse(null));
      ArrayNode rigs = job.putArray("rigs");
      for (RigFit rig : fit.rigs()) {
        ObjectNode node = rigs.addObject().put("rig", rig.rig()).put("fits", rig.fits());
        reasons(node.putArray("reasons"), rig.reasons());
      }
    }
    return document;
  }

  /** How the time of one job on one rig is made up. */
  public static ObjectNode times(JobOnRig answer) {
    JobWork work = answer.work();
    ObjectNode document = document().put("job", work.job()).put("rig", work.rig());
    document.put("fits", answer.fit().fits()).put("estimated", answer.job().item().estimated());
    reasons(document.putArray("reasons"), answer.fit().reasons());
    handsOn(document.putObject("load"), work.load());
    document
        .putObject("capture")
        .put("seconds", work.captureSeconds())
        .put("attended", work.attendedCapture())
        .put("turns", work.turns());
    handsOn(document.putObject("unload"), work.unload());
    ArrayNode terms = document.putArray("terms");
    for (TimeTerm term : work.terms()) {
      terms
          .addObject()
          .put("part", term.part())
          .put("label", term.label())
          .put("seconds", term.seconds())
          .put("figures", term.figures());
    }
    ObjectNode request = document.putObject("setup");
    work.request().values().forEach(request::put);
    strings(document.putArray("kit"), work.kits());
    document.set("changeover", changeover(answer.changeover()));
    document.set("lift", lift(answer.lift()));
    strings(document.putArray("cautions"), work.cautions());
    return document;
  }

  /** The rules that a plan breaks. */
  public static ObjectNode breaches(List<Breach> breaches) {
    ObjectNode document = document().put("keepsTheRules", breaches.isEmpty());
    breaches(document.putArray("breaches"), breaches);
    return document;
  }

  /** Broken rules, into a list. */
  public static void breaches(ArrayNode list, List<Breach> breaches) {
    for (Breach breach : breaches) {
      list.addObject()
          .put("rule", breach.rule().name())
          .put("where", breach.where())
          .put("amount", breach.amount())
          .put("sentence", breach.sentence());
    }
  }

  private static @Nullable ObjectNode changeover(@Nullable Changeover changeover) {
    if (changeover == null) {
      return null;
    }
    ObjectNode node = NODES.objectNode().put("attendedSeconds", changeover.attendedSeconds());
    node.put("unattendedSeconds", changeover.tailSeconds()).put("people", changeover.people());
    ArrayNode steps = node.putArray("steps");
    for (ChangeoverStep step : changeover.steps()) {
      ObjectNode one = steps.addObject().put("text", step.text());
      one.put("attendedSeconds", step.attendedSeconds());
      one.put("unattendedSeconds", step.unattendedSeconds()).put("people", step.people());
      strings(one.putArray("skills"), step.skills().stream().sorted().toList());
    }
    return node;
  }

  private static @Nullable ObjectNode lift(@Nullable LiftAdvice advice) {
    if (advice == null) {
      return null;
    }
    ObjectNode node = NODES.objectNode().put("crew", advice.crew().name());
    node.put("loadKg", advice.onePerson().loadKg());
    node.put("limitKg", advice.onePerson().recommendedWeightLimitKg());
    node.put("index", finite(advice.onePerson().liftingIndex()));
    node.put("teamFactor", advice.teamFactor()).put("teamIndex", finite(advice.teamIndex()));
    return node;
  }

  private static @Nullable Double finite(double value) {
    return Double.isFinite(value) ? value : null; // JSON knows no infinity
  }

  private static void handsOn(ObjectNode node, JobWork.HandsOn handsOn) {
    node.put("seconds", handsOn.seconds()).put("people", handsOn.people());
    strings(node.putArray("skills"), handsOn.skills().stream().sorted().toList());
  }

  /** Reasons why a rig cannot take a job, into a list. */
  public static void reasons(ArrayNode list, List<FitReason> reasons) {
    for (FitReason reason : reasons) {
      list.addObject()
          .put("rule", reason.rule().name())
          .put("needed", reason.needed())
          .put("offered", reason.offered())
          .put("shortfall", reason.shortfall());
    }
  }

  /** Words, into a list. */
  public static void strings(ArrayNode list, Collection<String> words) {
    words.forEach(list::add);
  }
}
