package rigmorrow.solver.timeline;

import java.util.List;
import rigmorrow.model.setup.ChangeoverStep;
import rigmorrow.model.work.ChangeoverModel;

/**
 * What a rig's changeover to its next job takes: the setup, the kit that is fetched, and the plate
 * ring that is due. The numbers of the last one asked for are read from the fields.
 */
final class ChangeoverDesk {
  private final CompiledBatch batch;
  private final SetupTable[] tables;
  private final KitStore kit;
  private final TwoHands hands = new TwoHands();
  private final int rigs;
  private final int[] work;

  /** The rig's state after it. */
  int next;

  int attendedSeconds;
  int tailSeconds;
  int people;

  /** Operators who may be in charge, as bits. */
  int mask;

  /** True when the plate ring is serviced on the way. */
  boolean service;

  ChangeoverDesk(CompiledBatch batch, KitStore kit) {
    this.batch = batch;
    this.kit = kit;
    this.rigs = batch.rigCount();
    this.work = batch.work;
    ChangeoverModel model = new ChangeoverModel(batch.batch.floor());
    CrewMask crewMask = new CrewMask(batch.crew);
    this.tables = new SetupTable[rigs];
    for (int rig = 0; rig < rigs; rig++) {
      tables[rig] =
          new SetupTable(
              batch.rigs.get(rig), batch.twoStepsAtOnce[rig], model, batch.requests, crewMask);
    }
  }

  /**
   * Chooses the kit and reads what the changeover takes.
   *
   * @param at where the work of the job on the rig begins
   * @param state of the rig before it
   * @param turns of the plate ring since it was serviced
   * @param kits bits of the kit that the job takes; all of it is free at {@code time}
   */
  void ask(int rig, int at, int state, int turns, int kits, int time) {
    int request = work[at + CompiledBatch.REQUEST_AT];
    int[] row = tables[rig].row(state, request);
    next = row[request + SetupTable.NEXT];
    attendedSeconds = row[request + SetupTable.ATTENDED];
    tailSeconds = row[request + SetupTable.TAIL_AND_PEOPLE] & SetupTable.TAIL_BITS;
    people = row[request + SetupTable.TAIL_AND_PEOPLE] >>> SetupTable.PEOPLE_SHIFT;
    mask = row[request + SetupTable.MASK];
    service = turns + work[at + CompiledBatch.TURNS] > batch.ringLimit[rig] && turns > 0;
    if (kits != 0) {
      kit.choose(kits, rig, time);
    }
    if (service || (kits != 0 && kit.people() > 0)) {
      addTo(rig, request / SetupTable.STRIDE, state, kits);
    }
  }

  private void addTo(int rig, int request, int state, int kits) {
    mask &= (service ? batch.ringMask[rig] : -1) & (kits == 0 ? -1 : kit.mask());
    if (batch.twoStepsAtOnce[rig]) {
      share(rig, request, state, kits);
      return;
    }
    people = Math.max(Math.max(people, 1), kits == 0 ? 0 : kit.people());
    attendedSeconds += (service ? batch.ringSeconds[rig] : 0) + (kits == 0 ? 0 : kit.seconds());
  }

  /**
   * Shares all steps of a changeover in the order they are done: kit, so that the rig it comes from
   * is soon free, ring, setup.
   */
  private void share(int rig, int request, int state, int kits) {
    hands.open();
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int one = Integer.numberOfTrailingZeros(rest);
      int from = kit.place(kit.chosen(rig, one));
      if (from != rig) {
        int seconds = batch.fetch[from * rigs + rig] + batch.kitAlign[one];
        hands.add(seconds, 0, batch.kitPeople[one]);
      }
    }
    if (service) {
      hands.add(batch.ringSeconds[rig], 0, 1);
    }
    int[] parts = tables[rig].parts(state, request);
    for (int i = 0; i < parts.length; i += 3) {
      hands.add(parts[i], parts[i + 1], parts[i + 2]);
    }
    attendedSeconds = hands.attendedSeconds();
    tailSeconds = hands.tailSeconds();
    people = hands.people();
  }

  /** The row of the changeover matrix that a request is read from. */
  int[] row(int rig, int state, int request) {
    return tables[rig].row(state, request);
  }

  /** The setup steps from a state on a rig. */
  List<ChangeoverStep> steps(int rig, int state, int job) {
    return tables[rig].steps(state, batch.request[job]);
  }

  /** Hands-on setup seconds from a state to a job, without kit and ring. */
  int setupSeconds(int rig, int state, int job) {
    int request = batch.request[job] * SetupTable.STRIDE;
    return tables[rig].row(state, request)[request + SetupTable.ATTENDED];
  }

  /** Hands-on setup seconds between two jobs that follow each other on a rig, from scratch. */
  int setupSecondsBetween(int rig, int from, int to) {
    int first = batch.request[from] * SetupTable.STRIDE;
    return setupSeconds(rig, tables[rig].row(0, first)[first + SetupTable.NEXT], to);
  }
}
