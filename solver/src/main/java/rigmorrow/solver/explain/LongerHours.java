package rigmorrow.solver.explain;

import java.time.LocalTime;
import java.util.List;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Rig;

/** Hours that end later. */
final class LongerHours {
  private static final int SECONDS_PER_DAY = 86_400;

  private LongerHours() {}

  static Rig of(Rig rig, int seconds) {
    return new Rig(
        rig.id(),
        rig.name(),
        rig.kind(),
        rig.size(),
        rig.camera(),
        rig.plate(),
        rig.arm(),
        rig.fitted(),
        rig.takesKit(),
        rig.offers(),
        rig.initialSetup(),
        rig.changeoverFactor(),
        rig.twoStepsAtOnce(),
        rig.captureFactors(),
        of(rig.open(), seconds),
        rig.closed(),
        rig.ring(),
        rig.cautions());
  }

  static List<OpenHours> of(List<OpenHours> hours, int seconds) {
    return hours.stream().map(one -> of(one, seconds)).toList();
  }

  /** A span that ends at midnight stays; no span reaches its own start again. */
  private static OpenHours of(OpenHours one, int seconds) {
    if (one.to().equals(LocalTime.MIDNIGHT)) {
      return one;
    }
    int end = one.to().toSecondOfDay() + seconds;
    boolean overnight = one.to().isBefore(one.from());
    if (overnight && end >= one.from().toSecondOfDay()) {
      return one;
    }
    LocalTime to = end >= SECONDS_PER_DAY ? LocalTime.MIDNIGHT : LocalTime.ofSecondOfDay(end);
    return new OpenHours(one.days(), one.from(), to);
  }
}
