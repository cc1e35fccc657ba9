package rigmorrow.benchmarks.peer.exact;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToLongFunction;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.plan.Attended;
import rigmorrow.model.plan.PlannedJob;
import rigmorrow.model.work.JobWork;

/**
 * Who does what: each hands-on part has the people it takes, of whom one may be in charge of all of
 * it, and nobody does two things at once or works outside the shift. Where everybody can do
 * everything, is always there and there are enough for all rigs, nobody is ever waited for and
 * nothing is modelled.
 */
final class CrewRoster {
  private final DayVars day;
  private final CpModel model;
  private final Changeovers changeovers;
  private final int crew;
  private final List<List<IntervalVar>> busy = new ArrayList<>();
  private final List<Part> parts = new ArrayList<>();
  private final List<Derived> derived = new ArrayList<>();

  /** A hands-on part of a job: who is there and who is in charge. */
  private record Part(
      int job, Literal[] there, Literal[] lead, Function<PlannedJob, @Nullable Attended> planned) {}

  /** A variable that follows from others. */
  private record Derived(int job, IntVar variable, ToLongFunction<PlannedJob> inPlan) {}

  CrewRoster(DayVars day, Changeovers changeovers) {
    this.day = day;
    this.model = day.model;
    this.changeovers = changeovers;
    this.crew = day.facts.operatorCount();
    if (alwaysEnough()) {
      return;
    }
    for (int one = 0; one < crew; one++) {
      busy.add(away(one));
    }
    for (int job = 0; job < day.jobs; job++) {
      changeover(job);
      load(job);
      unload(job);
    }
    busy.forEach(model::addNoOverlap);
  }

  private boolean alwaysEnough() {
    for (int one = 0; one < crew; one++) {
      int[] hours = day.facts.crewHours(one);
      if (hours.length != 2 || hours[0] > 0 || hours[1] < day.facts.horizon()) {
        return false;
      }
    }
    int all = (int) ((1L << crew) - 1);
    int most = 1;
    for (int job = 0; job < day.jobs; job++) {
      for (Arc arc : changeovers.arcsTo(job)) {
        most = Math.max(most, arc.cost().people());
        if (arc.cost().lead() != all) {
          return false;
        }
      }
      for (Extra extra : changeovers.extrasOf(job)) {
        most = Math.max(most, extra.people());
        if (extra.lead() != all) {
          return false;
        }
      }
      for (JobWork work : works(job)) {
        most = Math.max(most, Math.max(work.load().people(), work.unload().people()));
        if (skilled(work.load()) != all || skilled(work.unload()) != all) {
          return false;
        }
      }
    }
    return crew >= most * day.rigs;
  }

  private List<JobWork> works(int job) {
    List<JobWork> works = new ArrayList<>();
    for (int rig = 0; rig < day.rigs; rig++) {
      if (day.on[job][rig] != null) {
        works.add(day.facts.work(job, rig));
      }
    }
    return works;
  }

  private int skilled(JobWork.HandsOn part) {
    return day.facts.skilled(part.skills());
  }

  private List<IntervalVar> away(int one) {
    List<IntervalVar> away = new ArrayList<>();
    int[] hours = day.facts.crewHours(one);
    int gone = 0;
    for (int i = 0; i <= hours.length; i += 2) {
      int back = i < hours.length ? hours[i] : day.facts.horizon();
      if (gone < back) {
        away.add(model.newFixedInterval(gone, (long) back - gone, "away" + one));
      }
      gone = i < hours.length ? hours[i + 1] : gone;
    }
    return away;
  }

  private void changeover(int job) {
    List<Literal> working = new ArrayList<>();
    List<Literal> forTwo = new ArrayList<>();
    for (Arc arc : changeovers.arcsTo(job)) {
      if (arc.cost().seconds() > 0) {
        working.add(arc.taken());
        if (arc.cost().people() == 2) {
          forTwo.add(arc.taken());
        }
      }
    }
    List<Extra> extras = changeovers.extrasOf(job);
    if (working.isEmpty() && extras.isEmpty()) {
      return;
    }
    boolean two = !forTwo.isEmpty() || extras.stream().anyMatch(extra -> extra.people() == 2);
    Part part =
        part(
            job,
            two,
            day.start[job],
            day.changeover[job],
            day.changeoverEnd[job],
            PlannedJob::changeover);
    atLeast(part.lead, working, 1);
    if (two) {
      atLeast(part.there, forTwo, 2);
    }
    for (Extra extra : extras) {
      for (Literal[] who : List.of(part.lead, part.there)) {
        int people = who == part.lead ? 1 : extra.people();
        model.addGreaterOrEqual(LinearExpr.sum(who), people).onlyEnforceIf(extra.done());
      }
    }
    for (int one = 0; one < crew; one++) {
      List<Literal> notBy = new ArrayList<>();
      for (Arc arc : changeovers.arcsTo(job)) {
        if (arc.cost().seconds() > 0 && (arc.cost().lead() >>> one & 1) == 0) {
          notBy.add(arc.taken());
        }
      }
      notBy.add(part.lead[one]);
      model.addAtMostOne(notBy);
      for (Extra extra : extras) {
        if ((extra.lead() >>> one & 1) == 0) {
          model.addImplication(extra.done(), part.lead[one].not());
        }
      }
    }
  }

  /** At most one of the cases holds; when one does, there are so many people. */
  private void atLeast(Literal[] who, List<Literal> cases, int people) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    cases.forEach(one -> sum.addTerm(one, people));
    model.addGreaterOrEqual(LinearExpr.sum(who), sum);
  }

  private void load(int job) {
    boolean stays = works(job).stream().allMatch(JobWork::attendedCapture);
    IntVar start = day.loadStart[job];
    if (stays) {
      IntVar seconds = model.newIntVar(0, day.facts.horizon(), "stays" + job);
      model.addEquality(DayVars.sum(start, seconds), day.captureEnd[job]);
      derived.add(
          new Derived(job, seconds, one -> one.capture().end() - one.load().span().start()));
      handsOn(job, JobWork::load, start, seconds, day.captureEnd[job], PlannedJob::load);
      return;
    }
    LinearArgument seconds = seconds(job, JobWork::load, one -> one.load().span().seconds());
    LinearExpr known = seconds.build();
    if (known.numElements() == 0) {
      LinearArgument end = LinearExpr.affine(start, 1, known.getOffset());
      handsOn(job, JobWork::load, start, seconds, end, PlannedJob::load);
    } else {
      IntVar end = model.newIntVar(0, day.facts.horizon(), "loadEnd" + job);
      model.addEquality(DayVars.sum(start, seconds), end);
      derived.add(new Derived(job, end, one -> one.load().span().end()));
      handsOn(job, JobWork::load, start, seconds, end, PlannedJob::load);
    }
  }

  private void unload(int job) {
    LinearArgument seconds = seconds(job, JobWork::unload, one -> one.unload().span().seconds());
    handsOn(job, JobWork::unload, day.unloadStart[job], seconds, day.end[job], PlannedJob::unload);
  }

  /** A variable, or a number where a part takes the same time on every rig and must be done. */
  private LinearArgument seconds(
      int job, Function<JobWork, JobWork.HandsOn> part, ToLongFunction<PlannedJob> inPlan) {
    int[] each = works(job).stream().mapToInt(work -> part.apply(work).seconds()).toArray();
    if (!day.mayLeaveOut && Arrays.stream(each).distinct().count() == 1) {
      return LinearExpr.constant(each[0]);
    }
    IntVar seconds = model.newIntVar(0, day.facts.horizon(), "seconds" + job);
    model.addEquality(seconds, day.seconds(job, work -> part.apply(work).seconds()));
    derived.add(new Derived(job, seconds, inPlan));
    return seconds;
  }

  private void handsOn(
      int job,
      Function<JobWork, JobWork.HandsOn> which,
      IntVar start,
      LinearArgument seconds,
      LinearArgument end,
      Function<PlannedJob, @Nullable Attended> planned) {
    boolean two = works(job).stream().anyMatch(work -> which.apply(work).people() == 2);
    boolean none = works(job).stream().allMatch(work -> which.apply(work).seconds() == 0);
    boolean stays = works(job).stream().anyMatch(JobWork::attendedCapture);
    if (none && !stays) {
      return;
    }
    Part part = part(job, two, start, seconds, end, planned);
    for (int rig = 0; rig < day.rigs; rig++) {
      Literal here = day.on[job][rig];
      if (here != null) {
        JobWork.HandsOn one = which.apply(day.facts.work(job, rig));
        for (int who = 0; who < crew; who++) {
          if ((skilled(one) >>> who & 1) == 0) {
            model.addImplication(here, part.lead[who].not());
          }
        }
        if (two) {
          model.addGreaterOrEqual(LinearExpr.sum(part.there), one.people()).onlyEnforceIf(here);
        }
      }
    }
    // One in charge wherever the job is planned, nobody where it is left out.
    List<Literal> cases = new ArrayList<>(List.of(part.lead));
    cases.add(day.out[job]);
    model.addExactlyOne(cases);
  }

  private Part part(
      int job,
      boolean two,
      LinearArgument start,
      LinearArgument seconds,
      LinearArgument end,
      Function<PlannedJob, @Nullable Attended> planned) {
    Literal[] there = new Literal[crew];
    for (int one = 0; one < crew; one++) {
      there[one] = model.newBoolVar("there" + job + "_" + one);
      busy.get(one)
          .add(model.newOptionalIntervalVar(start, seconds, end, there[one], "busy" + job));
    }
    Literal[] lead = there;
    if (two) {
      lead = new Literal[crew];
      for (int one = 0; one < crew; one++) {
        lead[one] = model.newBoolVar("lead" + job + "_" + one);
        model.addImplication(lead[one], there[one]);
      }
    }
    model.addAtMostOne(lead);
    Part part = new Part(job, there, lead, planned);
    parts.add(part);
    return part;
  }

  /** Hints at who does each part. */
  void hint(KnownPlan plan) {
    for (Derived one : derived) {
      PlannedJob planned = plan.of(one.job);
      model.addHint(one.variable, planned == null ? 0 : one.inPlan.applyAsLong(planned));
    }
    for (Part part : parts) {
      PlannedJob planned = plan.of(part.job);
      Attended attended = planned == null ? null : part.planned.apply(planned);
      // Where there is no changeover its part has nobody.
      boolean nobody = attended == null || attended.operators().isEmpty();
      List<Integer> who = nobody ? List.of() : plan.who(attended);
      // Two may share what the model gives to one: then only the one in charge is told of.
      List<Integer> there = part.lead == part.there && !nobody ? who.subList(0, 1) : who;
      for (int one = 0; one < crew; one++) {
        model.addHint(part.there[one], there.contains(one));
        if (part.lead != part.there) {
          model.addHint(part.lead[one], !who.isEmpty() && who.get(0) == one);
        }
      }
    }
  }
}
