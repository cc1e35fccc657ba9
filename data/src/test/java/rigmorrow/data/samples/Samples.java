package rigmorrow.data.samples;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import rigmorrow.data.floor.FloorReader;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.scenario.ScenarioReader;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.scenario.Study;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.ShotList;

/** The samples that go with the program, as tests use them. */
public final class Samples {
  private Samples() {}

  /** The text of a sample by its file name. */
  public static String text(String name) {
    try (InputStream in = Samples.class.getResourceAsStream("/samples/" + name)) {
      return new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The small floor; it gives every field of a floor file at least once. */
  public static Floor tinyFloor() {
    try {
      String name = "tiny-floor.yaml";
      return FloorReader.read(name, text(name), Trees.Notation.YAML);
    } catch (InputException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The small shot list for the small floor; it gives every field at least once. */
  public static ShotList tinyShots() {
    try {
      String name = "tiny-shots.json";
      return ShotJsonReader.read(name, text(name), Trees.Notation.JSON, tinyFloor());
    } catch (InputException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The small floor with its shot list. */
  public static Batch tinyBatch() {
    return new Batch(tinyFloor(), tinyShots());
  }

  /** The scenarios for the small floor; they give every field at least once. */
  public static Study tinyScenarios() {
    try {
      String name = "tiny-scenarios.yaml";
      return ScenarioReader.read(name, text(name), Trees.Notation.YAML, List.of(tinyBatch()));
    } catch (InputException e) {
      throw new IllegalStateException(e);
    }
  }
}
