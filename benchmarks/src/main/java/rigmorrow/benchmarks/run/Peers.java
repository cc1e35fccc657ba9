package rigmorrow.benchmarks.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import rigmorrow.benchmarks.peer.CpSatPeer;
import rigmorrow.benchmarks.peer.GridPeer;
import rigmorrow.benchmarks.peer.Peer;
import rigmorrow.benchmarks.peer.RulePeer;
import rigmorrow.benchmarks.peer.SearchPeer;
import rigmorrow.benchmarks.plain.PlainPeer;

/** Every peer there is, ours first. A new one is a line here and a line in the protocol. */
public final class Peers {
  /** Name of our own search, which the others are held against. */
  public static final String OURS = "ours";

  private static final List<Peer> ALL =
      List.of(
          new SearchPeer(),
          RulePeer.dueDate(),
          RulePeer.changeover(),
          new GridPeer(),
          new PlainPeer(),
          new CpSatPeer());

  private Peers() {}

  /** All of them, in the order of tables. */
  public static List<Peer> all() {
    return ALL;
  }

  /**
   * The peers of some names, in the order of tables. Case does not matter, and a hyphen stands for
   * a blank.
   *
   * @throws IllegalArgumentException when there is no peer of a name
   */
  public static List<Peer> named(List<String> names) {
    List<Peer> found = new ArrayList<>();
    List<String> asked = names.stream().map(Peers::plain).toList();
    for (Peer peer : ALL) {
      if (asked.contains(plain(peer.name()))) {
        found.add(peer);
      }
    }
    List<String> known = ALL.stream().map(peer -> plain(peer.name())).toList();
    for (String name : asked) {
      if (!known.contains(name)) {
        throw new IllegalArgumentException(
            "'" + name + "'; accepted: " + known.stream().collect(Collectors.joining(", ")));
      }
    }
    return found;
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT).replace(' ', '-');
  }
}
