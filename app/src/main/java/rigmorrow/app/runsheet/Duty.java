package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import rigmorrow.app.runsheet.chart.LaneKind;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.time.Span;

/**
 * An attended part of a job, whoever does it.
 *
 * @param kind changeover, load, capture or unload
 * @param rig id of the rig
 */
public record Duty(LaneKind kind, Attended attended, String rig, JobCard card) {

  /** All of a plan in order of time. */
  public static List<Duty> of(Plan plan, JobCards cards) {
    List<Duty> duties = new ArrayList<>();
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        add(duties, job, rig.rig(), cards.of(job));
      }
    }
    duties.sort(
        Comparator.<Duty>comparingInt(duty -> duty.span().start())
            .thenComparingInt(duty -> duty.span().end()));
    return duties;
  }

  private static void add(List<Duty> duties, PlannedJob job, String rig, JobCard card) {
    Attended changeover = job.changeover();
    if (changeover != null) {
      duties.add(new Duty(LaneKind.CHANGEOVER, changeover, rig, card));
    }
    duties.add(new Duty(LaneKind.LOAD, job.load(), rig, card));
    if (!job.captureOperators().isEmpty()) {
      Attended capture = new Attended(job.capture(), job.captureOperators());
      duties.add(new Duty(LaneKind.CAPTURE, capture, rig, card));
    }
    duties.add(new Duty(LaneKind.UNLOAD, job.unload(), rig, card));
  }

  /** When. */
  public Span span() {
    return attended.span();
  }

  /** Whether both are of the same job on the same rig. */
  boolean sameJob(Duty other) {
    return rig.equals(other.rig) && card.label().equals(other.card.label());
  }

  /** What it is called for the one who does it. */
  public String what() {
    return kind == LaneKind.CAPTURE ? "Stay during capture" : kind.label();
  }

  /** The steps of a changeover; empty for another part. */
  public List<JobCard.Step> steps() {
    return kind == LaneKind.CHANGEOVER ? card.steps() : List.of();
  }

  /** What to do besides the steps. */
  public List<String> how() {
    return switch (kind) {
      case CHANGEOVER -> {
        List<String> lines = new ArrayList<>();
        card.kit().forEach(kit -> lines.add(kit + "."));
        if (!card.setTo().isEmpty()) {
          lines.add("Set to " + card.setTo() + ".");
        }
        yield lines;
      }
      case LOAD -> card.loading();
      case CAPTURE -> card.pictures().stream().map(line -> line + ".").toList();
      default -> {
        List<String> lines = new ArrayList<>(card.unloading());
        lines.add(0, "Check: " + card.counts() + ".");
        yield lines;
      }
    };
  }
}
