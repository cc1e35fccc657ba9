package rigmorrow.model.work;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.lifting.LiftAdvice;
import rigmorrow.model.lifting.LiftCrew;
import rigmorrow.model.motion.ItemLimits;
import rigmorrow.model.recipe.Physics;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;

/** What each job asks for on each rig: times, people, kit, setup, wear and cautions. */
public final class WorkModel {
  /** Keeps a rounding error in a sum of whole numbers from becoming a second. */
  private static final double ROUNDING_SECONDS = 1e-6;

  private final Floor floor;

  /**
   * @param floor whose recipes, handling times and figures to use
   */
  public WorkModel(Floor floor) {
    this.floor = floor;
  }

  /**
   * The work of a measured job on a rig, whether or not the rig can take it; equipment that is
   * lacking is left out, the fit check tells of it.
   *
   * @throws IllegalArgumentException when the item is not measured or the recipe is unknown
   */
  public JobWork of(ShotJob job, Rig rig) {
    Item item = job.item();
    Recipe recipe = recipe(job);
    Setup request = SetupRequests.of(floor, job);
    LiftAdvice lift = LiftCheck.of(floor.physics().lift(), item, rig);
    EquipmentChoice equipment =
        EquipmentChoice.of(floor, job, recipe, rig, crew(item, lift) == LiftCrew.LIFTING_AID);
    HandlingModel handling = handling(job, rig);
    CaptureModel capture =
        new CaptureModel(floor, rig, recipe, item, limits(floor, rig, item, request));
    List<TimeTerm> terms = new ArrayList<>(handling.loadTerms());
    terms.addAll(captureTerms(capture, recipe, rig));
    terms.addAll(handling.unloadTerms());
    return new JobWork(
        job.id(),
        rig.id(),
        request,
        equipment.kits(),
        loading(job, rig),
        seconds(terms, "capture"),
        recipe.attended(),
        unloading(job, rig),
        (int) Math.ceil(capture.turns() - ROUNDING_SECONDS),
        terms,
        Cautions.of(floor, rig, item, request, equipment.kits(), lift, handling.people()));
  }

  /**
   * Placing and aligning alone, without the capture.
   *
   * @throws IllegalArgumentException when the item is not measured or the recipe is unknown
   */
  public JobWork.HandsOn loading(ShotJob job, Rig rig) {
    HandlingModel handling = handling(job, rig);
    return new JobWork.HandsOn(
        seconds(handling.loadTerms(), "load"), handling.people(), handling.loadSkills());
  }

  /**
   * Taking off alone, without the capture.
   *
   * @throws IllegalArgumentException when the item is not measured or the recipe is unknown
   */
  public JobWork.HandsOn unloading(ShotJob job, Rig rig) {
    HandlingModel handling = handling(job, rig);
    return new JobWork.HandsOn(
        seconds(handling.unloadTerms(), "unload"), handling.people(), handling.unloadSkills());
  }

  private HandlingModel handling(ShotJob job, Rig rig) {
    LiftAdvice lift = LiftCheck.of(floor.physics().lift(), job.item(), rig);
    int people = crew(job.item(), lift).people();
    return new HandlingModel(floor.handling(), recipe(job), job.item(), people);
  }

  private static LiftCrew crew(Item item, LiftAdvice lift) {
    return LiftCheck.light(item) ? LiftCrew.ONE_PERSON : lift.crew();
  }

  private Recipe recipe(ShotJob job) {
    return floor
        .recipe(job.recipe())
        .orElseThrow(() -> new IllegalArgumentException("no recipe " + job.recipe()));
  }

  /**
   * What a free-standing item bears on a rig's plate; null when it hangs free or is held. Its
   * centre of mass is taken to be above the middle of its base, wherever on the plate that stands.
   */
  public static @Nullable ItemLimits limits(Floor floor, Rig rig, Item item, Setup request) {
    if (item.hangsFree() || item.holder()) {
      return null;
    }
    ItemGeometry geometry = ItemGeometry.of(item);
    Physics physics = floor.physics();
    return new ItemLimits(
        friction(floor, rig, request),
        geometry.halfBaseMm(),
        geometry.centreOfMassMm(),
        physics.safetyFactor());
  }

  private static List<TimeTerm> captureTerms(CaptureModel capture, Recipe recipe, Rig rig) {
    List<TimeTerm> computed = capture.terms();
    Integer measured = recipe.measuredCaptureSeconds().get(rig.id());
    if (measured != null) {
      return List.of(
          new TimeTerm(
              "capture",
              "measured on this rig",
              measured,
              "floor file, in place of the computed time",
              List.of()));
    }
    double factor = rig.captureFactor(recipe.id());
    if (factor == 1) {
      return computed;
    }
    double sum = computed.stream().mapToDouble(TimeTerm::seconds).sum();
    List<TimeTerm> terms = new ArrayList<>(computed);
    terms.add(
        new TimeTerm(
            "capture",
            "factor of this rig and recipe",
            sum * (factor - 1),
            "%.2f s x (%.3f - 1)",
            List.of(sum, factor)));
    return terms;
  }

  private static int seconds(List<TimeTerm> terms, String part) {
    double sum =
        terms.stream()
            .filter(term -> term.part().equals(part))
            .mapToDouble(TimeTerm::seconds)
            .sum();
    return (int) Math.max(0, Math.ceil(sum - ROUNDING_SECONDS));
  }

  /** Friction of the surface asked for; where none is asked for, the least of those in question. */
  private static double friction(Floor floor, Rig rig, Setup request) {
    double least = floor.physics().frictionCoefficient();
    for (var attribute : floor.attributes()) {
      String asked = request.value(attribute.id());
      for (AttributeValue value : attribute.values()) {
        Double friction = value.frictionCoefficient();
        if (friction != null && value.id().equals(asked)) {
          return friction;
        }
        if (friction != null && asked == null && rig.offers(attribute.id(), value.id())) {
          least = Math.min(least, friction);
        }
      }
    }
    return least;
  }
}
