package rigmorrow.app.terminal;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class TextTableTest {

  @Test
  void alignsItsColumns() {
    TextTable table = new TextTable(0, List.of("rig", ">min"));
    table.row("R1", "7");
    table.row("Big one", "120");
    assertThat(table.lines("", 80)).containsExactly("rig      min", "R1         7", "Big one  120");
  }

  @Test
  void cutsOnlyTheElasticColumn() {
    TextTable table = new TextTable(1, List.of("", "", ""));
    table.row("08:00", "A very long name of a very ordinary lamp", "late 12 min");
    assertThat(table.lines("  ", 40)).containsExactly("  08:00  A very long name…   late 12 min");
  }

  @Test
  void refusesARowOfAnotherLength() {
    TextTable table = new TextTable(0, List.of("a", "b"));
    assertThatThrownBy(() -> table.row("only one")).isInstanceOf(IllegalArgumentException.class);
  }
}
