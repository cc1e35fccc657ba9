package rigmorrow.app.board.make;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rigmorrow.app.board.view.BoardView.KitView;
import rigmorrow.app.board.view.BoardView.SampleView;
import rigmorrow.app.board.view.BoardView.UnitView;
import rigmorrow.app.board.view.BoardView.UseView;
import rigmorrow.app.runsheet.text.Names;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.plan.KitUse;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.plan.RigPlan;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotJob;

/** What jobs share, kit and samples, and who has it when, for the page. */
final class Shared {
  private final Batch batch;
  private final Map<String, List<UseView>> byUnit = new HashMap<>();
  private final Map<String, List<UseView>> bySample = new HashMap<>();

  Shared(Batch batch, Plan plan) {
    this.batch = batch;
    Names names = new Names(batch);
    for (RigPlan rig : plan.rigs()) {
      for (PlannedJob job : rig.jobs()) {
        for (KitUse use : job.kit()) {
          add(byUnit, use.unit(), use(rig, job, names.place(use.from())));
        }
        add(bySample, names.job(job.job()).sample(), use(rig, job, ""));
      }
    }
    byUnit.values().forEach(Shared::sort);
    bySample.values().forEach(Shared::sort);
  }

  /** Every kind of kit, in floor order. */
  List<KitView> kits() {
    return batch.floor().kits().stream().map(this::kit).toList();
  }

  /** Samples that more than one job needs, in shot list order. */
  List<SampleView> samples() {
    Map<String, Integer> jobs = new LinkedHashMap<>();
    for (ShotJob job : batch.shotList().jobs()) {
      jobs.merge(job.sample(), 1, Integer::sum);
    }
    return jobs.entrySet().stream()
        .filter(entry -> entry.getValue() > 1)
        .map(Map.Entry::getKey)
        .map(sample -> new SampleView(sample, bySample.getOrDefault(sample, List.of())))
        .toList();
  }

  private KitView kit(Kit kit) {
    List<UnitView> units = new ArrayList<>();
    for (KitUnit unit : kit.units()) {
      units.add(new UnitView(unit.id(), byUnit.getOrDefault(unit.id(), List.of())));
    }
    return new KitView(kit.id(), kit.label(), units);
  }

  private static UseView use(RigPlan rig, PlannedJob job, String from) {
    return new UseView(job.job(), rig.rig(), job.whole().start(), job.whole().end(), from);
  }

  private static void add(Map<String, List<UseView>> uses, String key, UseView use) {
    uses.computeIfAbsent(key, any -> new ArrayList<>()).add(use);
  }

  private static void sort(List<UseView> uses) {
    uses.sort(Comparator.comparingInt(UseView::start));
  }
}
