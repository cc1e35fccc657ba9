package rigmorrow.app.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import rigmorrow.app.cli.options.Bounds;
import rigmorrow.app.whatif.RunSettings;

/** How scenarios are compared. */
final class WhatIfOptions {

  @Option(
      names = "--time",
      paramLabel = "SECONDS",
      description = "For each plan. Default: 2, or no limit where --steps is given.")
  private @Nullable Integer seconds;

  @Option(
      names = "--steps",
      paramLabel = "N",
      description = "Steps of each plan. The same steps give the same figures on any machine.")
  private long steps;

  @Option(
      names = "--seeds",
      paramLabel = "N",
      defaultValue = "1",
      description = "Plans of each scenario and day, with seeds 1 to N. Default: ${DEFAULT-VALUE}.")
  private int seeds;

  @Option(
      names = "--cores",
      paramLabel = "N",
      description = "Plans made at the same time, one on each core. Default: every core.")
  private @Nullable Integer cores;

  @Option(
      names = "--demand",
      split = ",",
      paramLabel = "PERCENT",
      description =
          "Plan everything with so many per cent more jobs too, to see what paybacks depend on:"
              + " --demand=-20,20")
  private List<Double> demand = new ArrayList<>();

  @Option(
      names = "--again",
      description = "Plan the floor as it is once more with other seeds, to see what is luck.")
  private boolean again;

  @Option(
      names = "--one-more",
      description = "Compare one more of each rig, operator and piece of kit besides.")
  private boolean oneMore;

  /**
   * The settings.
   *
   * @throws ParameterException when a number is outside its bounds
   */
  RunSettings settings(CommandSpec spec) {
    Bounds bounds = new Bounds(spec);
    if (seconds != null) {
      bounds.between("--time", seconds, 1, RunSettings.MOST_SECONDS);
    }
    bounds.between("--steps", steps, 0, Long.MAX_VALUE);
    bounds.between("--seeds", seeds, 1, RunSettings.MOST_SEEDS);
    int processors = Runtime.getRuntime().availableProcessors();
    int atOnce = cores == null ? processors : cores;
    // Two plans on one core would get half the time each.
    bounds.between("--cores", atOnce, 1, processors);
    if (!RunSettings.demands(demand)) {
      throw new ParameterException(
          spec.commandLine(), "--demand is " + demand + "; accepted: " + RunSettings.DEMANDS);
    }
    Duration time = null;
    if (seconds != null || steps == 0) {
      time = Duration.ofSeconds(seconds == null ? RunSettings.USUAL_SECONDS : seconds);
    }
    return new RunSettings(time, steps, seeds, atOnce, demand, again, oneMore);
  }
}
