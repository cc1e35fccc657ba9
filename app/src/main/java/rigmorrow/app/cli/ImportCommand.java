package rigmorrow.app.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import rigmorrow.app.files.AnnotatedCopy;
import rigmorrow.app.files.BatchReading;
import rigmorrow.app.files.Inputs;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.files.ShotListOutput;
import rigmorrow.app.files.ShotListSource;
import rigmorrow.app.report.ImportReport;
import rigmorrow.app.report.Json;
import rigmorrow.app.terminal.ExitCodes;
import rigmorrow.app.terminal.Session;
import rigmorrow.data.problem.InputException;
import rigmorrow.data.problem.InputProblem;

/** Reads and checks a shot list, and writes it clean. */
@Command(
    name = "import",
    description = {
      "Read and check a shot list, say how it was understood, and write it clean.",
      "Without --out it only checks. Problems are told all at once; nothing is guessed."
    },
    footer = {
      "Examples:",
      "  rigmorrow import floor.yaml list.xlsx                       only check",
      "  rigmorrow import floor.yaml list.xlsx --annotated mend.xlsx",
      "  rigmorrow import floor.yaml list.csv --sizes device.csv --out list.json"
    })
final class ImportCommand implements Callable<Integer> {
  @Mixin private ShotListOptions files;

  @Option(
      names = "--annotated",
      paramLabel = "FILE",
      description =
          "When there are problems: a copy of the table that tells them beside its rows, to be"
              + " mended and read again.")
  private @Nullable Path annotated;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      description = "Write the list: .json, .yaml or .csv. Default: nowhere.")
  private @Nullable Path out;

  @Option(
      names = "--overwrite",
      description = "Replace files that are there already; never one that is read.")
  private boolean overwrite;

  @Mixin private CommonOptions common;

  private final Session session;

  ImportCommand(Session session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException, InputException {
    ShotListSource source = files.source();
    AnnotatedCopy copy = annotated == null ? null : copy(source, annotated);
    ShotListOutput output = out == null ? null : new ShotListOutput(session.folder().resolve(out));
    refuse(source, copy, output);
    BatchReading reading = read(source, copy);
    if (output != null) {
      output.write(reading.batch().shotList());
    }
    String written = out == null ? null : out.toString();
    ImportReport report =
        new ImportReport(reading.batch(), reading.notes(), reading.remarks(), reading.sizes());
    if (common.json) {
      session.print(List.of(Json.text(report.document(written))));
    } else {
      session.print(report.lines(session.console()));
    }
    session.note(written == null ? "only checked; --out writes the list" : "written: " + written);
    return ExitCodes.DONE;
  }

  private AnnotatedCopy copy(ShotListSource source, Path file) {
    Path list = session.folder().resolve(source.shotList());
    return new AnnotatedCopy(list, source.table(), session.folder().resolve(file));
  }

  /** Looks before any work is done whether everything may be written. */
  private void refuse(
      ShotListSource source, @Nullable AnnotatedCopy copy, @Nullable ShotListOutput output)
      throws IOException {
    List<Path> targets = new ArrayList<>();
    if (output != null) {
      output.refuseOtherEndings();
      targets.add(output.file());
    }
    if (copy != null) {
      copy.refuseOtherKinds();
      targets.add(copy.file());
    }
    ShotListSource.SizesSource sizes = source.sizes();
    List<Path> taken =
        new ArrayList<>(
            Stream.of(source.floor(), source.shotList(), sizes == null ? null : sizes.file())
                .filter(Objects::nonNull)
                .map(session.folder()::resolve)
                .toList());
    for (Path target : targets) {
      for (Path other : taken) {
        if (same(target, other)) {
          String accepted = "another name; a file that is read is never replaced";
          throw new RefusedException(
              target + ": is read or written besides; accepted: " + accepted,
              List.of(new InputProblem(target.toString(), "file", "", "in use", accepted)));
        }
      }
      taken.add(target);
    }
    OutputFiles.refuseExisting(targets, overwrite);
  }

  private static boolean same(Path one, Path other) throws IOException {
    return (Files.exists(one) && Files.exists(other))
        ? Files.isSameFile(one, other)
        : one.toAbsolutePath().normalize().equals(other.toAbsolutePath().normalize());
  }

  private BatchReading read(ShotListSource source, @Nullable AnnotatedCopy copy)
      throws IOException, InputException {
    try {
      BatchReading reading = new Inputs(session).read(source, null);
      if (copy != null) {
        session.note("no annotated copy: there are no problems");
      }
      return reading;
    } catch (InputException e) {
      if (copy != null) {
        String reason = copy.write(e.problems());
        session.note(reason == null ? "annotated copy written: " + annotated : reason);
      }
      throw e;
    }
  }
}
