package rigmorrow.benchmarks.cli;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import rigmorrow.benchmarks.instance.Instance;
import rigmorrow.benchmarks.peer.Peer;
import rigmorrow.benchmarks.run.Peers;
import rigmorrow.benchmarks.run.RunSettings;

/** What the tiers that plan have in common. */
final class RunOptions {
  @Spec(CommandLine.Spec.Target.MIXEE)
  private CommandSpec spec;

  @Option(names = "--seeds", paramLabel = "N", description = "Seeds 1 to N.")
  @Nullable Integer seeds;

  @Option(names = "--seconds", paramLabel = "S", description = "Wall time for one plan.")
  @Nullable Double seconds;

  @Option(names = "--cores", paramLabel = "N", description = "How many each peer may use.")
  @Nullable Integer cores;

  @Option(
      names = "--steps",
      paramLabel = "N",
      description = "Decodes for each search in place of time: the same plans on any machine.")
  long steps;

  @Option(
      names = "--peers",
      paramLabel = "A,B",
      split = ",",
      description = "Which peers run; all when left out.")
  List<String> peers = List.of();

  @Option(
      names = "--instances",
      paramLabel = "N",
      description = "Only the first so many of each group.")
  @Nullable Integer instances;

  /** The settings, with what a tier does when nothing is said. */
  RunSettings settings(int usualSeeds, int usualCores) {
    Double wall = seconds;
    if (wall != null && (wall < 0.05 || wall > 86_400)) {
      throw refused("--seconds", wall, "0.05 to 86400");
    }
    if (wall != null && steps > 0) {
      throw refused("--steps", steps, "one of --steps and --seconds");
    }
    return new RunSettings(
        wall == null ? null : Duration.ofMillis(Math.round(wall * 1000)),
        atLeast("--steps", steps, 0),
        (int) atLeast("--seeds", seeds == null ? usualSeeds : seeds, 1),
        (int) atLeast("--cores", cores == null ? usualCores : cores, 1));
  }

  /** The peers that were asked for. */
  List<Peer> chosenPeers() {
    if (peers.isEmpty()) {
      return Peers.all();
    }
    try {
      return Peers.named(peers);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), "--peers: " + e.getMessage(), e);
    }
  }

  /** The first of each group, as many as were asked for. */
  List<Instance> chosen(List<Instance> all) {
    if (instances == null) {
      return all;
    }
    long most = atLeast("--instances", instances, 1);
    Map<String, Integer> seen = new LinkedHashMap<>();
    return all.stream()
        .filter(instance -> seen.merge(instance.group(), 1, Integer::sum) <= most)
        .toList();
  }

  private long atLeast(String option, long value, long least) {
    if (value < least) {
      throw refused(option, value, "at least " + least);
    }
    return value;
  }

  private ParameterException refused(String option, Object value, String accepted) {
    return new ParameterException(
        spec.commandLine(), option + ": '" + value + "'; accepted: " + accepted);
  }
}
