package rigmorrow.app.explain;

import java.util.List;
import rigmorrow.app.report.Durations;
import rigmorrow.model.explain.JobRules;
import rigmorrow.model.explain.Wait;

/** Says for what a rig waited on account of a job. */
final class WaitSentences {
  private final Names names;
  private final JobRules rules;

  WaitSentences(Names names, JobRules rules) {
    this.names = names;
    this.rules = rules;
  }

  /** A sentence for each thing and time; one for all pieces that follow each other at once. */
  List<String> of(List<Wait> waits) {
    return Wait.joined(waits).stream().map(this::of).toList();
  }

  private String of(Wait wait) {
    String until = names.times().at(wait.span().end());
    String what = what(wait);
    return wait.span().start() == 0
        ? "At first it waited until " + until + " for " + what + "."
        : "It waited %s (%s) for %s."
            .formatted(
                Durations.beside(wait.span().start(), wait.span().end()),
                names.times().span(wait.span().start(), wait.span().end()),
                what);
  }

  private String what(Wait wait) {
    String sample = "its sample";
    if (!rules.sampleSharedWith().isEmpty()) {
      sample += ", shared with " + Names.listed(rules.sampleSharedWith(), "and");
    }
    return switch (wait.reason()) {
      case ARRIVAL -> "its sample to arrive";
      case PINNED_START -> "its pinned start";
      case SAMPLE -> sample;
      case KIT -> names.kits(wait.kits()) + onRigs(wait);
      case KIT_ON_A_BUSY_RIG ->
          names.kits(wait.kits())
              + onRigs(wait)
              + ", to be taken off "
              + (wait.rigs().size() == 1 ? "there" : "another rig")
              + ", between two jobs";
      case KIT_TAKEN_OFF ->
          names.kits(wait.kits()) + " to be taken off the rig, which stands still meanwhile";
      case SAMPLE_AND_KIT -> names.kits(wait.kits()) + onRigs(wait) + " and " + sample;
      case CREW_TO_START -> "people to start on it";
      case RIG_HOURS -> "the rig to be open for long enough";
      case CREW_TO_LOAD -> "people to load it";
      case WARM_UP -> "the end of the warm-up";
      case CREW_TO_UNLOAD -> "people to unload it";
    };
  }

  private String onRigs(Wait wait) {
    List<String> rigs = wait.rigs().stream().map(names::place).toList();
    String which = wait.kits().size() == 1 ? ", which was on " : ", which were on ";
    return rigs.isEmpty() ? "" : which + Names.listed(rigs, "and");
  }
}
