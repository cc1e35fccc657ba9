package rigmorrow.model.shot;

import rigmorrow.model.check.Require;

/**
 * What a powered item needs while it is photographed.
 *
 * @param volts of the supply, at least 1
 * @param watts it draws, at least 1
 * @param plug type of its plug, such as the IEC letter types C, F, K
 */
public record Power(int volts, int watts, String plug) {
  public Power {
    Require.atLeast("volts", volts, 1);
    Require.atLeast("watts", watts, 1);
    Require.text("plug", plug);
  }
}
