package rigmorrow.solver.dispatch;

import java.util.ArrayList;
import java.util.List;

/**
 * Settings of the rule that builds a first plan: apparent tardiness cost with setups, the ATCS rule
 * of Lee, Bhaskaran and Pinedo (IIE Transactions 29, 1997), with a term for jobs that are not there
 * yet as in Pfund et al. (Computers and Industrial Engineering, 2008) and one for jobs that few
 * rigs can take.
 *
 * @param dueScale k1: how far ahead a promise is felt, in mean job lengths; above 0
 * @param setupScale k2: how much setup is put up with, in mean setup lengths; above 0
 * @param waitScale k3: how much waiting for a sample is put up with, in mean job lengths; above 0
 * @param scarcity weight on the logarithm of the number of rigs that could take a job instead
 */
public record DispatchRule(double dueScale, double setupScale, double waitScale, double scarcity) {
  /** The grid that is tried: each rule gives one plan, the best is kept. */
  static List<DispatchRule> grid() {
    List<DispatchRule> rules = new ArrayList<>();
    for (double due : new double[] {0.5, 2, 8}) {
      for (double setup : new double[] {0.1, 0.4, 1.6}) {
        rules.add(new DispatchRule(due, setup, 0.3, 0.5));
      }
    }
    rules.add(new DispatchRule(2, 0.4, 0.3, 0));
    rules.add(new DispatchRule(2, 0.4, 1, 2));
    return rules;
  }
}
