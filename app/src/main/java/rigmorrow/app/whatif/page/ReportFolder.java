package rigmorrow.app.whatif.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
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
    HTML("report.html"),
    /** For paper. */
    PDF("report.pdf"),
    /** All figures for spreadsheets. */
    CSV("summary.csv"),
    /** All figures for programs. */
    JSON("summary.json");

    private final String file;

    Report(String file) {
      this.file = file;
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
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
   * Writes the reports.
   *
   * @return what the user should know of them; empty when there is nothing
   */
  public String write(Compared compared) throws IOException {
    ReportPage page = new ReportPage(compared, Paper.A4);
    String note = "";
    for (Report report : reports) {
      Path file = path.resolve(report.file);
      switch (report) {
        case HTML -> OutputFiles.write(file, page.html());
        case PDF -> {
          PdfFile pdf = page.pdf();
          OutputFiles.write(file, pdf.bytes());
          note = pdf.note();
        }
        case CSV -> OutputFiles.write(file, WhatIfCsv.of(compared));
        case JSON -> OutputFiles.write(file, Json.text(WhatIfJson.of(compared)) + "\n");
      }
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
