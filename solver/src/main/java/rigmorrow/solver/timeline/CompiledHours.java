package rigmorrow.solver.timeline;

import java.util.ArrayList;
import java.util.List;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.Span;
import rigmorrow.model.time.WorkingHours;

/** Working hours of rigs and crew as start, end, start, end ... */
final class CompiledHours {
  private final Floor floor;
  private final List<Operator> crew;
  private final PlanClock clock;

  CompiledHours(Floor floor, List<Operator> crew, PlanClock clock) {
    this.floor = floor;
    this.crew = crew;
    this.clock = clock;
  }

  /** Hours of each rig in floor order, cut where nobody could unload any more. */
  int[][] rigs() {
    List<Span> crewThere = crewThere();
    return floor.rigs().stream()
        .map(rig -> flat(staffed(WorkingHours.of(rig, clock), crewThere)))
        .toArray(int[][]::new);
  }

  /** Hours of each operator in crew order. */
  int[][] crew() {
    return crew.stream().map(one -> flat(WorkingHours.of(one, clock))).toArray(int[][]::new);
  }

  /** Second at which the first rig opens; the end of the plan when none does. */
  int firstOpening() {
    return floor.rigs().stream()
        .flatMap(rig -> WorkingHours.of(rig, clock).stream())
        .mapToInt(Span::start)
        .min()
        .orElse(clock.horizonSeconds());
  }

  /** When somebody who may unload is there. */
  private List<Span> crewThere() {
    return crew.stream()
        .filter(one -> one.skills().containsAll(floor.handling().loadSkills()))
        .flatMap(one -> WorkingHours.of(one, clock).stream())
        .toList();
  }

  /**
   * Cuts each span of a rig where the last of those who unload goes home: what is not off by then
   * stays on until the rig has closed, so nothing may be started that would end later. Where
   * unloading takes no time nobody is needed and the spans stay.
   */
  private List<Span> staffed(List<Span> open, List<Span> crewThere) {
    if (floor.handling().unloadSeconds() == 0) {
      return open;
    }
    List<Span> staffed = new ArrayList<>();
    for (Span span : open) {
      int last =
          crewThere.stream()
              .filter(span::overlaps)
              .mapToInt(there -> Math.min(there.end(), span.end()))
              .max()
              .orElse(span.start());
      if (last > span.start()) {
        staffed.add(new Span(span.start(), last));
      }
    }
    return staffed;
  }

  /**
   * The last span stands for "after the plan": whatever only fits there is decoded there, and every
   * second beyond the horizon breaks a hard rule, so that the search can see how far off it is.
   */
  private int[] flat(List<Span> spans) {
    int[] flat = new int[2 * spans.size() + 2];
    for (int i = 0; i < spans.size(); i++) {
      flat[2 * i] = spans.get(i).start();
      flat[2 * i + 1] = spans.get(i).end();
    }
    flat[2 * spans.size()] = clock.horizonSeconds();
    flat[2 * spans.size() + 1] = Integer.MAX_VALUE;
    return flat;
  }
}
