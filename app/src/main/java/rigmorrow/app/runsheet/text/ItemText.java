package rigmorrow.app.runsheet.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.shot.Hanging;
import rigmorrow.model.shot.HeightSource;
import rigmorrow.model.shot.Item;
import rigmorrow.model.shot.Power;

/** Says what an item is and how it is placed, hung and powered. */
public final class ItemText {

  private ItemText() {}

  /** Length, width and height, mass and nature in one line. */
  public static String measures(Item item) {
    String mark = item.estimated() ? " (estimate)" : "";
    List<String> parts = new ArrayList<>();
    parts.add(
        (orUnknown(item.lengthMm())
                    + " × "
                    + orUnknown(item.widthMm())
                    + " × "
                    + orUnknown(item.heightMm())
                    + " mm")
                .replace(' ', TimeText.NO_BREAK)
            + mark);
    Double mass = item.massKg();
    parts.add(mass == null ? "mass not known" : kilograms(mass) + mark);
    if (item.finish() != null) {
      parts.add(item.finish());
    }
    if (item.glass()) {
      parts.add("glass");
    }
    return String.join(", ", parts);
  }

  /** How to measure, fix, place, hang and power it. */
  public static List<String> loading(Item item) {
    List<String> lines = new ArrayList<>();
    List<String> byHand = byHand(item);
    if (!byHand.isEmpty()) {
      lines.add("Measure by hand: " + String.join(", ", byHand) + ".");
    }
    if (item.holder()) {
      lines.add("Fix it in the holder (" + kilograms(item.holderMassKg()) + ").");
    }
    Integer offset = item.offsetMm();
    if (offset != null && offset > 0) {
      lines.add("Centre of mass " + offset + " mm off the plate's centre.");
    }
    Hanging hanging = item.hanging();
    if (hanging != null) {
      String what = hanging.stands() ? "Stand it on the plate, hang its straps: " : "Hang it: ";
      lines.add(
          what
              + kilograms(hanging.hangingMassKg())
              + " hanging, drop "
              + hanging.dropMm()
              + " mm.");
    } else {
      lines.add("Stand it on the plate.");
    }
    Power power = item.power();
    if (power != null) {
      lines.add(
          "Connect power: "
              + power.volts()
              + " V, "
              + power.watts()
              + " W, plug "
              + power.plug()
              + ". Switch it on only when all are clear of the rig, for the pictures that need it: a"
              + " qualified person.");
    }
    return lines;
  }

  /** What taking it off the rig needs besides; empty for nothing. */
  public static List<String> unloading(Item item) {
    List<String> lines = new ArrayList<>();
    if (item.power() != null) {
      lines.add("Switch off and disconnect power.");
    }
    Hanging hanging = item.hanging();
    if (hanging != null) {
      lines.add(hanging.stands() ? "Take the straps down." : "Take it down from the strings.");
    }
    if (item.holder()) {
      lines.add("Free it from the holder.");
    }
    return lines;
  }

  /** What has to be measured at the rig: what nobody knows, and a height that no device told. */
  private static List<String> byHand(Item item) {
    List<String> figures = new ArrayList<>();
    if (item.lengthMm() == null) {
      figures.add("length");
    }
    if (item.widthMm() == null) {
      figures.add("width");
    }
    if (item.heightMm() == null || item.heightSource() == HeightSource.HAND) {
      figures.add("height");
    }
    if (item.massKg() == null) {
      figures.add("mass");
    }
    return figures;
  }

  private static String orUnknown(@Nullable Integer millimetres) {
    return millimetres == null ? "?" : String.valueOf(millimetres);
  }

  private static String kilograms(double mass) {
    String exact = String.format(Locale.ROOT, "%.3f", mass);
    return exact.replaceAll("\\.?0+$", "") + TimeText.NO_BREAK + "kg";
  }
}
