package rigmorrow.model.work;

import java.util.List;
import rigmorrow.model.ItemBuilder;
import rigmorrow.model.outside.Figure;
import rigmorrow.model.outside.OutsideCheck;

/** What daily work says about capture times. */
public final class CaptureChecks {
  private CaptureChecks() {}

  /** The list. */
  public static List<OutsideCheck> all() {
    return List.of(
        OutsideCheck.of(
            "36 frames in about 20 s on a table that could do it in under 4 s",
            "common practice",
            CaptureModelTest.class,
            CaptureChecks::thirtySixFrames));
  }

  private static List<Figure> thirtySixFrames() {
    double table =
        CaptureModelTest.seconds(
            CaptureModelTest.INSTANT,
            CaptureModelTest.continuous(CaptureModelTest.TURNING),
            new ItemBuilder());
    double strobes =
        CaptureModelTest.seconds(
            CaptureModelTest.STROBE_055,
            CaptureModelTest.strobe(CaptureModelTest.TURNING).exposureSeconds(0.0001),
            new ItemBuilder());
    double stopping =
        CaptureModelTest.seconds(
            CaptureModelTest.STROBE_055,
            CaptureModelTest.strobe(CaptureModelTest.STOP_AND_GO),
            new ItemBuilder());
    return List.of(
        Figure.between("table alone", 0, 4, table),
        Figure.between("strobes while it turns", 19, 22, strobes),
        Figure.between("strobes with stop and go", 19, 22, stopping));
  }
}
