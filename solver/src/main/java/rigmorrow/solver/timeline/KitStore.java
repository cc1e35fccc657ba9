package rigmorrow.solver.timeline;

/** The kit and the shared samples of one decode: where each piece is and who holds it. */
final class KitStore {
  /** Stands for "held by a job whose end is not known yet". */
  static final int HELD = Integer.MAX_VALUE;

  private final CompiledBatch batch;
  private final int rigs;

  /** Second from which a unit is free, or {@link #HELD}. */
  private final int[] unitFreeAt;

  private final int[] place;
  private final int[] phase;
  private final int[] rigFreeAt;
  private final int[] sampleFreeAt;

  /** Unit that each rig holds, by rig and kit. */
  private final int[] held;

  private final int kitCount;

  private int seconds;
  private int people;
  private int mask;

  KitStore(CompiledBatch batch, Moment now) {
    this.batch = batch;
    this.rigs = batch.rigCount();
    this.kitCount = batch.kits.size();
    this.unitFreeAt = now.unitFreeAt;
    this.place = now.unitPlace;
    this.phase = now.phase;
    this.rigFreeAt = now.freeAt;
    this.sampleFreeAt = now.sampleFreeAt;
    this.held = now.held;
  }

  /** Everything is free and where the floor says. */
  void open() {
    for (int i = 0; i < place.length; i++) {
      place[i] = batch.unitPlace[i];
      unitFreeAt[i] = 0;
    }
    for (int i = 0; i < sampleFreeAt.length; i++) {
      sampleFreeAt[i] = 0;
    }
  }

  /**
   * First second at which the kit and the sample are all free, or {@link #HELD}. A piece that hangs
   * on another rig is not free as long as that rig is at a job.
   */
  int freeAt(int kits, int sample, int rig) {
    int free = sample < 0 ? 0 : sampleFreeAt[sample];
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int kit = Integer.numberOfTrailingZeros(rest);
      int soonest = HELD;
      for (int unit = batch.kitUnits[kit]; unit < batch.kitUnits[kit + 1]; unit++) {
        soonest = Math.min(soonest, Math.max(unitFreeAt[unit], comesOffAt(unit, rig)));
      }
      free = Math.max(free, soonest);
    }
    return free;
  }

  /**
   * True where some kit is not to be had by then although nobody uses a piece of it: it hangs on a
   * rig that is at a job.
   */
  boolean waitsForARig(int kits, int rig, int time) {
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int kit = Integer.numberOfTrailingZeros(rest);
      boolean hangs = false;
      boolean free = false;
      for (int unit = batch.kitUnits[kit]; unit < batch.kitUnits[kit + 1]; unit++) {
        boolean used = unitFreeAt[unit] > time;
        boolean comesOff = comesOffAt(unit, rig) <= time;
        hangs |= !used && !comesOff;
        free |= !used && comesOff;
      }
      if (hangs && !free) {
        return true;
      }
    }
    return false;
  }

  /** Second from which a piece can be taken off where it is. */
  private int comesOffAt(int unit, int rig) {
    int at = place[unit];
    if (at >= rigs || at == rig) {
      return 0;
    }
    return phase[at] == Timeline.START ? rigFreeAt[at] : HELD;
  }

  /**
   * Chooses a unit of each kit that is free by {@code time}: one that is on the rig already, else
   * the one that is fetched soonest. The work it makes is told by {@link #seconds}, {@link #people}
   * and {@link #mask}. Nothing is taken until {@link #take}.
   */
  void choose(int kits, int rig, int time) {
    seconds = 0;
    people = 0;
    mask = batch.allOperators;
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int kit = Integer.numberOfTrailingZeros(rest);
      int best = -1;
      int bestSeconds = Integer.MAX_VALUE;
      for (int unit = batch.kitUnits[kit]; unit < batch.kitUnits[kit + 1]; unit++) {
        int walk = place[unit] == rig ? -1 : batch.fetch[place[unit] * rigs + rig];
        if (walk < bestSeconds && unitFreeAt[unit] <= time && comesOffAt(unit, rig) <= time) {
          bestSeconds = walk;
          best = unit;
        }
      }
      held[rig * kitCount + kit] = best;
      if (bestSeconds >= 0) {
        seconds += bestSeconds + batch.kitAlign[kit];
        people = Math.max(people, batch.kitPeople[kit]);
        mask &= batch.kitMask[kit];
      }
    }
  }

  /** Hands-on seconds of the chosen moves. */
  int seconds() {
    return seconds;
  }

  /** Most people any of the chosen moves takes; 0 when nothing moves. */
  int people() {
    return people;
  }

  /** Operators who may do all of the chosen moves. */
  int mask() {
    return mask;
  }

  /** Unit chosen for a rig. */
  int chosen(int rig, int kit) {
    return held[rig * kitCount + kit];
  }

  /** Where a unit is. */
  int place(int unit) {
    return place[unit];
  }

  /** Takes the chosen units and the sample for a job of the rig. */
  void take(int kits, int sample, int rig) {
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      int unit = held[rig * kitCount + Integer.numberOfTrailingZeros(rest)];
      unitFreeAt[unit] = HELD;
      place[unit] = rig;
    }
    if (sample >= 0) {
      sampleFreeAt[sample] = HELD;
    }
  }

  /** Gives everything back at the end of the job. */
  void giveBack(int kits, int sample, int rig, int time) {
    for (int rest = kits; rest != 0; rest &= rest - 1) {
      unitFreeAt[held[rig * kitCount + Integer.numberOfTrailingZeros(rest)]] = time;
    }
    if (sample >= 0) {
      sampleFreeAt[sample] = time;
    }
  }
}
