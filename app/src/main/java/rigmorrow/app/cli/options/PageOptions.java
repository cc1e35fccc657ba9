package rigmorrow.app.cli.options;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import picocli.CommandLine.Option;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputProblem;

/** On which paper pages are printed, and how they are written. */
public final class PageOptions {
  @Option(
      names = "--paper",
      paramLabel = "PAPER",
      defaultValue = "a4",
      description = "Paper to print on: a4 or letter. Default: ${DEFAULT-VALUE}.")
  private Paper paper;

  @Option(names = "--overwrite", description = "Replace the file when it exists.")
  private boolean overwrite;

  /**
   * The file, after a look whether it may be written.
   *
   * @param out as it was given on the command line
   * @throws RefusedException when it may not, or when its name says neither PDF nor HTML
   */
  public Path target(Path out, Session session) {
    if (!pdf(out) && !name(out).endsWith(".html") && !name(out).endsWith(".htm")) {
      String accepted = "a name that ends in .pdf or .html";
      throw new RefusedException(
          "--out: '" + out + "' is neither PDF nor HTML; accepted: " + accepted,
          List.of(new InputProblem("", "command line", "--out", out.toString(), accepted)));
    }
    Path file = session.folder().resolve(out);
    OutputFiles.refuseExisting(List.of(file), overwrite);
    return file;
  }

  /** The paper asked for. */
  public Paper paper() {
    return paper;
  }

  /** Writes one of the two, and tells of letters that the PDF cannot show. */
  public void write(Path file, Session session, Supplier<String> html, Supplier<PdfFile> pdf)
      throws IOException {
    if (pdf(file)) {
      PdfFile pages = pdf.get();
      OutputFiles.write(file, pages.bytes());
      if (!pages.note().isEmpty()) {
        session.note(pages.note());
      }
    } else {
      OutputFiles.write(file, html.get());
    }
  }

  private static boolean pdf(Path file) {
    return name(file).endsWith(".pdf");
  }

  private static String name(Path file) {
    return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
  }
}
