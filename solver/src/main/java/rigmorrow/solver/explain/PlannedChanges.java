package rigmorrow.solver.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import rigmorrow.model.explain.Change;
import rigmorrow.model.explain.Change.Kind;
import rigmorrow.model.explain.IfThen;
import rigmorrow.model.explain.JobTimes;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;
import rigmorrow.solver.hand.Timed;
import rigmorrow.solver.hand.Trial;

/** What would take a planned job's pictures sooner, each thing by itself. */
final class PlannedChanges {
  private static final int AN_HOUR = 3600;

  private final Question question;
  private final String job;
  private final int rig;
  private final JobTimes now;
  private final List<IfThen> answers = new ArrayList<>();

  PlannedChanges(Question question) {
    this.question = question;
    this.job = question.job().id();
    this.rig = question.orders().rigOf(job);
    this.now = question.now().times(job);
  }

  /** Those that help first, the soonest first; the others in the order they were tried. */
  List<IfThen> all() {
    ofTheJob();
    FloorChanges.of(question, kitsInUse(), rigs(), AN_HOUR).forEach(this::unchangedOrders);
    ofTheOrder();
    answers.sort(
        Comparator.comparing((IfThen one) -> !one.helps())
            .thenComparingInt(one -> one.helps() ? one.times().captureEndSecond() : 0));
    return answers;
  }

  private void ofTheJob() {
    ShotJob shot = question.job();
    if (shot.arrivesAt() != null) {
      unchangedOrders(Change.of(Kind.SAMPLE_THERE, job));
    }
    boolean shared =
        question.orders().byRig().stream()
            .flatMap(List::stream)
            .anyMatch(id -> !id.equals(job) && question.job(id).sample().equals(shot.sample()));
    if (shared) {
      unchangedOrders(Change.of(Kind.SAMPLE_NOT_SHARED, job));
    }
    Pin pin = question.pin();
    if (pin != null && pin.state() == PinState.PLANNED && pin.startsAt() != null) {
      unchangedOrders(Change.of(Kind.START_NOT_PINNED, job));
    }
    if (now.changeoverSeconds() > 0) {
      unchangedOrders(Change.of(Kind.NO_SETUP, job));
    }
  }

  private void ofTheOrder() {
    List<String> jobs = question.orders().byRig().get(rig);
    int place = jobs.indexOf(job);
    for (String before : jobs.subList(0, place)) {
      if (!question.fixed().contains(before)) {
        Orders without = question.orders().without(before);
        answer(Change.of(Kind.WITHOUT_JOB, before), question.trial(), without);
      }
    }
    int first = question.orders().without(job).firstFree(rig, question.fixed());
    if (first < place) {
      Orders moved = question.orders().without(job).with(rig, first, job);
      answer(Change.of(Kind.FIRST_ON_RIG, job), question.trial(), moved);
    }
    Orders alone =
        new Orders(
            question.orders().byRig().stream()
                .map(
                    all ->
                        all.stream()
                            .filter(id -> id.equals(job) || question.fixed().contains(id))
                            .toList())
                .toList());
    answer(Change.of(Kind.ALONE, job), question.trial(), alone);
  }

  private void unchangedOrders(Change change) {
    answer(change, question.with(change), question.orders());
  }

  private void answer(Change change, Trial trial, Orders orders) {
    Timed then = trial.decode(orders);
    JobTimes times = then.times(job);
    boolean helps = times.captureEndSecond() < now.captureEndSecond();
    answers.add(new IfThen(change, helps, times, then.cost()));
  }

  /** Ids of the kit that any planned job uses. */
  private Set<String> kitsInUse() {
    Set<String> kits = new TreeSet<>();
    List<Rig> rigs = question.batch().floor().rigs();
    for (int one = 0; one < rigs.size(); one++) {
      for (String id : question.orders().byRig().get(one)) {
        kits.addAll(question.facts().work(question.job(id), rigs.get(one)).kits());
      }
    }
    return kits;
  }

  private Set<String> rigs() {
    return Set.of(question.batch().floor().rigs().get(rig).id());
  }
}
