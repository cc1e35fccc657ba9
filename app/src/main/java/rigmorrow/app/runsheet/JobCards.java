package rigmorrow.app.runsheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import rigmorrow.app.report.JobBreaches;
import rigmorrow.app.runsheet.text.ItemText;
import rigmorrow.app.runsheet.text.JobCautions;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.app.runsheet.text.RecipeText;
import rigmorrow.app.runsheet.text.TimeText;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.SetupRequests;

/** The cards of all planned jobs. A card says what changes on the rig, not what stays. */
public final class JobCards {

  private final Batch batch;
  private final Names names;
  private final TimeText times;
  private final JobBreaches breaches;
  private final JobCautions cautions;
  private final KitVisits visits;
  private final Map<PlannedJob, JobCard> cards = new IdentityHashMap<>();

  /**
   * Makes every card.
   *
   * @param breaches which rules the plan breaks
   * @throws IllegalArgumentException when the plan names a rig or a job that the batch does not
   *     have
   */
  public JobCards(Batch batch, Plan plan, Names names, TimeText times, JobBreaches breaches) {
    this.batch = batch;
    this.names = names;
    this.times = times;
    this.breaches = breaches;
    this.cautions = new JobCautions(batch.floor());
    this.visits = new KitVisits(batch.floor(), plan, names, times);
    for (RigPlan rigPlan : plan.rigs()) {
      Rig rig = names.rig(rigPlan.rig());
      Setup setup = rig.initialSetup();
      for (PlannedJob planned : rigPlan.jobs()) {
        Setup request = SetupRequests.of(batch.floor(), names.job(planned.job()));
        cards.put(planned, card(planned, rig, setup, request));
        setup = setup.after(request);
      }
    }
  }

  /** The card of a job of the plan. */
  public JobCard of(PlannedJob planned) {
    return Objects.requireNonNull(cards.get(planned));
  }

  /** What to mind with every job of a rig. */
  public List<String> generalCautions(RigPlan plan) {
    Rig rig = names.rig(plan.rig());
    return plan.jobs().isEmpty()
        ? rig.cautions()
        : cautions.general(names.job(plan.jobs().get(0).job()), rig);
  }

  private JobCard card(PlannedJob planned, Rig rig, Setup before, Setup request) {
    ShotJob job = names.job(planned.job());
    Recipe recipe = recipe(job);
    String note = job.note();
    List<JobCard.Step> steps = planned.steps().stream().map(JobCards::step).toList();
    return new JobCard(
        JobCard.Label.of(job),
        names.pinned(job.id()),
        breaches.of(job.id()),
        ItemText.measures(job.item()),
        steps,
        setTo(steps, before, request),
        planned.kit().stream()
            .filter(use -> steps.stream().noneMatch(step -> fetches(step, use)))
            .map(use -> kit(use, rig))
            .toList(),
        ItemText.loading(job.item()),
        ItemText.unloading(job.item()),
        RecipeText.brief(recipe) + otherwise(recipe, request),
        pictures(recipe, request),
        RecipeText.counts(recipe),
        promise(job, planned),
        times.lateSeconds(job, planned) > 0,
        sampleTimes(job),
        cautions(planned, rig, before, request),
        note == null ? "" : note);
  }

  private List<String> cautions(PlannedJob planned, Rig rig, Setup before, Setup request) {
    Set<String> all =
        new LinkedHashSet<>(cautions.of(names.job(planned.job()), rig, before.after(request)));
    all.addAll(cautions.ofTakenAway(before, request));
    all.addAll(visits.cautions(rig.id(), planned));
    return List.copyOf(all);
  }

  /** When kit is taken off a rig for another one. */
  List<KitVisits.Leaving> kitLeaving(RigPlan plan) {
    return visits.leaving(plan.rig());
  }

  Recipe recipe(ShotJob job) {
    return batch
        .floor()
        .recipe(job.recipe())
        .orElseThrow(() -> new IllegalArgumentException("no recipe " + job.recipe()));
  }

  /** A step may be worded without its attribute or the value it leads to. */
  private String setTo(List<JobCard.Step> steps, Setup before, Setup request) {
    List<String> values = new ArrayList<>();
    for (SetupAttribute attribute : batch.floor().attributes()) {
      String asked = request.value(attribute.id());
      if (asked != null && !asked.equals(before.value(attribute.id()))) {
        String label = attribute.nameOf(asked);
        if (steps.stream().noneMatch(step -> leads(step.text(), attribute.label(), label))) {
          values.add(attribute.label() + ": " + label);
        }
      }
    }
    return String.join("; ", values);
  }

  private static boolean leads(String step, String attribute, String value) {
    return step.startsWith(attribute) && step.contains(" to " + value);
  }

  private static JobCard.Step step(ChangeoverStep step) {
    String time = TimeText.exact(step.attendedSeconds());
    if (step.unattendedSeconds() > 0) {
      time += ", then " + TimeText.exact(step.unattendedSeconds()) + " by itself";
    }
    return new JobCard.Step(step.text(), time, step.people() > 1 ? step.people() + " people" : "");
  }

  /** Whether the step says already which piece to fetch from where. */
  private static boolean fetches(JobCard.Step step, KitUse use) {
    return step.text().contains("(" + use.unit() + ") from ");
  }

  private String kit(KitUse use, Rig rig) {
    String piece = names.kit(use.kit()) + ", " + use.unit();
    return use.from().equals(rig.id())
        ? piece + ": here already"
        : piece + ": fetch from " + names.place(use.from());
  }

  private String promise(ShotJob job, PlannedJob planned) {
    Promise promise = job.promise();
    if (promise == null) {
      return "No promise";
    }
    String due = "Due " + times.local(promise.dueAt()) + (promise.must() ? " (must): " : ": ");
    int late = times.lateSeconds(job, planned);
    if (late > 0) {
      return due + "LATE by " + TimeText.late(late);
    }
    int spare = times.clock().secondsAt(promise.dueAt()) - planned.capture().end();
    return due + "kept, " + TimeText.available(Math.max(0, spare)) + " to spare";
  }

  private List<String> sampleTimes(ShotJob job) {
    List<String> lines = new ArrayList<>();
    if (job.arrivesAt() != null) {
      lines.add("Sample arrives " + times.local(job.arrivesAt()));
    }
    if (job.leavesAt() != null) {
      lines.add("Sample must be off the rig by " + times.local(job.leavesAt()));
    }
    return lines;
  }

  /** What a job has otherwise than its recipe asks for, so that nobody takes that for a mistake. */
  private String otherwise(Recipe recipe, Setup request) {
    Map<String, String> other = new HashMap<>(request.values());
    other
        .entrySet()
        .removeIf(
            asked -> {
              String usual = recipe.setup().value(asked.getKey());
              return usual == null || usual.equals(asked.getValue());
            });
    return other.isEmpty() ? "" : ", here with " + values(new Setup(other));
  }

  private String values(Setup setup) {
    return names.setup(setup).stream()
        .map(fact -> fact.label() + ": " + fact.value())
        .collect(Collectors.joining("; "));
  }

  /** The recipes of some jobs by name, each once, with their pictures. */
  List<Pictures> recipes(RigPlan plan) {
    return plan.jobs().stream()
        .map(job -> recipe(names.job(job.job())))
        .distinct()
        .map(
            recipe ->
                new Pictures(recipe.label(), String.join("; ", pictures(recipe, recipe.setup()))))
        .toList();
  }

  /** Which pictures a recipe takes, and with what; where another setup is asked for, with that. */
  private List<String> pictures(Recipe recipe, Setup request) {
    List<String> lines = new ArrayList<>(RecipeText.pictures(recipe));
    lines.add(RecipeText.light(recipe));
    Map<String, String> asked = new HashMap<>(request.values());
    asked.keySet().retainAll(recipe.setup().values().keySet());
    String values = values(new Setup(asked));
    if (!values.isEmpty()) {
      lines.add(values);
    }
    return lines;
  }

  /** A recipe and its pictures in one line. */
  record Pictures(String recipe, String pictures) {}
}
