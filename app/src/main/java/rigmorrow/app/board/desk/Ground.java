package rigmorrow.app.board.desk;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.plan.Orders;
import rigmorrow.model.shot.Batch;
import rigmorrow.model.shot.Pin;
import rigmorrow.model.shot.PinState;
import rigmorrow.model.shot.ShotJob;

/**
 * What a touch meets: the shot list and the orders as they are.
 *
 * @param batch floor and shot list
 * @param orders of the plan there is
 */
record Ground(Batch batch, Orders orders) {
  Optional<ShotJob> job(String id) {
    return batch.shotList().job(id);
  }

  Optional<Pin> pin(String job) {
    return batch.shotList().pin(job);
  }

  List<String> rigs() {
    return batch.floor().rigs().stream().map(Rig::id).toList();
  }

  String rig(int number) {
    return batch.floor().rigs().get(number).id();
  }

  boolean planned(String job) {
    return orders.rigOf(job) >= 0;
  }

  /** Place of a planned job on its rig, 0 for the first. */
  int placeOf(String job) {
    return orders.byRig().get(orders.rigOf(job)).indexOf(job);
  }

  boolean heldBack(String job) {
    return batch.shotList().heldBack().contains(job);
  }

  /** Ids of the jobs that are running or done. */
  Set<String> fixed() {
    Set<String> fixed = new HashSet<>();
    for (Pin pin : batch.shotList().pins()) {
      if (pin.state() != PinState.PLANNED) {
        fixed.add(pin.job());
      }
    }
    return fixed;
  }
}
