package rigmorrow.app.board.store;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import rigmorrow.app.runsheet.text.PlanStamp;

/** What the papers of the plans in a store say of them. One thread at a time, like the store. */
public final class Stamps {
  private final BoardStore store;

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
   */
  public PlanStamp ofState(long state, long revision, Instant at, ZoneId zone) {
    int published = store.published();
    return store.versions().stream()
        .filter(one -> one.state() == state)
        .max(
            Comparator.comparing((StoredVersion one) -> one.number() == published)
                .thenComparing(StoredVersion::number))
        .map(one -> stamp(one, published, zone))
        .orElseGet(() -> PlanStamp.ofRevision(revision, at, zone, published));
  }

  /**
   * Of a version as things stand.
   *
   * @throws IllegalArgumentException when there is no such version
   */
  public PlanStamp ofVersion(int number, ZoneId zone) {
    return ofVersion(number, store.published(), zone);
  }

  /**
   * Of a version for files that are about to be published.
   *
   * @throws IllegalArgumentException when there is no such version
   */
  public PlanStamp ofPublished(int number, ZoneId zone) {
    return ofVersion(number, number, zone);
  }

  private PlanStamp ofVersion(int number, int published, ZoneId zone) {
    return store.versions().stream()
        .filter(one -> one.number() == number)
        .findFirst()
        .map(one -> stamp(one, published, zone))
        .orElseThrow(() -> new IllegalArgumentException("There is no version " + number + "."));
  }

  private static PlanStamp stamp(StoredVersion version, int published, ZoneId zone) {
    return PlanStamp.ofVersion(version.number(), version.note(), version.at(), zone, published);
  }
}
