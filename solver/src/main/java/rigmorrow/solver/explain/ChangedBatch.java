package rigmorrow.solver.explain;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.explain.Change;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.PlateRing;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;
import rigmorrow.model.time.PlanClock;

/** Makes the batch in which one thing is otherwise. */
final class ChangedBatch {
  private final Batch batch;
  private final String job;

  /**
   * @param batch as it is
   * @param job id of the job that is asked about
   */
  ChangedBatch(Batch batch, String job) {
    this.batch = batch;
    this.job = job;
  }

  /** The changed batch; the batch itself where the change is one of orders or of setups. */
  Batch with(Change change) {
    Floor floor = batch.floor();
    return switch (change.kind()) {
      case SAMPLE_THERE -> job(one -> times(one, null, one.leavesAt(), one.promise()));
      case SAMPLE_NOT_SHARED -> job(one -> one.withSample(newName(one.sample())));
      case PROMISE_LATER -> job(one -> promiseLater(one, change.seconds()));
      case COLLECTION_LATER -> job(one -> leavesLater(one, change.seconds()));
      case START_NOT_PINNED ->
          pin(pin -> new Pin(pin.job(), pin.rig(), pin.place(), null, pin.state()));
      case NOT_PINNED -> pin(pin -> null);
      case ONE_MORE_OPERATOR -> floor(moreCrew(floor));
      case ONE_MORE_KIT -> floor(withKits(floor, moreKit(floor, change.subject())));
      case RIG_NOT_CLOSED -> floor(notClosed(floor, change.subject()));
      case LONGER_HOURS -> floor(longer(floor, change.seconds()));
      case NO_SETUP, WITHOUT_JOB, FIRST_ON_RIG, ALONE, INSTEAD_OF -> batch;
    };
  }

  /** The batch in which the job's promise is no must, and one in which it never leaves. */
  Batch forgiving(Change.Kind kind) {
    return kind == Change.Kind.PROMISE_LATER
        ? job(one -> times(one, one.arrivesAt(), one.leavesAt(), null))
        : job(one -> times(one, one.arrivesAt(), null, one.promise()));
  }

  private Batch floor(Floor floor) {
    return new Batch(floor, batch.shotList());
  }

  private Batch job(UnaryOperator<ShotJob> change) {
    return new Batch(batch.floor(), batch.shotList().withJob(job, change));
  }

  private Batch pin(java.util.function.Function<Pin, @Nullable Pin> change) {
    ShotList list = batch.shotList();
    List<Pin> pins = new ArrayList<>();
    for (Pin pin : list.pins()) {
      Pin changed = pin.job().equals(job) ? change.apply(pin) : pin;
      if (changed != null) {
        pins.add(changed);
      }
    }
    return new Batch(batch.floor(), list.withPins(pins));
  }

  private static ShotJob times(
      ShotJob one,
      @Nullable LocalDateTime arrivesAt,
      @Nullable LocalDateTime leavesAt,
      @Nullable Promise promise) {
    return new ShotJob(
        one.id(),
        one.article(),
        one.gtin(),
        one.name(),
        one.sample(),
        one.recipe(),
        one.item(),
        one.setup(),
        arrivesAt,
        leavesAt,
        promise,
        one.weight(),
        one.note());
  }

  private ShotJob promiseLater(ShotJob one, int seconds) {
    Promise promise = one.promise();
    return promise == null
        ? one
        : times(
            one,
            one.arrivesAt(),
            one.leavesAt(),
            new Promise(later(promise.dueAt(), seconds), promise.must()));
  }

  private ShotJob leavesLater(ShotJob one, int seconds) {
    LocalDateTime leaves = one.leavesAt();
    return leaves == null
        ? one
        : times(one, one.arrivesAt(), later(leaves, seconds), one.promise());
  }

  private LocalDateTime later(LocalDateTime time, int seconds) {
    PlanClock clock = PlanClock.of(batch);
    return clock.at(clock.secondsAt(time) + seconds).toLocalDateTime();
  }

  private String newName(String sample) {
    Set<String> taken = new HashSet<>();
    batch.shotList().jobs().forEach(one -> taken.add(one.sample()));
    String name = sample;
    while (taken.contains(name)) {
      name += "'";
    }
    return name;
  }

  /** Every skill that anybody has or anything asks for. */
  private static Floor moreCrew(Floor floor) {
    Set<String> skills = new HashSet<>();
    floor.crew().forEach(one -> skills.addAll(one.skills()));
    floor.changeovers().forEach(rule -> skills.addAll(rule.skills()));
    floor.kits().forEach(kit -> skills.addAll(kit.skills()));
    floor.recipes().forEach(recipe -> skills.addAll(recipe.skills()));
    for (Rig rig : floor.rigs()) {
      PlateRing ring = rig.ring();
      skills.addAll(ring == null ? Set.of() : ring.skills());
    }
    skills.addAll(floor.handling().loadSkills());
    skills.addAll(floor.handling().hangSkills());
    skills.addAll(floor.handling().powerSkills());
    String id = "one more";
    while (floor.operator(id).isPresent()) {
      id += "'";
    }
    OpenHours always = new OpenHours(Set.of(), LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);
    List<Operator> crew = new ArrayList<>(floor.crew());
    crew.add(new Operator(id, id, skills, List.of(always), List.of(), List.of()));
    return floor.withCrew(crew);
  }

  private static List<Kit> moreKit(Floor floor, String id) {
    Set<String> taken = new HashSet<>();
    floor.kits().forEach(kit -> kit.units().forEach(unit -> taken.add(unit.id())));
    return floor.kits().stream().map(kit -> kit.id().equals(id) ? more(kit, taken) : kit).toList();
  }

  private static Kit more(Kit kit, Set<String> taken) {
    String id = kit.units().get(0).id();
    while (taken.contains(id)) {
      id += "'";
    }
    List<KitUnit> units = new ArrayList<>(kit.units());
    units.add(new KitUnit(id, kit.units().get(0).place()));
    return new Kit(
        kit.id(),
        kit.label(),
        kit.provides(),
        units,
        kit.alignSeconds(),
        kit.people(),
        kit.skills(),
        kit.caution());
  }

  private static Floor withKits(Floor floor, List<Kit> kits) {
    return new Floor(
        floor.name(),
        floor.zone(),
        floor.rigs(),
        kits,
        floor.fetches(),
        floor.crew(),
        floor.attributes(),
        floor.changeovers(),
        floor.recipes(),
        floor.itemSetups(),
        floor.handling(),
        floor.physics(),
        floor.weights(),
        floor.costs());
  }

  private static Floor notClosed(Floor floor, String id) {
    return floor.withRigs(
        floor.rigs().stream()
            .map(rig -> rig.id().equals(id) ? rig.withClosed(List.of()) : rig)
            .toList());
  }

  private static Floor longer(Floor floor, int seconds) {
    List<Rig> rigs = floor.rigs().stream().map(rig -> LongerHours.of(rig, seconds)).toList();
    List<Operator> crew =
        floor.crew().stream()
            .map(
                one ->
                    new Operator(
                        one.id(),
                        one.name(),
                        one.skills(),
                        LongerHours.of(one.shifts(), seconds),
                        one.breaks(),
                        one.closed()))
            .toList();
    return floor.withRigs(rigs).withCrew(crew);
  }
}
