package rigmorrow.app.runsheet.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rigmorrow.model.recipe.FrameRow;
import rigmorrow.model.recipe.Lighting;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.recipe.Still;
import rigmorrow.model.setup.Setup;

class RecipeTextTest {

  @Test
  void countsRowsStillsAndFocusBrackets() {
    assertThat(counts(List.of(36), 0, 1)).isEqualTo("1 row of 36 frames");
    assertThat(counts(List.of(36, 36, 36), 0, 2))
        .isEqualTo("3 rows of 36 frames, 2 focus brackets each");
    assertThat(counts(List.of(36, 24, 1), 0, 1)).isEqualTo("3 rows of 36, 24 and 1 frame");
    assertThat(counts(List.of(24), 1, 1)).isEqualTo("1 row of 24 frames and 1 still");
    assertThat(counts(List.of(), 6, 12)).isEqualTo("6 stills, 12 focus brackets each");
  }

  @Test
  void aRecipeThatIsOnlyMeasuredCountsNothing() {
    assertThat(counts(List.of(), 0, 1)).isEqualTo("pictures as set up on the rig");
  }

  @Test
  void saysByWhichLight() {
    assertThat(RecipeText.light(recipe(List.of(1), 0, 1, Lighting.STROBE)))
        .isEqualTo("Strobe light");
    assertThat(RecipeText.light(recipe(List.of(1), 0, 1, Lighting.CONTINUOUS)))
        .isEqualTo("Continuous light");
    assertThat(RecipeText.light(recipe(List.of(1), 0, 1, Lighting.EITHER)))
        .isEqualTo("Strobe or continuous light");
  }

  private static String counts(List<Integer> frames, int stills, int brackets) {
    return RecipeText.counts(recipe(frames, stills, brackets, Lighting.STROBE));
  }

  private static Recipe recipe(List<Integer> frames, int stills, int brackets, Lighting lighting) {
    return new Recipe(
        "r",
        "Recipe",
        frames.stream().map(count -> new FrameRow(15, count, 360, false)).toList(),
        IntStream.range(0, stills).mapToObj(number -> new Still(10, number)).toList(),
        0.01,
        brackets,
        lighting,
        Setup.ANY,
        Set.of(),
        Set.of(),
        false,
        60,
        Map.of("R1", 60));
  }
}
