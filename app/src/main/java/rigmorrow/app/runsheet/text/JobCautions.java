package rigmorrow.app.runsheet.text;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.work.WorkModel;

/**
 * Parts what the crew must mind with every job on a rig from what is peculiar to one job. The first
 * is what a small, light item of no particular nature would be given; the second is all the rest,
 * and it must stand at the job.
 */
public final class JobCautions {
  private static final String UNMEASURED =
      "Size or mass is not known: measure and weigh before placing it.";
  private static final double LIGHT_KG = 0.001;
  private static final Item PLAIN =
      new Item(
          1,
          1,
          1,
          LIGHT_KG,
          null,
          null,
          null,
          null,
          null,
          null,
          false,
          1,
          false,
          0,
          null,
          null,
          HeightSource.LIST,
          false);

  private final Floor floor;
  private final WorkModel work;

  /** Those of setup values and of kit: they come and go with the job. */
  private final Set<String> ofEquipment = new HashSet<>();

  /**
   * @param floor whose cautions to give
   */
  public JobCautions(Floor floor) {
    this.floor = floor;
    this.work = new WorkModel(floor);
    Stream.concat(
            floor.attributes().stream()
                .flatMap(attribute -> attribute.values().stream())
                .map(AttributeValue::caution),
            floor.kits().stream().map(Kit::caution))
        .filter(java.util.Objects::nonNull)
        .forEach(ofEquipment::add);
  }

  /**
   * What to mind with every job on a rig.
   *
   * @param job any job of the rig
   */
  public List<String> general(ShotJob job, Rig rig) {
    Set<String> general = new LinkedHashSet<>(work.of(with(job, PLAIN), rig).cautions());
    general.removeAll(ofEquipment);
    general.addAll(rig.cautions());
    return List.copyOf(general);
  }

  /**
   * What to mind with this job besides, the setup that is in force while it is on the rig included:
   * a value that an earlier job asked for stays set up, and so does what to mind with it.
   *
   * @param inForce the rig's setup with this job on it
   */
  public List<String> of(ShotJob job, Rig rig, Setup inForce) {
    Set<String> cautions = new LinkedHashSet<>();
    if (!job.item().measured()) {
      cautions.add(UNMEASURED);
    }
    // Glass, mains and the like need no measures; only the lift cannot be judged without.
    ShotJob known = job.item().measured() ? job : with(job, measured(job.item()));
    cautions.addAll(work.of(known, rig).cautions());
    cautions.removeAll(general(job, rig));
    cautions.addAll(ofValues(inForce));
    return List.copyOf(cautions);
  }

  /**
   * What to mind while values are taken away that were set up: they are as hot, live or heavy as
   * when they were put up.
   *
   * @param before setup of the rig before the job
   * @param request what the job asks for
   */
  public List<String> ofTakenAway(Setup before, Setup request) {
    Map<String, String> taken = new TreeMap<>();
    request
        .values()
        .forEach(
            (attribute, asked) -> {
              String old = before.value(attribute);
              if (old != null && !old.equals(asked)) {
                taken.put(attribute, old);
              }
            });
    return ofValues(new Setup(taken));
  }

  private List<String> ofValues(Setup setup) {
    return setup.values().entrySet().stream()
        .flatMap(
            entry ->
                floor.attribute(entry.getKey()).flatMap(it -> it.value(entry.getValue())).stream())
        .map(AttributeValue::caution)
        .filter(java.util.Objects::nonNull)
        .toList();
  }

  /** The item with some measure in place of each that is missing. */
  private static Item measured(Item item) {
    // Whether it tips cannot be told of a base that is not known.
    boolean base = item.lengthMm() != null && item.widthMm() != null;
    return new Item(
        item.lengthMm() == null ? 1 : item.lengthMm(),
        item.widthMm() == null ? 1 : item.widthMm(),
        item.heightMm() == null ? 1 : item.heightMm(),
        item.massKg() == null ? LIGHT_KG : item.massKg(),
        base ? item.baseLengthMm() : null,
        base ? item.baseWidthMm() : null,
        null,
        null,
        base ? item.offsetMm() : null,
        item.finish(),
        item.glass(),
        item.handsNeeded(),
        item.holder(),
        item.holderMassKg(),
        item.hanging(),
        item.power(),
        item.heightSource(),
        item.estimated());
  }

  private static ShotJob with(ShotJob job, Item item) {
    return new ShotJob(
        job.id(),
        job.article(),
        null,
        job.name(),
        job.sample(),
        job.recipe(),
        item,
        job.setup(),
        null,
        null,
        null,
        1,
        null);
  }
}
