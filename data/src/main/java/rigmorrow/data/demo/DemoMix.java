package rigmorrow.data.demo;

import java.util.EnumMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * What a day's shot list is drawn from.
 *
 * @param shares how frequent each product is, as whole parts; a product that is missing is never
 *     drawn
 * @param noonShare share of the samples promised for noon, 0 to 1
 */
record DemoMix(Map<DemoProduct, Integer> shares, double noonShare) {
  DemoMix {
    shares = new EnumMap<>(shares);
  }

  /** The mix of the default demo. */
  static DemoMix usual() {
    Map<DemoProduct, Integer> shares = new EnumMap<>(DemoProduct.class);
    shares.put(DemoProduct.HANDBAG, 14);
    shares.put(DemoProduct.STRAP_BAG, 5);
    shares.put(DemoProduct.HUNG_BAG, 5);
    shares.put(DemoProduct.BOTTLE, 8);
    shares.put(DemoProduct.TALL_BOTTLE, 6);
    shares.put(DemoProduct.LAMP, 8);
    shares.put(DemoProduct.PENDANT, 2);
    shares.put(DemoProduct.SHOES, 14);
    shares.put(DemoProduct.BOOK, 8);
    shares.put(DemoProduct.CHAIR, 4);
    shares.put(DemoProduct.ARMCHAIR, 2);
    shares.put(DemoProduct.FLOOR_MIRROR, 2);
    shares.put(DemoProduct.CARGO_SCOOTER, 3);
    shares.put(DemoProduct.JEWELLERY, 6);
    shares.put(DemoProduct.WATCH, 4);
    shares.put(DemoProduct.JACKET, 8);
    shares.put(DemoProduct.BOXED, 12);
    return new DemoMix(shares, DemoKnobs.NOON_SHARE);
  }

  /** The same mix with one product so many times as frequent. */
  DemoMix with(DemoProduct product, int times) {
    Map<DemoProduct, Integer> changed = new EnumMap<>(shares);
    changed.computeIfPresent(product, (key, share) -> share * times);
    return new DemoMix(changed, noonShare);
  }

  /** The same mix with another share promised for noon. */
  DemoMix withNoonShare(double share) {
    return new DemoMix(shares, share);
  }

  DemoProduct draw(SplittableRandom random) {
    int total = shares.values().stream().mapToInt(Integer::intValue).sum();
    int left = random.nextInt(total);
    for (Map.Entry<DemoProduct, Integer> share : shares.entrySet()) {
      left -= share.getValue();
      if (left < 0) {
        return share.getKey();
      }
    }
    throw new IllegalStateException("shares do not add up");
  }
}
