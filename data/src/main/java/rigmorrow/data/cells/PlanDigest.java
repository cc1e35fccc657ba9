package rigmorrow.data.cells;

import java.util.List;
import rigmorrow.data.floor.FloorWriter;
import rigmorrow.data.json.Trees;
import rigmorrow.data.shotjson.ShotJsonWriter;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.money.CrewPay;
import rigmorrow.model.shot.ShotList;

/**
 * Names what the plan of a cell, and its figures, rest on besides the effort and the program: the
 * floor and the jobs with every change made, what is regular time, what operators are paid for, and
 * the seed. What a scenario is called and what is bought for it is no part of it, so plans are
 * found again under another name or price.
 */
public final class PlanDigest {
  private static final int DIGITS = 32;

  private PlanDigest() {}

  /** Names a floor: the same for the same only. */
  public static String floor(Floor floor) {
    Digest digest = new Digest();
    digest.add(FloorWriter.write(floor, Trees.Notation.JSON));
    return digest.shown(DIGITS);
  }

  /** Names a shot list: the same for the same only. */
  public static String list(ShotList list) {
    Digest digest = new Digest();
    digest.add(ShotJsonWriter.write(list, Trees.Notation.JSON));
    return digest.shown(DIGITS);
  }

  /**
   * Names what is planned and paid for.
   *
   * @param floor name of the floor with every change made
   * @param regular name of that floor with the crew in its regular hours
   * @param list name of the shot list with every change made
   */
  public static String planned(String floor, String regular, String list, CrewPay pay) {
    Digest digest = new Digest();
    List.of(floor, regular, list, pay.name()).forEach(digest::add);
    return digest.shown(DIGITS);
  }

  /**
   * Names a plan.
   *
   * @param planned what is planned
   * @param seed of the search
   */
  public static String plan(String planned, long seed) {
    return planned + "-" + seed;
  }
}
