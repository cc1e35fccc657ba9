package rigmorrow.data.demo;

import java.time.LocalDate;
import rigmorrow.model.shot.Batch;

/** The door to the demo: one batch of any size. */
public final class Demo {
  private Demo() {}

  /** The default demo: a day of 150 jobs on six rigs, seed 1. */
  public static Batch batch() {
    return batch(DemoKnobs.DAY_JOBS, 1, DemoKnobs.DATE);
  }

  /**
   * A shot list with a floor of a fitting size: six rigs for a day of up to 200 jobs, ten for up to
   * 600 and twelve beyond, both over as many days as 250 jobs a day take.
   *
   * @param jobs 1 to 7,750
   * @param seed of all that is drawn
   * @param date first day of the plan
   */
  public static Batch batch(int jobs, long seed, LocalDate date) {
    int rigs = DemoRigs.FIRST;
    int days = 1;
    if (jobs > DemoKnobs.TEN_RIGS_ABOVE_JOBS) {
      rigs = jobs > DemoKnobs.TWELVE_RIGS_ABOVE_JOBS ? DemoRigs.MOST : 10;
      days = (jobs + DemoKnobs.JOBS_PER_DAY_ON_MORE_RIGS - 1) / DemoKnobs.JOBS_PER_DAY_ON_MORE_RIGS;
    }
    return new Batch(DemoStudio.floor(date, rigs), DemoShotList.of(jobs, seed, date, days));
  }
}
