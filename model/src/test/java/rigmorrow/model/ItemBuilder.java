package rigmorrow.model;

import org.jspecify.annotations.Nullable;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Power;

/**
 * Builds items for tests; each call replaces one part. To begin with: a matt box of 300 x 200 x 150
 * mm and 1 kg.
 */
public final class ItemBuilder {
  private @Nullable Integer lengthMm = 300;
  private @Nullable Integer widthMm = 200;
  private @Nullable Integer heightMm = 150;
  private @Nullable Double massKg = 1.0;
  private @Nullable Integer rotationDiameterMm;
  private @Nullable Integer offsetMm;
  private @Nullable String finish;
  private boolean glass;
  private int handsNeeded = 1;
  private boolean holder;
  private double holderMassKg;
  private @Nullable Hanging hanging;
  private @Nullable Power power;
  private HeightSource heightSource = HeightSource.LIST;
  private boolean estimated;

  public ItemBuilder size(
      @Nullable Integer length, @Nullable Integer width, @Nullable Integer height) {
    lengthMm = length;
    widthMm = width;
    heightMm = height;
    return this;
  }

  public ItemBuilder massKg(@Nullable Double mass) {
    massKg = mass;
    return this;
  }

  public ItemBuilder rotationDiameterMm(int diameter) {
    rotationDiameterMm = diameter;
    return this;
  }

  public ItemBuilder offsetMm(int offset) {
    offsetMm = offset;
    return this;
  }

  public ItemBuilder finish(String other) {
    finish = other;
    return this;
  }

  public ItemBuilder glass(boolean is) {
    glass = is;
    return this;
  }

  public ItemBuilder handsNeeded(int hands) {
    handsNeeded = hands;
    return this;
  }

  public ItemBuilder holder(double mass) {
    holder = true;
    holderMassKg = mass;
    return this;
  }

  public ItemBuilder hanging(Hanging other) {
    hanging = other;
    return this;
  }

  public ItemBuilder power(Power other) {
    power = other;
    return this;
  }

  public ItemBuilder heightSource(HeightSource other) {
    heightSource = other;
    return this;
  }

  public ItemBuilder estimated(boolean is) {
    estimated = is;
    return this;
  }

  public Item build() {
    return new Item(
        lengthMm,
        widthMm,
        heightMm,
        massKg,
        null,
        null,
        rotationDiameterMm,
        null,
        offsetMm,
        finish,
        glass,
        handsNeeded,
        holder,
        holderMassKg,
        hanging,
        power,
        heightSource,
        estimated);
  }
}
