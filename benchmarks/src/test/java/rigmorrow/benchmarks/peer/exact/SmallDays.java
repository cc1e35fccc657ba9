package rigmorrow.benchmarks.peer.exact;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.demo.Demo;
import rigmorrow.model.fit.FitCheck;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/**
 * The demo's floor cut down to two or three rigs and two operators with different skills, and a few
 * of its jobs: kit is shared, two jobs share a sample, the crew takes breaks and goes home early,
 * some jobs come late, must leave, are promised or must be ready. The same seed gives the same day.
 */
final class SmallDays {
  private static final LocalDate DATE = LocalDate.of(2026, 3, 18);
  private static final int OPENS = 9 * 60;
  private static final int OTHER_JOBS = 60;

  /** The platform is left out: two people share changeovers there. */
  private static final List<List<String>> RIGS =
      List.of(
          List.of("R1", "R3"),
          List.of("R2", "R5"),
          List.of("R3", "R6"),
          List.of("R1", "R2", "R5"),
          List.of("R2", "R3", "R6"),
          List.of("R1", "R3", "R5"));

  private final Random random;

  private SmallDays(long seed) {
    this.random = new Random(seed);
  }

  /** A day with so many jobs, each of which fits a rig. */
  static Batch draw(long seed, int fewestJobs, int mostJobs) {
    SmallDays days = new SmallDays(seed);
    Batch demo = Demo.batch(OTHER_JOBS, seed + 1, DATE);
    int jobs = fewestJobs + days.random.nextInt(mostJobs - fewestJobs + 1);
    Floor floor = days.floor(demo.floor(), jobs);
    return new Batch(floor, new ShotList(DATE, 1, days.jobs(demo, floor, jobs), List.of()));
  }

  private Floor floor(Floor demo, int jobs) {
    List<String> rigs = RIGS.get(random.nextInt(RIGS.size()));
    List<Rig> few = demo.rigs().stream().filter(rig -> rigs.contains(rig.id())).toList();
    int minutes = jobs * (12 + random.nextInt(10));
    List<Operator> crew = new ArrayList<>();
    for (String id : List.of("O3", random.nextBoolean() ? "O2" : "O4")) {
      Operator one = demo.operator(id).orElseThrow();
      int pause = OPENS + 20 + random.nextInt(minutes / 2);
      crew.add(
          new Operator(
              id,
              one.name(),
              one.skills(),
              List.of(new OpenHours(Set.of(), at(OPENS), at(OPENS + minutes + random.nextInt(30)))),
              List.of(new OpenHours(Set.of(), at(pause), at(pause + 15))),
              List.of()));
    }
    return demo.withRigs(few).withCrew(crew);
  }

  private static LocalTime at(int minute) {
    return LocalTime.MIDNIGHT.plusMinutes(minute);
  }

  private List<ShotJob> jobs(Batch demo, Floor floor, int count) {
    FitCheck check = new FitCheck(floor);
    List<ShotJob> fitting = new ArrayList<>();
    for (ShotJob job : demo.shotList().jobs()) {
      if (check.of(job).fitsSomewhere()) {
        fitting.add(job);
      }
    }
    Collections.shuffle(fitting, random);
    List<ShotJob> jobs = new ArrayList<>();
    for (ShotJob job : fitting.subList(0, Math.min(count, fitting.size()))) {
      String sample = jobs.size() == 1 ? jobs.get(0).sample() : job.id();
      jobs.add(timed(job, sample, 15 * count));
    }
    return jobs;
  }

  private ShotJob timed(ShotJob job, String sample, int minutes) {
    @Nullable LocalDateTime arrives = chance(25) ? minute(minutes / 2) : null;
    @Nullable LocalDateTime leaves = chance(10) ? minute(minutes / 2).plusMinutes(minutes) : null;
    @Nullable Promise promise = chance(75) ? new Promise(minute(minutes), chance(15)) : null;
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
        1 + random.nextInt(5),
        null);
  }

  private boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }

  private LocalDateTime minute(int most) {
    return DATE.atTime(at(OPENS)).plusMinutes(5 + random.nextInt(most));
  }
}
