package rigmorrow.app;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** A day of the demo studio with two jobs to be careful with. */
public final class OddItems {
  /** Its centre of mass is further off than half its base. */
  public static final String OFF_BASE = "OFF";

  /** Its height is measured by hand. */
  public static final String BY_HAND = "HAND";

  private OddItems() {}

  /** Twelve jobs of the demo and the two. */
  public static Batch batch(LocalDate date) {
    Batch demo = Demo.batch(12, 1, date);
    List<ShotJob> jobs = new ArrayList<>(demo.shotList().jobs());
    String recipe = demo.floor().recipes().get(0).id();
    jobs.add(job(OFF_BASE, recipe, 300, 140, HeightSource.LIST));
    jobs.add(job(BY_HAND, recipe, 300, null, HeightSource.HAND));
    return new Batch(demo.floor(), new ShotList(date, 1, jobs, List.of()));
  }

  /** A job whose length nobody knows, but how far off its centre of mass is. */
  public static ShotJob unmeasured(String recipe) {
    return job("UNKNOWN", recipe, null, 140, HeightSource.LIST);
  }

  private static ShotJob job(
      String id,
      String recipe,
      @Nullable Integer lengthMm,
      @Nullable Integer offsetMm,
      HeightSource height) {
    Item item =
        new Item(
            lengthMm, 200, 150, 2.5, null, null, null, null, offsetMm, null, false, 1, false, 0,
            null, null, height, false);
    return new ShotJob(
        id, id, null, "Odd lamp " + id, id, recipe, item, Setup.ANY, null, null, null, 1, null);
  }
}
