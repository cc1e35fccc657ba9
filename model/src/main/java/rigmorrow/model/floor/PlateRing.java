package rigmorrow.model.floor;

import java.util.Set;
import rigmorrow.model.check.Require;

/**
 * A plate ring wears and needs service after so many turns.
 *
 * @param serviceEveryTurns turns between two services, at least 1
 * @param turnsSinceService turns already run at the start of the plan, 0 or more
 * @param serviceSeconds hands-on time of a service, 0 or more
 * @param skills what the operator must be able to do
 */
public record PlateRing(
    int serviceEveryTurns, int turnsSinceService, int serviceSeconds, Set<String> skills) {
  public PlateRing {
    Require.atLeast("ring.serviceEveryTurns", serviceEveryTurns, 1);
    Require.atLeast("ring.turnsSinceService", turnsSinceService, 0);
    Require.atLeast("ring.serviceSeconds", serviceSeconds, 0);
    skills = Set.copyOf(skills);
  }
}
