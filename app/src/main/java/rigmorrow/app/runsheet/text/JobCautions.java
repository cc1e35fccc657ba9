package rigmorrow.app.runsheet.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.AttributeValue;
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

  private final WorkModel work;

  /** Those of setup values and of kit: they come and go with the job. */
  private final Set<String> ofEquipment = new HashSet<>();

  /**
   * @param floor whose cautions to give
   */
  public JobCautions(Floor floor) {
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
    Set<String> general = new LinkedHashSet<>(work.of(plain(job), rig).cautions());
    general.removeAll(ofEquipment);
    general.addAll(rig.cautions());
    return List.copyOf(general);
  }

  /** What to mind with this job besides. A job that nobody measured has no computed cautions. */
  public List<Caution> of(ShotJob job, Rig rig) {
    if (!job.item().measured()) {
      return List.of(new Caution(UNMEASURED, UNMEASURED));
    }
    List<String> general = general(job, rig);
    List<Caution> cautions = new ArrayList<>();
    for (String caution : work.of(job, rig).cautions()) {
      if (ofEquipment.contains(caution)) {
        cautions.add(new Caution(caution, caution));
      } else if (!general.contains(caution)) {
        cautions.add(new Caution(caution, brief(caution)));
      }
    }
    return cautions;
  }

  /** The hazard, and where the sentence ends with whom it takes, that too. */
  private static String brief(String caution) {
    String[] parts = caution.split(": ");
    return parts.length > 2
        ? parts[0] + ": " + parts[parts.length - 1]
        : parts.length > 1 ? parts[0] + "." : caution;
  }

  private static ShotJob plain(ShotJob job) {
    return new ShotJob(
        job.id(),
        job.article(),
        null,
        job.name(),
        job.sample(),
        job.recipe(),
        PLAIN,
        job.setup(),
        null,
        null,
        null,
        1,
        null);
  }
}
