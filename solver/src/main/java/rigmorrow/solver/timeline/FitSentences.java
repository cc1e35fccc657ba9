package rigmorrow.solver.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rigmorrow.model.fit.FitReason;
import rigmorrow.model.fit.JobFit;
import rigmorrow.model.fit.RigFit;

/** Says in sentences why no rig takes a job. */
final class FitSentences {
  private FitSentences() {}

  static List<String> noRig(JobFit fit) {
    List<String> sentences = new ArrayList<>();
    sentences.add("No rig can take it.");
    fit.nearestMiss()
        .ifPresent(miss -> sentences.add("Nearest is " + miss.rig() + ": " + reasons(miss) + "."));
    return sentences;
  }

  private static String reasons(RigFit fit) {
    return fit.reasons().stream().map(FitSentences::reason).collect(Collectors.joining("; "));
  }

  private static String reason(FitReason reason) {
    return reason.rule().word() + ": needs " + reason.needed() + ", offers " + reason.offered();
  }
}
