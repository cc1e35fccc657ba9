package rigmorrow.benchmarks.peer.exact;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import rigmorrow.model.setup.Changeover;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.work.ChangeoverModel;
import rigmorrow.solver.timeline.BatchFacts;

/**
 * What a changeover takes between two jobs that follow each other on one rig, as far as the two
 * tell. A job may leave an attribute as it is; where the rig could then be in several values, the
 * attribute is open, and {@link KeptValues} follows it through the sequence.
 */
final class SetupCosts {
  /** Stands for the rig as it is before its first job. */
  static final int INITIAL = -1;

  private final BatchFacts facts;
  private final int rig;
  private final ChangeoverModel model;
  private final Setup[] requests;
  private final Map<String, Set<String>> values = new TreeMap<>();
  private final Map<Long, Cost> known = new HashMap<>();

  /**
   * A changeover without its open attributes.
   *
   * @param seconds hands-on
   * @param warmSeconds from its start until the rig is warm; not less than hands-on
   * @param people 0 when there is nothing to do
   * @param lead operators who may be in charge, as bits
   */
  record Cost(int seconds, int warmSeconds, int people, int lead) {}

  /** One for each rig; they remember what was asked, so they serve one thread. */
  static List<SetupCosts> ofAll(BatchFacts facts) {
    List<SetupCosts> all = new ArrayList<>();
    for (int rig = 0; rig < facts.batch().rigCount(); rig++) {
      all.add(new SetupCosts(facts, rig));
    }
    return all;
  }

  private SetupCosts(BatchFacts facts, int rig) {
    this.facts = facts;
    this.rig = rig;
    this.model = new ChangeoverModel(facts.floor());
    this.requests = new Setup[facts.batch().requestCount()];
    facts
        .rig(rig)
        .initialSetup()
        .values()
        .forEach((attribute, value) -> possible(attribute).add(value));
    for (int job = 0; job < facts.batch().jobCount(); job++) {
      if (facts.batch().fits(job, rig)) {
        Setup request = facts.work(job, rig).request();
        requests[facts.batch().request(job)] = request;
        request.values().forEach((attribute, value) -> possible(attribute).add(value));
      }
    }
  }

  private Set<String> possible(String attribute) {
    return values.computeIfAbsent(attribute, key -> new TreeSet<>());
  }

  /** Values that the rig can be in, by attribute. */
  Set<String> values(String attribute) {
    return values.getOrDefault(attribute, Set.of());
  }

  /** What a job asks for, or the rig as it is at first. */
  Setup request(int job) {
    return job == INITIAL
        ? facts.rig(rig).initialSetup()
        : java.util.Objects.requireNonNull(requests[facts.batch().request(job)]);
  }

  /** Attributes that a job leaves as they are, while the rig could be in several values. */
  List<String> left(int job) {
    List<String> left = new ArrayList<>();
    for (SetupAttribute attribute : facts.floor().attributes()) {
      if (values(attribute.id()).size() > 1 && request(job).value(attribute.id()) == null) {
        left.add(attribute.id());
      }
    }
    return left;
  }

  /** The changeover between two jobs, without the attributes that the first leaves open. */
  Cost between(int from, int to) {
    int first = from == INITIAL ? facts.batch().requestCount() : facts.batch().request(from);
    long key = (long) first * facts.batch().requestCount() + facts.batch().request(to);
    return known.computeIfAbsent(key, missing -> cost(before(from, to), request(to)));
  }

  /** The changeover of a single attribute. */
  Cost single(String attribute, String from, String to) {
    return cost(new Setup(Map.of(attribute, from)), new Setup(Map.of(attribute, to)));
  }

  /** The rig's state as far as it is known; open attributes are set as the next job asks. */
  private Setup before(int from, int to) {
    Setup state = facts.rig(rig).initialSetup().after(request(from));
    for (String open : from == INITIAL ? List.<String>of() : left(from)) {
      String target = request(to).value(open);
      if (target != null) {
        state = state.after(new Setup(Map.of(open, target)));
      }
    }
    return state;
  }

  private Cost cost(Setup state, Setup request) {
    List<ChangeoverStep> steps = model.steps(facts.rig(rig), state, request);
    Changeover all = Changeover.of(steps, facts.twoStepsAtOnce(rig));
    return new Cost(
        all.attendedSeconds(),
        all.attendedSeconds() + all.tailSeconds(),
        all.people(),
        facts.skilled(all.skills()));
  }
}
