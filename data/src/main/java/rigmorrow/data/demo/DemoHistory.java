package rigmorrow.data.demo;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import rigmorrow.model.check.Require;
import rigmorrow.model.floor.Closure;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;

/**
 * Invented past days, twelve days apart, so that thirty of them go round the year: more shoes in
 * spring, jackets in autumn, jewellery and boxed goods before the holidays; some rush days, and
 * some on which a rig broke down for part of the day.
 */
public final class DemoHistory {
  private static final LocalDate FIRST_DATE = LocalDate.of(2025, 3, 5);
  private static final int DAYS_APART = 12;
  private static final int RUSH_EVERY = 7;
  private static final int BREAKDOWN_EVERY = 5;
  private static final double RUSH_NOON_SHARE = 0.7;

  private DemoHistory() {}

  /** The first so many past days in order. */
  public static List<Batch> days(int count) {
    return IntStream.range(0, count).mapToObj(DemoHistory::batch).toList();
  }

  /**
   * One past day; the same index gives the same day.
   *
   * @param index 0 or more
   */
  public static Batch batch(int index) {
    Require.atLeast("index", index, 0);
    LocalDate date = FIRST_DATE.plusDays((long) index * DAYS_APART);
    SplittableRandom random = new SplittableRandom(7_000L + index);
    boolean rush = index % RUSH_EVERY == RUSH_EVERY - 2;
    int jobs = 100 + seasonJobs(date) + random.nextInt(21) + (rush ? 20 : 0);
    DemoMix mix = seasonMix(date);
    Floor floor = DemoStudio.floor(date);
    if (index % BREAKDOWN_EVERY == BREAKDOWN_EVERY - 2) {
      floor = withBreakdown(floor, date, random);
    }
    return new Batch(
        floor,
        DemoShotList.of(
            jobs, 100L + index, date, 1, rush ? mix.withNoonShare(RUSH_NOON_SHARE) : mix));
  }

  private static int seasonJobs(LocalDate date) {
    return switch (date.getMonth()) {
      case MARCH, APRIL -> 15;
      case SEPTEMBER, OCTOBER -> 20;
      case NOVEMBER, DECEMBER -> 25;
      case JULY -> 0;
      default -> 8;
    };
  }

  private static DemoMix seasonMix(LocalDate date) {
    DemoMix usual = DemoMix.usual();
    return switch (date.getMonth()) {
      case MARCH, APRIL, MAY -> usual.with(DemoProduct.SHOES, 2);
      case JUNE, JULY, AUGUST -> usual.with(DemoProduct.BOTTLE, 2);
      case SEPTEMBER, OCTOBER -> usual.with(DemoProduct.JACKET, 2);
      case NOVEMBER, DECEMBER -> usual.with(DemoProduct.JEWELLERY, 2).with(DemoProduct.BOXED, 2);
      default -> usual.with(DemoProduct.BOOK, 2);
    };
  }

  /** One rig stands still for two to four hours from nine, ten or eleven. */
  private static Floor withBreakdown(Floor floor, LocalDate date, SplittableRandom random) {
    int broken = random.nextInt(floor.rigs().size());
    int from = 9 + random.nextInt(3);
    int hours = 2 + random.nextInt(3);
    Closure closure = new Closure(date.atTime(from, 0), date.atTime(from + hours, 0), "breakdown");
    List<Rig> rigs = new ArrayList<>(floor.rigs());
    List<Closure> closures = new ArrayList<>(rigs.get(broken).closed());
    closures.add(closure);
    rigs.set(broken, rigs.get(broken).withClosed(closures));
    return floor.withRigs(rigs);
  }
}
