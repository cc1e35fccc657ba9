package rigmorrow.app.runsheet.text;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.ShotJob;

/** Finds what an id stands for and what people call it. */
public final class Names {

  private final Floor floor;
  private final Map<String, ShotJob> jobs = new HashMap<>();
  private final Map<String, Pin> pins = new HashMap<>();

  /**
   * @param batch whose names to find
   */
  public Names(Batch batch) {
    this.floor = batch.floor();
    batch.shotList().jobs().forEach(job -> jobs.put(job.id(), job));
    batch.shotList().pins().forEach(pin -> pins.put(pin.job(), pin));
  }

  /**
   * The job with that id.
   *
   * @throws IllegalArgumentException when the shot list has none
   */
  public ShotJob job(String id) {
    ShotJob job = jobs.get(id);
    if (job == null) {
      throw new IllegalArgumentException("the plan names job " + id + ", the shot list does not");
    }
    return job;
  }

  /**
   * The rig with that id.
   *
   * @throws IllegalArgumentException when the floor has none
   */
  public Rig rig(String id) {
    return floor
        .rig(id)
        .orElseThrow(
            () ->
                new IllegalArgumentException("the plan names rig " + id + ", the floor does not"));
  }

  /** How far a pinned job is; empty for a job without a pin. */
  public String pinned(String jobId) {
    Pin pin = pins.get(jobId);
    if (pin == null) {
      return "";
    }
    return switch (pin.state()) {
      case DONE -> "Done already";
      case RUNNING -> "Running already";
      case PLANNED -> "Pinned by the planner";
    };
  }

  /** A rig with its id, or the name of a shelf. */
  public String place(String place) {
    return floor.placeName(place);
  }

  /** What people call a kit. */
  public String kit(String id) {
    return floor.kit(id).map(Kit::label).orElse(id);
  }

  /** What people call those operators. */
  public String people(List<String> operators) {
    return operators.stream()
        .map(id -> floor.operator(id).map(Operator::name).orElse(id))
        .collect(Collectors.joining(" and "));
  }

  /** The values of a setup by attribute label, in floor order. */
  public List<Fact> setup(Setup setup) {
    return floor.attributes().stream()
        .filter(attribute -> setup.value(attribute.id()) != null)
        .map(
            attribute ->
                new Fact(
                    attribute.label(),
                    attribute.nameOf(String.valueOf(setup.value(attribute.id())))))
        .toList();
  }
}
