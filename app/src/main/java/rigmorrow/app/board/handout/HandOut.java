package rigmorrow.app.board.handout;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import rigmorrow.app.board.desk.BoardState;
import rigmorrow.app.board.desk.BoardState.Handed;
import rigmorrow.app.calendar.CalendarFile;
import rigmorrow.app.calendar.Calendars;
import rigmorrow.app.labels.LabelGrid;
import rigmorrow.app.labels.Labels;
import rigmorrow.app.print.Paper;
import rigmorrow.app.runsheet.RunSheets;
import rigmorrow.app.runsheet.SheetChoice;
import rigmorrow.data.json.Trees;
import rigmorrow.data.plan.PlanCsvWriter;
import rigmorrow.data.plan.PlanJsonWriter;
import rigmorrow.data.shotjson.ShotJsonWriter;

/** A kind of file that is made of a plan. */
public enum HandOut {
  /** Run sheets to be read in a browser. */
  RUN_SHEETS_HTML("run-sheets.html", "text/html") {
    @Override
    public byte[] bytes(Handed handed, Instant stamp) {
      return utf8(sheets(handed).html());
    }
  },
  /** Run sheets to be printed. */
  RUN_SHEETS_PDF("run-sheets.pdf", "application/pdf") {
    @Override
    public byte[] bytes(Handed handed, Instant stamp) {
      return sheets(handed).pdf().bytes();
    }
  },
  /** The plan for spreadsheets. */
  PLAN_CSV("plan.csv", "text/csv") {
    @Override
    public byte[] bytes(Handed handed, Instant stamp) {
      return utf8(
          PlanCsvWriter.write(
              handed.state().plan(), handed.state().batch().shotList(), handed.stamp().whole()));
    }
  },
  /** The plan as a file that our commands read. */
  PLAN_JSON("plan.json", "application/json") {
    @Override
    public byte[] bytes(Handed handed, Instant stamp) {
      return utf8(PlanJsonWriter.write(handed.state().plan()));
    }
  },
  /** The shot list with pins, as a file that our commands read. */
  SHOT_LIST("shot-list.json", "application/json") {
    @Override
    public byte[] bytes(Handed handed, Instant stamp) {
      return utf8(ShotJsonWriter.write(handed.state().batch().shotList(), Trees.Notation.JSON));
    }
  },
  /** A calendar for each rig and operator. */
  CALENDARS("calendars.zip", "application/zip") {
    @Override
    public byte[] bytes(Handed handed, Instant stamp) {
      return zip(handed, stamp);
    }
  },
  /** Labels for the samples. */
  LABELS("labels.pdf", "application/pdf") {
    @Override
    public byte[] bytes(Handed handed, Instant stamp) {
      LabelGrid grid = new LabelGrid(Paper.A4, LABEL_COLUMNS, LABEL_ROWS);
      BoardState state = handed.state();
      return new Labels(
              state.batch().shotList(), state.batch().floor().name(), handed.stamp(), grid, LARGER)
          .pdf()
          .bytes();
    }
  };

  private static final int LABEL_COLUMNS = 3;
  private static final int LABEL_ROWS = 7;
  private static final String LARGER = "larger labels, which the command 'rigmorrow labels' prints";

  private final String fileName;
  private final String contentType;

  HandOut(String fileName, String contentType) {
    this.fileName = fileName;
    this.contentType = contentType;
  }

  /** The kind with that name of a file, if there is one. */
  public static Optional<HandOut> of(String name) {
    return Stream.of(values()).filter(one -> one.fileName.equals(name)).findFirst();
  }

  /** What the file is called. */
  public String fileName() {
    return fileName;
  }

  /** Its media type. */
  public String contentType() {
    return contentType;
  }

  /** True for what a browser shows by itself. */
  public boolean shown() {
    return this == RUN_SHEETS_HTML;
  }

  /**
   * The name under which a file is saved: it tells the day and the version.
   *
   * @param version 0 for the plan there is
   */
  public String savedAs(BoardState state, int version) {
    int dot = fileName.lastIndexOf('.');
    String which = version == 0 ? "" : "-version-" + version;
    return fileName.substring(0, dot)
        + "-"
        + state.batch().shotList().date()
        + which
        + fileName.substring(dot);
  }

  /**
   * The file.
   *
   * @param handed the plan, and which one it is
   * @param stamp when it is made; a later calendar counts more
   */
  public abstract byte[] bytes(Handed handed, Instant stamp);

  private static RunSheets sheets(Handed handed) {
    BoardState state = handed.state();
    return new RunSheets(state.batch(), state.plan(), handed.stamp(), Paper.A4, SheetChoice.ALL);
  }

  private static byte[] zip(Handed handed, Instant stamp) {
    BoardState state = handed.state();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (CalendarFile file :
          new Calendars(state.batch(), state.plan(), handed.stamp(), stamp)
              .files(SheetChoice.ALL)) {
        ZipEntry entry = new ZipEntry(file.name());
        entry.setTimeLocal(stamp.atZone(ZoneOffset.UTC).toLocalDateTime());
        zip.putNextEntry(entry);
        zip.write(utf8(file.text()));
      }
    } catch (IOException e) {
      throw new UncheckedIOException("an archive in memory cannot be written", e);
    }
    return bytes.toByteArray();
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
