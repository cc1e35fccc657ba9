package rigmorrow.model.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.JobWork;
import rigmorrow.model.work.SetupRequests;
import rigmorrow.model.work.WorkModel;

/** Finds every reason why a rig cannot take a job. */
public final class FitCheck {
  private final Floor floor;
  private final WorkModel work;

  /**
   * @param floor whose rigs, kit and crew to ask
   */
  public FitCheck(Floor floor) {
    this.floor = floor;
    this.work = new WorkModel(floor);
  }

  /** Asks every rig, in floor order. */
  public JobFit of(ShotJob job) {
    List<String> unmeasured = unmeasured(job.item());
    if (!unmeasured.isEmpty()) {
      return new JobFit(job.id(), unmeasured, job.item().estimated(), List.of());
    }
    List<RigFit> rigs = floor.rigs().stream().map(rig -> of(job, rig)).toList();
    return new JobFit(job.id(), List.of(), job.item().estimated(), rigs);
  }

  /**
   * Asks one rig about a measured job.
   *
   * @throws IllegalArgumentException when the item is not measured
   */
  public RigFit of(ShotJob job, Rig rig) {
    Recipe recipe = floor.recipe(job.recipe()).orElseThrow();
    List<FitReason> reasons = new ArrayList<>();
    reasons.addAll(new ItemFit(rig, recipe, job.item()).reasons());
    reasons.addAll(new EquipmentFit(floor, rig, recipe, job).reasons());
    addSetup(reasons, rig, job.item(), SetupRequests.of(floor, job));
    addHandsOn(reasons, "load", work.loading(job, rig));
    addHandsOn(reasons, "unload", work.unloading(job, rig));
    return new RigFit(rig.id(), reasons);
  }

  private static List<String> unmeasured(Item item) {
    List<String> missing = new ArrayList<>();
    if (item.lengthMm() == null) {
      missing.add("lengthMm");
    }
    if (item.widthMm() == null) {
      missing.add("widthMm");
    }
    if (item.heightMm() == null) {
      missing.add("heightMm");
    }
    if (item.massKg() == null) {
      missing.add("massKg");
    }
    return missing;
  }

  private void addSetup(List<FitReason> reasons, Rig rig, Item item, Setup request) {
    request
        .values()
        .forEach(
            (attribute, value) -> {
              if (!rig.offers(attribute, value)) {
                String offered =
                    String.join(", ", sorted(rig.offers().getOrDefault(attribute, Set.of())));
                reasons.add(
                    new FitReason(FitRule.SETUP_VALUE, attribute + " " + value, offered, 1));
              }
              String finish = item.finish();
              floor
                  .attribute(attribute)
                  .flatMap(known -> known.value(value))
                  .ifPresent(
                      known -> {
                        if (finish != null && known.refusedFinishes().contains(finish)) {
                          reasons.add(
                              new FitReason(
                                  FitRule.FINISH,
                                  "finish " + finish,
                                  attribute + " " + value + " is not for it",
                                  1));
                        }
                      });
            });
  }

  private void addHandsOn(List<FitReason> reasons, String part, JobWork.HandsOn need) {
    int crew = floor.crew().size();
    // The timeline knows steps for one or two people; three hands without a holder are too many.
    int most = Math.min(2, crew);
    if (need.people() > most) {
      reasons.add(
          new FitReason(
              FitRule.CREW,
              need.people() + " people to " + part,
              most + " at a time",
              1.0 - most / (double) need.people()));
    }
    if (floor.crew().stream().map(Operator::skills).noneMatch(s -> s.containsAll(need.skills()))) {
      reasons.add(
          new FitReason(
              FitRule.CREW,
              "skills " + String.join(", ", sorted(need.skills())) + " to " + part,
              "nobody has all",
              1));
    }
  }

  private static List<String> sorted(Set<String> words) {
    return words.stream().sorted().toList();
  }
}
