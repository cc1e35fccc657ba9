package rigmorrow.app.cli.options;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import picocli.CommandLine.Option;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.runsheet.SheetChoice;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.data.problem.Words;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.shot.Batch;

/** Of which rigs and operators to write; of all when none is named. */
public final class WhoseOptions {
  @Option(
      names = "--rig",
      paramLabel = "ID",
      description = "Only this rig; may be given several times.")
  private List<String> rigs = new ArrayList<>();

  @Option(
      names = "--operator",
      paramLabel = "ID",
      description = "Only this operator; may be given several times.")
  private List<String> operators = new ArrayList<>();

  /**
   * Who was named.
   *
   * @throws RefusedException with every id that the floor does not have
   */
  public SheetChoice of(Batch batch) {
    List<InputProblem> problems = new ArrayList<>();
    check("--rig", rigs, batch.floor().rigs().stream().map(Rig::id).toList(), problems);
    check(
        "--operator",
        operators,
        batch.floor().crew().stream().map(Operator::id).toList(),
        problems);
    if (!problems.isEmpty()) {
      List<String> lines =
          problems.stream()
              .map(
                  problem ->
                      problem.field()
                          + ": there is no '"
                          + problem.value()
                          + "'; accepted: "
                          + problem.accepted())
              .toList();
      throw new RefusedException(String.join("\n", lines), problems);
    }
    return new SheetChoice(new LinkedHashSet<>(rigs), new LinkedHashSet<>(operators));
  }

  private static void check(
      String option, List<String> asked, List<String> known, List<InputProblem> problems) {
    for (String id : new LinkedHashSet<>(asked)) {
      if (!known.contains(id)) {
        String accepted = Words.choice(known, id);
        problems.add(new InputProblem("", "command line", option, id, accepted));
      }
    }
  }
}
