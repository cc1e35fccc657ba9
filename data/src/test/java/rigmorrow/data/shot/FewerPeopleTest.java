package rigmorrow.data.shot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import rigmorrow.data.json.Trees;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.shotjson.ShotJsonReader;
import rigmorrow.data.shottable.ReadTable;
import rigmorrow.data.shottable.SmallFloor;

/** Where a plan has fewer people than the list asks for, whatever file it came in. */
class FewerPeopleTest {
  private static final String HEADER = "Article,Recipe,Persons,Holder\n";

  @Test
  void namesRowAndFieldAndValueAndWhatIsPlanned() throws InputException {
    String rows = "1,spin-36,3,yes\n2,spin-36,2,yes\n3,spin-36,2,no\n4,spin-36,3,yes\n";

    assertThat(ReadTable.csv(HEADER + rows).notes().remarks())
        .containsExactly(
            "Persons 3: a plan takes 2 people, since the holder counts as one"
                + " (row 2, column C; row 5, column C)",
            "Persons 2: a plan takes 1 person, or 2 where the weight asks for them, since the holder"
                + " counts as one (row 3, column C)");
  }

  @Test
  void nothingIsToldWhereAsManyAreThereAsTheListSays() throws InputException {
    String rows = "1,spin-36,1,yes\n2,spin-36,,yes\n3,spin-36,2,no\n4,spin-36,3,no\n";
    assertThat(ReadTable.csv(HEADER + rows).notes().remarks()).isEmpty();
  }

  @Test
  void ofVeryManyRowsTheFirstAreNamed() throws InputException {
    StringBuilder rows = new StringBuilder();
    IntStream.rangeClosed(1, 15).forEach(i -> rows.append(i).append(",spin-36,3,yes\n"));
    assertThat(ReadTable.csv(HEADER + rows).notes().remarks())
        .singleElement()
        .asString()
        .contains("row 13, column C; and 3 more)")
        .doesNotContain("row 14");
  }

  @Test
  void aListInYamlIsTakenLikeATable() throws InputException {
    String yaml =
        "version: 1\ndate: 2026-11-26\ndays: 1\njobs:\n"
            + "- {id: a, recipe: spin-36, handsNeeded: 3, holder: true}\n"
            + "- {id: b, recipe: spin-36, handsNeeded: 2}\n";
    List<String> lines =
        FewerPeople.linesOf(
            ShotJsonReader.read("list.yaml", yaml, Trees.Notation.YAML, SmallFloor.FLOOR));
    assertThat(lines)
        .containsExactly(
            "handsNeeded 3: a plan takes 2 people, since the holder counts as one (jobs[0])");
  }
}
