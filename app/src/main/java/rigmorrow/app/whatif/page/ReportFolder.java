package rigmorrow.app.whatif.page;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.print.Paper;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.report.Json;
import rigmorrow.app.whatif.Compared;
import rigmorrow.app.whatif.WhatIfCsv;
import rigmorrow.app.whatif.WhatIfJson;

/** The folder that a comparison is written to: its cells, and reports made of them. */
public final class ReportFolder {
  private static final String CELLS = "cells.csv";

  /** Kinds of report, each with its file. */
  public enum Report {
    /** For a browser. */
    HTML("report.html", "text/html"),
    /** For paper. */
    PDF("report.pdf", "application/pdf"),
    /** All figures for spreadsheets. */
    CSV("summary.csv", "text/csv"),
    /** All figures for programs. */
    JSON("summary.json", "application/json");

    private final String file;
    private final String contentType;

    Report(String file, String contentType) {
      this.file = file;
      this.contentType = contentType;
    }

    /** What the file is called. */
    public String fileName() {
      return file;
    }

    /** Its media type. */
    public String contentType() {
      return contentType;
    }

    /** The kind with that name of a file, if there is one. */
    public static Optional<Report> of(String name) {
      return Stream.of(values()).filter(one -> one.file.equals(name)).findFirst();
    }

    /**
     * The file.
     *
     * @param compared at least one scenario of which can be compared already
     * @param asked where its reader can ask for more
     */
    public Made made(Compared compared, AskedBy asked) {
      return switch (this) {
        case HTML -> Made.of(new ReportPage(compared, asked, Paper.A4).html());
        case PDF -> {
          PdfFile pdf = new ReportPage(compared, asked, Paper.A4).pdf();
          yield new Made(pdf.bytes(), pdf.note());
        }
        case CSV -> Made.of(WhatIfCsv.of(compared));
        case JSON -> Made.of(Json.text(WhatIfJson.of(compared)) + "\n");
      };
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /**
   * A report.
   *
   * @param bytes of its file
   * @param note what the user should know of it; empty when there is nothing
   */
  public record Made(byte[] bytes, String note) {
    private static Made of(String text) {
      return new Made(text.getBytes(StandardCharsets.UTF_8), "");
    }
  }

  private final Path path;
  private final Set<Report> reports;

  /**
   * @param path of the folder
   * @param reports to write
   */
  public ReportFolder(Path path, Set<Report> reports) {
    this.path = path;
    this.reports = EnumSet.copyOf(reports);
  }

  /** The file of the cells; its folder is made when it is not there. */
  public Path cells() throws IOException {
    Files.createDirectories(path);
    return cellsFile();
  }

  /** The file of the cells, whether or not it is there. */
  public Path cellsFile() {
    return path.resolve(CELLS);
  }

  /**
   * Looks whether the reports may be written. Where there are cells the reports beside them were
   * made of them and may be made anew.
   */
  public void refuseOthers(boolean overwrite) throws IOException {
    boolean ours = Files.isRegularFile(path.resolve(CELLS));
    OutputFiles.refuseExisting(
        reports.stream().map(report -> path.resolve(report.file)).toList(), ours || overwrite);
    if (overwrite) {
      Files.deleteIfExists(path.resolve(CELLS));
    }
  }

  /**
   * Writes the reports of the command.
   *
   * @return what the user should know of them; empty when there is nothing
   */
  public String write(Compared compared) throws IOException {
    String note = "";
    for (Report report : reports) {
      Made made = report.made(compared, AskedBy.COMMAND);
      OutputFiles.write(path.resolve(report.file), made.bytes());
      note += made.note();
    }
    return note;
  }

  /** Names of all files, in the order they are written. */
  public List<String> names() {
    List<String> names = new ArrayList<>(List.of(CELLS));
    reports.forEach(report -> names.add(report.file));
    return names;
  }
}
