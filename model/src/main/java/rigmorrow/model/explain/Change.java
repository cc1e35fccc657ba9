package rigmorrow.model.explain;

/**
 * One thing that is supposed to be otherwise. Nothing else changes: the orders of all rigs stay,
 * apart from what the change itself says.
 *
 * @param kind which thing
 * @param subject id of the job, kit or rig it is about; empty where the kind says it all
 * @param seconds by how much, where the kind has an amount; else 0
 */
public record Change(Kind kind, String subject, int seconds) {

  /** A change without an amount. */
  public static Change of(Kind kind, String subject) {
    return new Change(kind, subject, 0);
  }

  /** What can be supposed. */
  public enum Kind {
    /** The job's sample is there from the start. */
    SAMPLE_THERE,
    /** No other job has the job's sample. */
    SAMPLE_NOT_SHARED,
    /** The job asks for no setup; bringing kit and servicing the plate ring stay. */
    NO_SETUP,
    /** The job is pinned to no start. */
    START_NOT_PINNED,
    /** One more operator with every skill, there day and night, without breaks. */
    ONE_MORE_OPERATOR,
    /** One more piece of the kit, at first where its first piece is. */
    ONE_MORE_KIT,
    /** The rig's dated closures fall away. */
    RIG_NOT_CLOSED,
    /** Every rig and every operator ends each span of hours later, at midnight at the latest. */
    LONGER_HOURS,
    /** The job named is left out. */
    WITHOUT_JOB,
    /** The job is the first on its rig that is neither running nor done. */
    FIRST_ON_RIG,
    /** Every other job that is neither running nor done is left out. */
    ALONE,
    /** The job's promise is later. */
    PROMISE_LATER,
    /** The job's sample leaves later. */
    COLLECTION_LATER,
    /** The job is not pinned. */
    NOT_PINNED,
    /** The job named is left out and this one takes its place. */
    INSTEAD_OF
  }
}
