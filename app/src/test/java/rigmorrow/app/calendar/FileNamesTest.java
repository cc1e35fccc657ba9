package rigmorrow.app.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FileNamesTest {

  @Test
  void keepsPlainIds() {
    assertThat(names(List.of("R1", "table-2.b")))
        .containsExactly("rig-R1.ics", "rig-table-2.b.ics");
  }

  @Test
  void noIdLeavesTheFolderOrHidesAFile() {
    List<String> odd =
        List.of("../../etc", "a/b", "a\\b", "C:", "..", ".", "CON", "x\u0000y", "a b", "Tisch 1 ä");

    assertThat(names(odd)).allMatch(name -> name.matches("rig-[A-Za-z0-9._-]+\\.ics"));
    assertThat(names(odd)).doesNotContain("CON.ics").doesNotHaveDuplicates();
  }

  @Test
  void idsThatLookAlikeGetNamesOfTheirOwn() {
    List<String> names = names(List.of("a/b", "a_b", "a b", "A_B", "a_b-2"));

    assertThat(names.get(0)).isEqualTo("rig-a_b.ics");
    assertThat(names.stream().map(name -> name.toLowerCase(Locale.ROOT)))
        .hasSize(5)
        .doesNotHaveDuplicates();
  }

  @Test
  void aLongIdIsCutAndStaysUnique() {
    List<String> names = names(List.of("x".repeat(300), "x".repeat(301)));

    assertThat(names).doesNotHaveDuplicates().allMatch(name -> name.length() <= 80);
  }

  private static List<String> names(List<String> ids) {
    FileNames names = new FileNames("rig-", ids, ".ics");
    return ids.stream().map(names::of).toList();
  }
}
