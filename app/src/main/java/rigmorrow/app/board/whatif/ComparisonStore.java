package rigmorrow.app.board.whatif;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import rigmorrow.app.board.scenario.ScenarioDocument;
import rigmorrow.app.files.OutputFiles;
import rigmorrow.app.whatif.Comparison;
import rigmorrow.app.whatif.RunSettings;
import rigmorrow.data.InputFile;
import rigmorrow.data.cells.CellFile;
import rigmorrow.data.problem.InputException;

/**
 * The folder in which a board keeps what it compares: the scenarios that were chosen last, how they
 * were compared last, and the cells of all comparisons, one file for each build of the program and
 * each effort. So whoever comes back to a scenario finds its plans again, whatever it is compared
 * with. Files of an earlier program are left as they are.
 */
final class ComparisonStore {
  private static final Logger LOG = LoggerFactory.getLogger(ComparisonStore.class);
  private static final String SCENARIOS = "scenarios.yaml";
  private static final String LAST = "last.json";
  private static final String CELLS = "cells-" + "?".repeat(16) + ".csv";
  private static final ObjectMapper MAPPER = new ObjectMapper();

  private final Path folder;

  /**
   * @param folder made when there is something to keep
   */
  ComparisonStore(Path folder) {
    this.folder = folder;
  }

  /**
   * What is not in the scenarios.
   *
   * @param name of the scenarios' file, to be shown
   * @param seconds for each plan; null where steps stop it
   */
  private record Last(
      String name,
      @Nullable Integer seconds,
      long steps,
      int seeds,
      List<Double> demand,
      boolean again,
      boolean oneMore) {

    RunSettings settings(int cores) {
      Duration time = seconds == null ? null : Duration.ofSeconds(seconds);
      return new RunSettings(time, steps, seeds, cores, demand, again, oneMore);
    }
  }

  /** The scenarios that were chosen last; nothing where there are none. */
  Optional<InputFile> scenarios() throws IOException, InputException {
    Path file = folder.resolve(SCENARIOS);
    return Files.exists(file)
        ? Optional.of(new InputFile(SCENARIOS, InputFile.read(file).bytes()))
        : Optional.empty();
  }

  /** What they were called. */
  String name() {
    return last().map(Last::name).orElse(SCENARIOS);
  }

  /**
   * How they were compared last.
   *
   * @param cores of this machine
   */
  Optional<RunSettings> settings(int cores) {
    return last().map(last -> last.settings(cores));
  }

  private Optional<Last> last() {
    Path file = folder.resolve(LAST);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    try {
      Last last = MAPPER.readValue(file.toFile(), Last.class);
      last.settings(1); // Within its bounds.
      return Optional.of(last);
    } catch (IOException | RuntimeException e) {
      // It only saves somebody from choosing again.
      LOG.warn("{} cannot be read: {}", file, e.toString());
      return Optional.empty();
    }
  }

  /** Keeps what was chosen. */
  void keep(ScenarioDocument document, RunSettings settings) throws IOException {
    Duration time = settings.time();
    Last last =
        new Last(
            document.name(),
            time == null ? null : (int) time.toSeconds(),
            settings.steps(),
            settings.seeds(),
            settings.demandPercents(),
            settings.again(),
            settings.oneMore());
    try {
      OutputFiles.write(folder.resolve(SCENARIOS), document.text());
      OutputFiles.write(folder.resolve(LAST), MAPPER.writeValueAsString(last));
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a plain record cannot be written", e);
    }
  }

  /**
   * Where cells made as this comparison makes them are kept; its folder is made when it is not
   * there.
   */
  Path cells(Comparison comparison) throws IOException {
    Files.createDirectories(folder);
    return folder.resolve("cells-" + comparison.head().id() + ".csv");
  }

  /**
   * Moves a file of cells out of the way, to a name that nothing has yet.
   *
   * @return where it is now
   */
  Path putAside(Path file) throws IOException {
    return Files.move(file, CellFile.besides(file));
  }

  /**
   * A file of cells that were made as this comparison makes them, but by another program or build;
   * nothing where there is none.
   */
  Optional<Path> byAnotherProgram(Comparison comparison) {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, CELLS)) {
      List<Path> others = new ArrayList<>();
      for (Path file : files) {
        if (CellFile.head(file).filter(comparison.head()::sameByAnotherProgram).isPresent()) {
          others.add(file);
        }
      }
      return others.stream().sorted().findFirst();
    } catch (IOException | DirectoryIteratorException e) {
      // It is only told; who wants the plans makes them anew either way.
      LOG.warn("{} cannot be looked through: {}", folder, e.toString());
      return Optional.empty();
    }
  }
}
