package rigmorrow.data.demo;

import java.time.LocalDate;
import java.time.LocalTime;
import rigmorrow.model.recipe.Handling;

/**
 * The figures that decide how tight a demo day is, in one place. All of them are this scenario's
 * own choices: none is a published figure.
 */
final class DemoKnobs {
  /** The day of the demo when no other is asked for; a Wednesday. */
  static final LocalDate DATE = LocalDate.of(2026, 3, 18);

  /** Jobs of the default demo day. */
  static final int DAY_JOBS = 150;

  /** Above so many jobs the floor has ten rigs and the plan more than one day. */
  static final int TEN_RIGS_ABOVE_JOBS = 200;

  /** Above so many jobs the floor has twelve rigs. */
  static final int TWELVE_RIGS_ABOVE_JOBS = 600;

  /** Jobs a day on ten or twelve rigs. */
  static final int JOBS_PER_DAY_ON_MORE_RIGS = 250;

  static final LocalTime RIGS_OPEN = LocalTime.of(7, 0);
  static final LocalTime RIGS_CLOSE = LocalTime.of(18, 0);

  /** Hands-on time of every changeover step is multiplied by this. */
  static final double CHANGEOVER_SCALE = 1.6;

  /** Share of the noon promises that are for the morning courier at half past ten instead. */
  static final double COURIER_SHARE = 0.5;

  /** Share of the samples promised for noon, before those that arrive late are moved on. */
  static final double NOON_SHARE = 0.52;

  /** Share of the samples promised for three in the afternoon. */
  static final double AFTERNOON_SHARE = 0.25;

  /** Share of the samples promised for five; the rest have no promise. */
  static final double EVENING_SHARE = 0.20;

  /** Share of the samples whose promise for three or five must be kept. */
  static final double MUST_SHARE = 0.08;

  /** Share of the samples, beside the loaned ones, that arrive at ten. */
  static final double LATE_ARRIVAL_SHARE = 0.10;

  /** Share of the samples that belong to the loaned collection: here from ten to four. */
  static final double LOAN_SHARE = 0.07;

  /** Share of the samples that are shot on a second recipe as well. */
  static final double SECOND_RECIPE_SHARE = 0.22;

  /** Share of the samples whose client wants a background other than the recipe's. */
  static final double HOUSE_STYLE_SHARE = 0.55;

  /** Share of the samples whose height is measured by hand. */
  static final double BY_HAND_SHARE = 0.05;

  /** Share of the samples whose height comes from a dimensioning device. */
  static final double BY_DEVICE_SHARE = 0.35;

  /** Share of the articles that have a GTIN. */
  static final double GTIN_SHARE = 0.6;

  /** Turns that R2's plate ring may still run before its service is due. */
  static final int RING_TURNS_LEFT = 20;

  private DemoKnobs() {}

  /** Hands-on times beside changeovers. */
  static Handling handling() {
    return new Handling(
        115,
        45,
        120,
        45,
        30,
        20,
        65,
        18,
        15,
        DemoCrew.only(DemoCrew.HANDLING),
        DemoCrew.only(DemoCrew.HANGING),
        DemoCrew.only(DemoCrew.ELECTRICAL));
  }
}
