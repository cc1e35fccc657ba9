package rigmorrow.model.outside;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The page that lists every check from outside. Each module's tests own one section of it: they
 * hold it against what they get, and write it when they are asked to.
 */
public final class OutsidePage {
  private static final String REWRITE = "rigmorrow.rewrite";
  private static final String HEADING = "## ";
  private static final List<String> TABLE_HEAD =
      List.of("", "| what | source | expected | ours | test |", "|---|---|---|---|---|");

  private OutsidePage() {}

  /**
   * Fails when a check does, and when a module's section is not what its checks give today. Rows of
   * checks that are skipped are left as they stand.
   */
  public static void holdsSection(String module, List<OutsideCheck> checks) throws IOException {
    holdsSection(page(), module, checks, Boolean.getBoolean(REWRITE));
  }

  static void holdsSection(Path page, String module, List<OutsideCheck> checks, boolean rewrite)
      throws IOException {
    checks.stream().filter(OutsideCheck::available).forEach(OutsideCheck::verify);
    assertThat(checks).extracting(OutsideCheck::key).doesNotHaveDuplicates();
    List<String> lines = Files.readAllLines(page);
    int start = lines.indexOf(HEADING + module);
    int end = start < 0 ? lines.size() : end(lines, start + 1);
    List<String> committed = start < 0 ? List.of() : withoutBlankEnd(lines.subList(start, end));
    List<String> now = section(module, checks, committed);
    if (rewrite) {
      List<String> rewritten = withoutBlankEnd(lines.subList(0, start < 0 ? end : start));
      rewritten.add("");
      rewritten.addAll(now);
      rewritten.add("");
      rewritten.addAll(lines.subList(end, lines.size()));
      Files.write(page, withoutBlankEnd(rewritten));
      return;
    }
    assertThat(committed)
        .as("%s, section %s; the page says how to write it anew", page.getFileName(), module)
        .isEqualTo(now);
  }

  private static List<String> section(
      String module, List<OutsideCheck> checks, List<String> committed) {
    List<String> section = new ArrayList<>();
    section.add(HEADING + module);
    section.addAll(TABLE_HEAD);
    for (OutsideCheck check : checks) {
      if (check.available()) {
        section.add(check.row());
      } else {
        committed.stream().filter(row -> row.startsWith(check.key())).forEach(section::add);
      }
    }
    return section;
  }

  private static List<String> withoutBlankEnd(List<String> lines) {
    List<String> kept = new ArrayList<>(lines);
    while (!kept.isEmpty() && kept.get(kept.size() - 1).isBlank()) {
      kept.remove(kept.size() - 1);
    }
    return kept;
  }

  private static int end(List<String> lines, int from) {
    for (int line = from; line < lines.size(); line++) {
      if (lines.get(line).startsWith(HEADING)) {
        return line;
      }
    }
    return lines.size();
  }

  /** Tests run in the folder of their module, or in the project's from within an editor. */
  private static Path page() {
    Path here = Path.of("").toAbsolutePath();
    Path root = Files.isDirectory(here.resolve("benchmarks")) ? here : here.getParent();
    return root.resolve("benchmarks").resolve("OUTSIDE-CHECKS.md");
  }
}
