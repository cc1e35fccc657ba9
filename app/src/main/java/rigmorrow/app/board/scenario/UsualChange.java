package rigmorrow.app.board.scenario;

import com.fasterxml.jackson.annotation.JsonSubTypes;
import com.fasterxml.jackson.annotation.JsonTypeInfo;

/** A change that can be asked for without a file. Ids are those of the first day's floor. */
@JsonTypeInfo(use = JsonTypeInfo.Id.NAME, property = "kind")
@JsonSubTypes({
  @JsonSubTypes.Type(value = UsualChange.AnotherRig.class, name = "ANOTHER_RIG"),
  @JsonSubTypes.Type(value = UsualChange.WithoutRig.class, name = "WITHOUT_RIG"),
  @JsonSubTypes.Type(value = UsualChange.AnotherOperator.class, name = "ANOTHER_OPERATOR"),
  @JsonSubTypes.Type(value = UsualChange.AnotherUnit.class, name = "ANOTHER_UNIT"),
  @JsonSubTypes.Type(value = UsualChange.OtherDemand.class, name = "OTHER_DEMAND"),
  @JsonSubTypes.Type(value = UsualChange.OpenLonger.class, name = "OPEN_LONGER")
})
public sealed interface UsualChange {
  /** One more rig like another. */
  record AnotherRig(String rig) implements UsualChange {}

  /** A rig less. */
  record WithoutRig(String rig) implements UsualChange {}

  /** One more operator like another. */
  record AnotherOperator(String operator) implements UsualChange {}

  /** One more piece of a kit. */
  record AnotherUnit(String kit) implements UsualChange {}

  /**
   * More or fewer jobs.
   *
   * @param percent more than there were, fewer when below 0
   */
  record OtherDemand(double percent) implements UsualChange {}

  /**
   * Every rig and operator longer.
   *
   * @param regularTime true when operators are paid for it as for any other time
   */
  record OpenLonger(int earlierMinutes, int laterMinutes, boolean regularTime)
      implements UsualChange {}
}
