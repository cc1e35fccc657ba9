package rigmorrow.app.board.store;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.model.plan.Plan;
import rigmorrow.model.shot.Batch;

/** What the papers of the plans in a store say of them. One thread at a time, like the store. */
public final class Stamps {
  private final BoardStore store;

  /** Marks by states: a state's schedule stays what it is, and is marked at every look. */
  private final Map<Long, String> marks = new HashMap<>();

  /**
   * @param store with the versions
   */
  public Stamps(BoardStore store) {
    this.store = store;
  }

  /**
   * Of a state: the version that it was put by as, the published one first; else the revision.
   *
   * @param state id of the state
   * @param revision of the board now
   * @param at when the state was made
   * @param plan that is decoded of it
   */
  public PlanStamp ofState(long state, long revision, Instant at, Batch batch, Plan plan) {
    int published = store.published();
    return store.versions().stream()
        .filter(one -> one.state() == state)
        .max(
            Comparator.comparing((StoredVersion one) -> one.number() == published)
                .thenComparing(StoredVersion::number))
        .map(one -> stamp(one, published, batch, plan))
        .orElseGet(
            () ->
                PlanStamp.ofRevision(
                    revision, at, batch.floor().zone(), published, mark(state, batch, plan)));
  }

  /**
   * Of a version as things stand.
   *
   * @param plan that is decoded of it
   * @throws IllegalArgumentException when there is no such version
   */
  public PlanStamp ofVersion(int number, Batch batch, Plan plan) {
    return ofVersion(number, store.published(), batch, plan);
  }

  /**
   * Of a version for files that are about to be published.
   *
   * @param plan that is decoded of it
   * @throws IllegalArgumentException when there is no such version
   */
  public PlanStamp ofPublished(int number, Batch batch, Plan plan) {
    return ofVersion(number, number, batch, plan);
  }

  private PlanStamp ofVersion(int number, int published, Batch batch, Plan plan) {
    return store.versions().stream()
        .filter(one -> one.number() == number)
        .findFirst()
        .map(one -> stamp(one, published, batch, plan))
        .orElseThrow(() -> new IllegalArgumentException("There is no version " + number + "."));
  }

  private PlanStamp stamp(StoredVersion version, int published, Batch batch, Plan plan) {
    return PlanStamp.ofVersion(
        version.number(),
        version.note(),
        version.at(),
        batch.floor().zone(),
        published,
        mark(version.state(), batch, plan));
  }

  private String mark(long state, Batch batch, Plan plan) {
    return marks.computeIfAbsent(state, id -> PlanStamp.mark(batch, plan));
  }
}
