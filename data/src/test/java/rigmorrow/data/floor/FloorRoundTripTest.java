package rigmorrow.data.floor;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigmorrow.data.json.Trees;
import rigmorrow.data.samples.Samples;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.OpenHours;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.floor.Weights;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.Setup;

class FloorRoundTripTest {
  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void readsWhatItWrote(Trees.Notation notation) throws Exception {
    Floor floor = Samples.tinyFloor();
    String text = FloorWriter.write(floor, notation);
    Floor again = FloorReader.read("again", text, notation);
    assertThat(again).isEqualTo(floor);
    assertThat(FloorWriter.write(again, notation)).isEqualTo(text);
  }

  /** Textbook problems have neither attributes nor changeovers nor kit. */
  @ParameterizedTest
  @EnumSource(Trees.Notation.class)
  void readsAFloorWithoutSetups(Trees.Notation notation) throws Exception {
    Floor bare = bare(Samples.tinyFloor());
    String written = FloorWriter.write(bare, notation);
    assertThat(FloorReader.read("again", written, notation)).isEqualTo(bare);
  }

  private static Floor bare(Floor floor) {
    var rig = floor.rigs().get(1);
    var bareRig =
        new Rig(
            rig.id(),
            rig.name(),
            rig.kind(),
            rig.size(),
            rig.camera(),
            rig.plate(),
            rig.arm(),
            List.of(),
            Set.of(),
            Map.of(),
            Setup.ANY,
            0.1 + 0.2,
            false,
            Map.of("spin", 1.0 / 3),
            List.of(new OpenHours(Set.of(), LocalTime.MIDNIGHT, LocalTime.of(23, 59, 59))),
            List.of(),
            null,
            List.of());
    var recipe = floor.recipes().get(0);
    var bareRecipe =
        new Recipe(
            recipe.id(),
            recipe.label(),
            List.of(),
            List.of(),
            0,
            1,
            Lighting.EITHER,
            Setup.ANY,
            Set.of(),
            Set.of(),
            false,
            0,
            Map.of(rig.id(), 71));
    return new Floor(
        floor.name(),
        floor.zone(),
        List.of(bareRig),
        List.of(),
        List.of(),
        new ArrayList<>(floor.crew()),
        List.of(),
        List.of(),
        List.of(bareRecipe),
        List.of(),
        floor.handling(),
        floor.physics(),
        new Weights(0, 0, 1, 1),
        FloorReader.NO_COSTS);
  }
}
