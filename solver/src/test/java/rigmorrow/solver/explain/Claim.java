package rigmorrow.solver.explain;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.FloorBuilder;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.explain.Change;
import rigmorrow.model.floor.FetchTime;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** Makes a change come true in a batch, by what its words say and with no code of the explainer. */
final class Claim {
  private final Batch batch;
  private final ShotJob job;

  Claim(Batch batch, String job) {
    this.batch = batch;
    this.job =
        batch.shotList().jobs().stream().filter(one -> one.id().equals(job)).findFirst().get();
  }

  Batch of(Change change) {
    Floor floor = batch.floor();
    switch (change.kind()) {
      case SAMPLE_THERE:
        return job(with(job.sample(), null, job.leavesAt(), job.promise()));
      case SAMPLE_NOT_SHARED:
        return job(with("mine alone", job.arrivesAt(), job.leavesAt(), job.promise()));
      case PROMISE_LATER:
        Promise promise = job.promise();
        Promise later = new Promise(later(promise.dueAt(), change.seconds()), promise.must());
        return job(with(job.sample(), job.arrivesAt(), job.leavesAt(), later));
      case COLLECTION_LATER:
        LocalDateTime leaves = later(job.leavesAt(), change.seconds());
        return job(with(job.sample(), job.arrivesAt(), leaves, job.promise()));
      case START_NOT_PINNED:
        return pins(pin -> new Pin(pin.job(), pin.rig(), pin.place(), null, pin.state()));
      case NOT_PINNED:
        return pins(pin -> null);
      case NO_SETUP:
        return withoutSetup();
      case ONE_MORE_OPERATOR:
        List<Operator> crew = new ArrayList<>(floor.crew());
        crew.add(everything(floor));
        return on(builder(floor).crew(crew.toArray(Operator[]::new)));
      case ONE_MORE_KIT:
        Kit[] kits =
            floor.kits().stream()
                .map(kit -> kit.id().equals(change.subject()) ? more(kit) : kit)
                .toArray(Kit[]::new);
        return on(builder(floor).kits(kits));
      case RIG_NOT_CLOSED:
        return on(
            builder(floor)
                .rigs(
                    floor.rigs().stream()
                        .map(
                            rig ->
                                rig.id().equals(change.subject()) ? rig.withClosed(List.of()) : rig)
                        .toArray(Rig[]::new)));
      case LONGER_HOURS:
        return longer(floor, change.seconds() / 60);
      default:
        return batch;
    }
  }

  private Batch job(ShotJob changed) {
    ShotList list = batch.shotList();
    List<ShotJob> jobs =
        list.jobs().stream().map(one -> one.id().equals(job.id()) ? changed : one).toList();
    return new Batch(batch.floor(), new ShotList(list.date(), list.days(), jobs, list.pins()));
  }

  private ShotJob with(
      String sample,
      @Nullable LocalDateTime arrives,
      @Nullable LocalDateTime leaves,
      @Nullable Promise promise) {
    return new ShotJob(
        job.id(),
        job.article(),
        job.gtin(),
        job.name(),
        sample,
        job.recipe(),
        job.item(),
        job.setup(),
        arrives,
        leaves,
        promise,
        job.weight(),
        job.note());
  }

  private LocalDateTime later(LocalDateTime time, int seconds) {
    return time.atZone(batch.floor().zone()).plusSeconds(seconds).toLocalDateTime();
  }

  private Batch pins(UnaryOperator<Pin> change) {
    ShotList list = batch.shotList();
    List<Pin> pins = new ArrayList<>();
    for (Pin pin : list.pins()) {
      Pin changed = pin.job().equals(job.id()) ? change.apply(pin) : pin;
      if (changed != null) {
        pins.add(changed);
      }
    }
    return new Batch(batch.floor(), new ShotList(list.date(), list.days(), list.jobs(), pins));
  }

  /** Its recipe's setup goes over to all other jobs of the recipe. */
  private Batch withoutSetup() {
    Floor floor = batch.floor();
    Recipe recipe = floor.recipe(job.recipe()).orElseThrow();
    Recipe bare =
        new Recipe(
            recipe.id(),
            recipe.label(),
            recipe.rows(),
            recipe.stills(),
            recipe.exposureSeconds(),
            recipe.focusBrackets(),
            recipe.lighting(),
            Setup.ANY,
            recipe.equipment(),
            recipe.skills(),
            recipe.attended(),
            recipe.backgroundMarginMm(),
            recipe.measuredCaptureSeconds());
    Recipe[] recipes =
        floor.recipes().stream()
            .map(one -> one.id().equals(bare.id()) ? bare : one)
            .toArray(Recipe[]::new);
    ShotList list = batch.shotList();
    List<ShotJob> jobs = list.jobs().stream().map(one -> setup(one, recipe)).toList();
    return new Batch(
        builder(floor).recipes(recipes).build(),
        new ShotList(list.date(), list.days(), jobs, list.pins()));
  }

  private ShotJob setup(ShotJob one, Recipe recipe) {
    if (!one.recipe().equals(recipe.id())) {
      return one;
    }
    Setup setup = one.id().equals(job.id()) ? Setup.ANY : recipe.setup().after(one.setup());
    return new ShotJob(
        one.id(),
        one.article(),
        one.gtin(),
        one.name(),
        one.sample(),
        one.recipe(),
        one.item(),
        setup,
        one.arrivesAt(),
        one.leavesAt(),
        one.promise(),
        one.weight(),
        one.note());
  }

  private static Operator everything(Floor floor) {
    Set<String> skills = new TreeSet<>();
    List<Collection<String>> asked = new ArrayList<>();
    floor.crew().forEach(one -> asked.add(one.skills()));
    floor.kits().forEach(one -> asked.add(one.skills()));
    floor.recipes().forEach(one -> asked.add(one.skills()));
    floor.changeovers().forEach(one -> asked.add(one.skills()));
    floor.rigs().stream()
        .filter(rig -> rig.ring() != null)
        .forEach(rig -> asked.add(rig.ring().skills()));
    asked.add(floor.handling().loadSkills());
    asked.add(floor.handling().hangSkills());
    asked.add(floor.handling().powerSkills());
    asked.forEach(skills::addAll);
    OpenHours dayAndNight = FloorFixtures.hours("00:00", "00:00");
    return new Operator("newcomer", "newcomer", skills, List.of(dayAndNight), List.of(), List.of());
  }

  private static Kit more(Kit kit) {
    List<KitUnit> units = new ArrayList<>(kit.units());
    units.add(new KitUnit("another", kit.units().get(0).place()));
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

  private Batch longer(Floor floor, int minutes) {
    Rig[] rigs =
        floor.rigs().stream().map(rig -> open(rig, later(rig.open(), minutes))).toArray(Rig[]::new);
    Operator[] crew =
        floor.crew().stream()
            .map(
                one ->
                    new Operator(
                        one.id(),
                        one.name(),
                        one.skills(),
                        later(one.shifts(), minutes),
                        one.breaks(),
                        one.closed()))
            .toArray(Operator[]::new);
    return on(builder(floor).rigs(rigs).crew(crew));
  }

  private static Rig open(Rig rig, List<OpenHours> hours) {
    return new Rig(
        rig.id(),
        rig.name(),
        rig.kind(),
        rig.size(),
        rig.camera(),
        rig.plate(),
        rig.arm(),
        rig.fitted(),
        rig.takesKit(),
        rig.offers(),
        rig.initialSetup(),
        rig.changeoverFactor(),
        rig.twoStepsAtOnce(),
        rig.captureFactors(),
        hours,
        rig.closed(),
        rig.ring(),
        rig.cautions());
  }

  private static List<OpenHours> later(List<OpenHours> hours, int minutes) {
    List<OpenHours> later = new ArrayList<>();
    for (OpenHours one : hours) {
      int from = one.from().toSecondOfDay() / 60;
      int to = one.to().toSecondOfDay() / 60;
      int end = to == 0 ? 0 : Math.min(24 * 60, to + minutes);
      boolean wraps = to != 0 && to < from && end >= from;
      later.add(
          wraps
              ? one
              : new OpenHours(
                  one.days(),
                  one.from(),
                  java.time.LocalTime.MIDNIGHT.plusMinutes(end % (24 * 60))));
    }
    return later;
  }

  private Batch on(FloorBuilder floor) {
    return new Batch(floor.build(), batch.shotList());
  }

  private static FloorBuilder builder(Floor floor) {
    return new FloorBuilder()
        .zone(floor.zone())
        .rigs(floor.rigs().toArray(Rig[]::new))
        .kits(floor.kits().toArray(Kit[]::new))
        .fetches(floor.fetches().toArray(FetchTime[]::new))
        .crew(floor.crew().toArray(Operator[]::new))
        .attributes(floor.attributes().toArray(SetupAttribute[]::new))
        .changeovers(floor.changeovers().toArray(ChangeoverRule[]::new))
        .recipes(floor.recipes().toArray(Recipe[]::new))
        .itemSetups(floor.itemSetups().toArray(rigmorrow.model.recipe.ItemSetupRule[]::new))
        .handling(floor.handling())
        .physics(floor.physics())
        .weights(floor.weights());
  }
}
