package rigmorrow.data.cells;

import java.nio.file.Path;

/**
 * What was done to a file of cells that was damaged.
 *
 * @param file which has the good lines only by now
 * @param copy of the file as it was, beside it
 * @param lost lines that were no cells, at least 1
 * @param lines in which cells were looked for
 */
public record Mended(Path file, Path copy, int lost, int lines) {
  /** The same in words, without a full stop. */
  public String words() {
    boolean one = lost == 1;
    return "%s was damaged: %d of %d cells %s lost, and planned anew where %s needed; the file as it was is kept as %s"
        .formatted(
            file.getFileName(),
            lost,
            lines,
            one ? "is" : "are",
            one ? "it is" : "they are",
            copy.getFileName());
  }
}
