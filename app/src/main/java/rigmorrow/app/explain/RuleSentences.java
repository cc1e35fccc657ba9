package rigmorrow.app.explain;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.explain.Explanation;
import rigmorrow.model.explain.JobRules;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;

/** Says what holds for a job wherever it goes. */
final class RuleSentences {
  private final Names names;
  private final Explanation answer;

  RuleSentences(Names names, Explanation answer) {
    this.names = names;
    this.answer = answer;
  }

  List<String> all() {
    JobRules rules = answer.rules();
    List<String> sentences = new ArrayList<>();
    sentences.add(promise(rules));
    Pin pin = rules.pin();
    if (pin != null) {
      sentences.add(pinned(pin));
    }
    if (rules.arrivesAtSecond() != null) {
      sentences.add("Its sample arrives at " + names.times().at(rules.arrivesAtSecond()) + ".");
    }
    if (rules.leavesAtSecond() != null) {
      sentences.add(
          "It must be off the rig by "
              + names.times().at(rules.leavesAtSecond())
              + ", when its sample leaves.");
    }
    if (!rules.sampleSharedWith().isEmpty()) {
      sentences.add(
          "It shares its sample with "
              + Names.listed(rules.sampleSharedWith().stream().map(names::job).toList(), "and")
              + "; they never overlap.");
    }
    if (!rules.kits().isEmpty()) {
      sentences.add("It needs " + names.kits(rules.kits()) + " on this rig.");
    }
    people(rules, sentences);
    if (rules.estimated()) {
      sentences.add("Its size or mass is the planner's estimate.");
    }
    return sentences;
  }

  private String promise(JobRules rules) {
    String weight = "weight " + rules.weight();
    if (rules.dueAtSecond() == null) {
      return "It has no promise; " + weight + ".";
    }
    String at = names.times().at(rules.dueAtSecond());
    return rules.must()
        ? "Its pictures must be taken by " + at + "; " + weight + "."
        : "Its pictures are promised for " + at + "; " + weight + ".";
  }

  private static String pinned(Pin pin) {
    String state =
        pin.state() == PinState.RUNNING
            ? "It is running on "
            : pin.state() == PinState.DONE ? "It is done on " : "It is pinned to ";
    String place = pin.place() == null ? "" : ", place " + (pin.place() + 1);
    String start = pin.startsAt() == null ? "" : ", start " + pin.startsAt().toLocalTime();
    return state + pin.rig() + place + start + ".";
  }

  private static void people(JobRules rules, List<String> sentences) {
    List<String> two = new ArrayList<>();
    if (rules.loadPeople() > 1) {
      two.add("load");
    }
    if (rules.unloadPeople() > 1) {
      two.add("unload");
    }
    if (!two.isEmpty()) {
      sentences.add("It takes two people to " + String.join(" and to ", two) + ".");
    }
    if (rules.attendedCapture()) {
      sentences.add("Somebody stays while its pictures are taken.");
    }
  }
}
