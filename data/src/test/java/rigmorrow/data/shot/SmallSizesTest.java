package rigmorrow.data.shot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.shottable.SmallFloor;

/** Sizes that look like another unit, whatever file they came in. */
class SmallSizesTest {

  @Test
  void aListInJsonIsTakenLikeATable() throws InputException {
    List<String> json = ofJson(300, 9, 8);
    List<String> table =
        ReadTable.csv(
                "id,recipe,lengthMm,widthMm,heightMm,offsetMm\n"
                    + "1,spin-36,300,9,30,2\n2,spin-36,300,8,30,2\n")
            .notes()
            .remarks();

    assertThat(json)
        .containsExactly(
            "widthMm: 2 sizes are under 10 mm, such as 9 mm (jobs[0]); check unit and decimal mark");
    assertThat(table).containsExactly(json.get(0).replace("jobs[0]", "row 2, column D"));
  }

  @Test
  void sizesOfTenMillimetresAndOffsetsAreNotTold() throws InputException {
    assertThat(ofJson(10, 10, 10)).isEmpty();
  }

  private static List<String> ofJson(int lengthMm, int firstWidthMm, int secondWidthMm)
      throws InputException {
    String job =
        "{id: '%d', recipe: spin-36, lengthMm: %d, widthMm: %d, heightMm: 30, offsetMm: 2}";
    String yaml =
        "version: 1\ndate: 2026-11-26\ndays: 1\njobs:\n- "
            + job.formatted(1, lengthMm, firstWidthMm)
            + "\n- "
            + job.formatted(2, lengthMm, secondWidthMm);
    return SmallSizes.linesOf(
        ShotJsonReader.read("list.yaml", yaml, Trees.Notation.YAML, SmallFloor.FLOOR));
  }
}
