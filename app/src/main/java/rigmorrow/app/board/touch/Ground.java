package rigmorrow.app.board.touch;

import java.util.ArrayList;
import java.util.Comparator;
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
public record Ground(Batch batch, Orders orders) {
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

  /** The orders with two jobs in each other's place. */
  Orders swapped(String job, String other) {
    return new Orders(
        orders.byRig().stream()
            .map(jobs -> jobs.stream().map(one -> swapped(one, job, other)).toList())
            .toList());
  }

  private static String swapped(String one, String job, String other) {
    return one.equals(job) ? other : one.equals(other) ? job : one;
  }

  /** A pin of a job to rig and place in other orders; a start it was pinned to there stays. */
  Pin pinTo(String job, Orders there) {
    int rig = there.rigOf(job);
    Pin old = pin(job).filter(pin -> pin.rig().equals(rig(rig))).orElse(null);
    int place = there.byRig().get(rig).indexOf(job);
    return new Pin(job, rig(rig), place, old == null ? null : old.startsAt(), PinState.PLANNED);
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

  /** Puts jobs that are pinned to a place back on it, as far as their rig has so many jobs. */
  Orders seated(Orders given) {
    List<List<String>> byRig = new ArrayList<>();
    for (int rig = 0; rig < given.byRig().size(); rig++) {
      List<String> jobs = new ArrayList<>(given.byRig().get(rig));
      List<Pin> seats = new ArrayList<>();
      for (Pin pin : batch.shotList().pins()) {
        if (pin.place() != null && pin.rig().equals(rig(rig)) && jobs.remove(pin.job())) {
          seats.add(pin);
        }
      }
      seats.sort(Comparator.comparingInt(Ground::seat));
      seats.forEach(pin -> jobs.add(Math.min(seat(pin), jobs.size()), pin.job()));
      byRig.add(jobs);
    }
    return new Orders(byRig);
  }

  private static int seat(Pin pin) {
    Integer place = pin.place();
    return place == null ? Integer.MAX_VALUE : place;
  }
}
