package rigmorrow.data.demo;

import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import rigmorrow.data.demo.DemoProduct.Trait;
import rigmorrow.model.shot.Gtin;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Power;

/** Draws one sample of a product: its size, mass, nature and number. */
final class DemoItems {
  /** Length of the straps or strings above a hung item's own height. */
  private static final int STRINGS_MM = 120;

  private static final double STRAP_KG = 0.15;
  private static final double HOLDER_KG = 0.6;
  private static final int OFF_CENTRE_MM = 80;

  /**
   * GS1 prefix 952 is kept for demonstrations and examples (GS1 company prefix list, from memory),
   * so no real product has such a number.
   */
  private static final String DEMO_PREFIX = "952";

  private DemoItems() {}

  static Item item(DemoProduct product, SplittableRandom random) {
    DemoProduct.Sizes sizes = product.sizes();
    int length = between(random, sizes.lengthFrom(), sizes.lengthTo());
    int width = between(random, sizes.widthFrom(), sizes.widthTo());
    int height = between(random, sizes.heightFrom(), sizes.heightTo());
    double mass = mass(random, sizes);
    boolean wheels = product.has(Trait.WHEELS);
    boolean held = product.has(Trait.HELD);
    return new Item(
        length,
        width,
        height,
        mass,
        wheels ? length * 2 / 3 : null,
        wheels ? width * 3 / 4 : null,
        wheels ? length + 100 : null,
        wheels ? height * 2 / 5 : null,
        product.has(Trait.OFF_CENTRE) ? OFF_CENTRE_MM : null,
        pick(random, product.finishes()),
        product.has(Trait.GLASS),
        hands(product),
        held,
        held ? HOLDER_KG : 0,
        hanging(product, height, mass),
        product.has(Trait.POWERED) ? new Power(230, between(random, 5, 60), plug(random)) : null,
        heightSource(random),
        false);
  }

  /** One of them, each as likely. */
  static <T> T pick(SplittableRandom random, List<T> from) {
    return from.get(random.nextInt(from.size()));
  }

  private static int between(SplittableRandom random, int from, int to) {
    return random.nextInt(from, to + 1);
  }

  /** In steps of 10 g. */
  private static double mass(SplittableRandom random, DemoProduct.Sizes sizes) {
    double mass = sizes.massFrom() + random.nextDouble() * (sizes.massTo() - sizes.massFrom());
    return Math.max(1, Math.round(mass * 100)) / 100.0;
  }

  private static int hands(DemoProduct product) {
    if (product.has(Trait.THREE_HANDS)) {
      return 3;
    }
    return product.has(Trait.TWO_HANDS) ? 2 : 1;
  }

  private static @Nullable Hanging hanging(DemoProduct product, int heightMm, double massKg) {
    if (product.has(Trait.HANGS)) {
      return new Hanging(massKg, heightMm + STRINGS_MM, false);
    }
    return product.has(Trait.STRAPS_HANG) ? new Hanging(STRAP_KG, 450, true) : null;
  }

  private static String plug(SplittableRandom random) {
    return pick(random, List.of("C", "C", "K"));
  }

  private static HeightSource heightSource(SplittableRandom random) {
    double draw = random.nextDouble();
    if (draw < DemoKnobs.BY_HAND_SHARE) {
      return HeightSource.HAND;
    }
    return draw < DemoKnobs.BY_HAND_SHARE + DemoKnobs.BY_DEVICE_SHARE
        ? HeightSource.DEVICE
        : HeightSource.LIST;
  }

  /**
   * A GTIN-13 of the demo prefix.
   *
   * @param article 0 to 999,999,999
   */
  static String gtin13(int article) {
    String digits = DEMO_PREFIX + String.format(Locale.ROOT, "%09d", article);
    return digits + Gtin.checkDigit(digits);
  }
}
