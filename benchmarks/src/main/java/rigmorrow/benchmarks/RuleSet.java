package rigmorrow.benchmarks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.floor.Equipment;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/** The demo day with some of the timeline's rules taken out of force. */
public enum RuleSet {
  /** Everything. */
  FULL(false, false),
  /** Kit is fitted on every rig that takes it, and every job has a sample of its own. */
  NO_SHARING(true, false),
  /** Everybody can do everything and takes no break. */
  EASY_CREW(false, true),
  /** Both. */
  PLAIN(true, true);

  private static final LocalDate DATE = LocalDate.of(2026, 3, 18);

  private final boolean nothingShared;
  private final boolean easyCrew;

  RuleSet(boolean nothingShared, boolean easyCrew) {
    this.nothingShared = nothingShared;
    this.easyCrew = easyCrew;
  }

  /** The demo day of so many jobs, seed 1, under these rules. */
  public Batch batch(int jobs) {
    Batch demo = Demo.batch(jobs, 1, DATE);
    Floor floor = demo.floor();
    ShotList list = demo.shotList();
    if (nothingShared) {
      List<Kit> kits = floor.kits();
      floor = floor.withRigs(floor.rigs().stream().map(rig -> fitted(rig, kits)).toList());
      list = list.withJobs(list.jobs().stream().map(job -> job.withSample(job.id())).toList());
    }
    return new Batch(easyCrew ? withCrew(floor) : floor, list);
  }

  private static Rig fitted(Rig rig, List<Kit> kits) {
    List<Equipment> fitted = new ArrayList<>(rig.fitted());
    for (Kit kit : kits) {
      if (rig.takesKit().contains(kit.id())) {
        fitted.add(kit.provides());
      }
    }
    return rig.withFitted(fitted);
  }

  private static Floor withCrew(Floor floor) {
    Set<String> skills = new HashSet<>();
    floor.crew().forEach(one -> skills.addAll(one.skills()));
    return floor.withCrew(
        floor.crew().stream()
            .map(
                one ->
                    new Operator(
                        one.id(), one.name(), skills, one.shifts(), List.of(), one.closed()))
            .toList());
  }
}
