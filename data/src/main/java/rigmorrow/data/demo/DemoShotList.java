package rigmorrow.data.demo;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.check.Require;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Promise;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.model.shot.ShotList;

/** A seeded generator of shot lists for {@link DemoStudio}. The same seed gives the same list. */
public final class DemoShotList {
  private static final List<String> COLOURS =
      List.of("sand", "moss", "slate", "amber", "ivory", "rust", "night blue", "plum");

  /** Backgrounds that clients want whatever the recipe says. */
  private static final List<String> HOUSE_STYLES = List.of("white-reflected", "grey", "black");

  private final int jobs;
  private final LocalDate date;
  private final int days;
  private final DemoMix mix;
  private final SplittableRandom items;
  private final SplittableRandom wishes;
  private final SplittableRandom times;
  private final List<ShotJob> list = new ArrayList<>();
  private int samples;

  private DemoShotList(int jobs, long seed, LocalDate date, int days, DemoMix mix) {
    this.jobs = jobs;
    this.date = date;
    this.days = days;
    this.mix = mix;
    SplittableRandom root = new SplittableRandom(seed);
    this.items = root.split();
    this.wishes = root.split();
    this.times = root.split();
  }

  /** A shot list for one day. */
  public static ShotList of(int jobs, long seed, LocalDate date) {
    return of(jobs, seed, date, 1);
  }

  /**
   * A shot list for one or more days; every job fits at least one rig of the floor.
   *
   * @param jobs 1 or more
   * @param seed of all that is drawn
   * @param date first day of the plan
   * @param days 1 to 31; arrivals and promises are spread over them
   */
  public static ShotList of(int jobs, long seed, LocalDate date, int days) {
    return of(jobs, seed, date, days, DemoMix.usual());
  }

  static ShotList of(int jobs, long seed, LocalDate date, int days, DemoMix mix) {
    Require.atLeast("jobs", jobs, 1);
    return new DemoShotList(jobs, seed, date, days, mix).build();
  }

  private ShotList build() {
    while (list.size() < jobs) {
      addSample();
    }
    return new ShotList(date, days, list, List.of());
  }

  /** What the jobs of one sample share. */
  private record Sample(
      String id,
      DemoProduct product,
      String article,
      @Nullable String gtin,
      Item item,
      Setup asks,
      Times times,
      int weight) {}

  /** When a sample is there and its pictures are due. */
  private record Times(
      @Nullable LocalDateTime arrivesAt,
      @Nullable LocalDateTime leavesAt,
      @Nullable Promise promise,
      boolean loaned) {}

  private void addSample() {
    samples++;
    DemoProduct product = mix.draw(items);
    int article = items.nextInt(1_000_000);
    Item item = DemoItems.item(product, items);
    Sample sample =
        new Sample(
            String.format(Locale.ROOT, "S%04d", samples),
            product,
            String.format(Locale.ROOT, "00%06d", article),
            items.nextDouble() < DemoKnobs.GTIN_SHARE ? DemoItems.gtin13(article) : null,
            item,
            asks(product),
            times(),
            weight());
    String first = DemoItems.pick(wishes, product.recipes());
    String name = product.label() + " " + DemoItems.pick(wishes, COLOURS);
    List<String> others = product.recipes().stream().filter(other -> !other.equals(first)).toList();
    boolean second = wishes.nextDouble() < DemoKnobs.SECOND_RECIPE_SHARE && !others.isEmpty();
    addJob(sample, name, first);
    if (second && list.size() < jobs) {
      addJob(sample, name, DemoItems.pick(wishes, others));
    }
  }

  private void addJob(Sample sample, String name, String recipe) {
    list.add(
        new ShotJob(
            String.format(Locale.ROOT, "J%04d", list.size() + 1),
            sample.article,
            sample.gtin,
            name,
            sample.id,
            recipe,
            sample.item,
            sample.asks,
            sample.times.arrivesAt,
            sample.times.leavesAt,
            sample.times.promise,
            sample.weight,
            sample.times.loaned ? "Loaned collection: back at the desk by four." : null));
  }

  /** What the product asks for, with its client's background where the client wants one. */
  private Setup asks(DemoProduct product) {
    String style = DemoItems.pick(wishes, HOUSE_STYLES);
    if (wishes.nextDouble() >= DemoKnobs.HOUSE_STYLE_SHARE) {
      return product.asks();
    }
    return product.asks().after(new Setup(Map.of(DemoSetups.BACKGROUND, style)));
  }

  private Times times() {
    LocalDate day = date.plusDays(times.nextInt(days));
    double kind = times.nextDouble();
    double due = times.nextDouble();
    boolean must = times.nextDouble() < DemoKnobs.MUST_SHARE;
    if (kind < DemoKnobs.LOAN_SHARE) {
      Promise promise = due < 0.5 ? new Promise(day.atTime(15, 0), false) : null;
      return new Times(day.atTime(10, 0), day.atTime(16, 0), promise, true);
    }
    boolean late = kind < DemoKnobs.LOAN_SHARE + DemoKnobs.LATE_ARRIVAL_SHARE;
    return new Times(late ? day.atTime(10, 0) : null, null, promise(day, due, late, must), false);
  }

  /**
   * A sample that arrives at ten is not promised for the morning, and no promise for the morning is
   * a must.
   */
  private @Nullable Promise promise(LocalDate day, double due, boolean late, boolean must) {
    if (due < mix.noonShare() && !late) {
      boolean courier = due < mix.noonShare() * DemoKnobs.COURIER_SHARE;
      return new Promise(courier ? day.atTime(10, 30) : day.atTime(12, 0), false);
    }
    if (due < mix.noonShare() + DemoKnobs.AFTERNOON_SHARE) {
      return new Promise(day.atTime(15, 0), must);
    }
    return due < mix.noonShare() + DemoKnobs.AFTERNOON_SHARE + DemoKnobs.EVENING_SHARE
        ? new Promise(day.atTime(17, 0), must)
        : null;
  }

  /** 1 to 10, the low ones more frequent. */
  private int weight() {
    int one = wishes.nextInt(10);
    int other = wishes.nextInt(10);
    return 1 + (wishes.nextInt(3) == 0 ? one : Math.min(one, other));
  }
}
