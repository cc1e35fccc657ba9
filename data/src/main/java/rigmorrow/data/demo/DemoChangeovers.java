package rigmorrow.data.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import rigmorrow.model.setup.ChangeoverRule;

/** The changeover tables: seconds that are this scenario's own. */
final class DemoChangeovers {
  private static final String ANY = ChangeoverRule.ANY;
  private final List<ChangeoverRule> rules = new ArrayList<>();

  private DemoChangeovers() {}

  /**
   * The tables.
   *
   * @param platforms ids of the walk-on platforms, where a background takes two people
   */
  static List<ChangeoverRule> rules(Set<String> platforms) {
    DemoChangeovers tables = new DemoChangeovers();
    tables.background(platforms);
    tables.lightingAndSurface();
    tables.camera();
    tables.rigging();
    tables.powerAndFlags();
    return List.copyOf(tables.rules);
  }

  private void background(Set<String> platforms) {
    plain(DemoSetups.BACKGROUND, ANY, "white-reflected", 150);
    plain(DemoSetups.BACKGROUND, ANY, "grey", 180);
    plain(DemoSetups.BACKGROUND, ANY, "black", 210);
    warmUp(DemoSetups.BACKGROUND, ANY, "white-direct", 180, 90);
    warmUp(DemoSetups.BACKGROUND, "white-reflected", "white-direct", 60, 90);
    plain(DemoSetups.BACKGROUND, "white-direct", "white-reflected", 45);
    plain(DemoSetups.BACKGROUND, "black", "grey", 240);
    rules.add(
        new ChangeoverRule(
            DemoSetups.BACKGROUND,
            ANY,
            ANY,
            platforms,
            scaled(270),
            0,
            2,
            Set.of(),
            "Change the large background roll, two people"));
  }

  private void lightingAndSurface() {
    plain(DemoSetups.LIGHTING, ANY, "strobe-soft", 180);
    plain(DemoSetups.LIGHTING, ANY, "strobe-crisp", 150);
    plain(DemoSetups.LIGHTING, "strobe-soft", "strobe-crisp", 90);
    plain(DemoSetups.LIGHTING, "strobe-crisp", "strobe-soft", 120);
    warmUp(DemoSetups.LIGHTING, ANY, "continuous-soft", 150, 240);
    warmUp(DemoSetups.LIGHTING, ANY, "continuous-low", 180, 300);
    warmUp(DemoSetups.LIGHTING, "continuous-soft", "continuous-low", 100, 60);
    warmUp(DemoSetups.LIGHTING, "continuous-low", "continuous-soft", 80, 30);
    plain(DemoSetups.SURFACE, ANY, ANY, 120);
    plain(DemoSetups.SURFACE, ANY, "glass", 240);
    plain(DemoSetups.SURFACE, ANY, "mat", 60);
    plain(DemoSetups.SURFACE, "mat", "acrylic", 100);
  }

  private void camera() {
    align("a-50");
    align("a-100");
    align("b-70");
    align("b-macro");
    lens("a-50", "a-100", 90);
    lens("a-100", "a-50", 80);
    lens("b-70", "b-macro", 120);
    lens("b-macro", "b-70", 100);
  }

  private void rigging() {
    skilled(DemoSetups.ARM, ANY, "docked", 180, 2, DemoCrew.RIGGING, null);
    skilled(DemoSetups.ARM, ANY, "home", 90, 1, DemoCrew.RIGGING, null);
    skilled(DemoSetups.FRAME, ANY, "over-plate", 200, 2, DemoCrew.RIGGING, null);
    skilled(DemoSetups.FRAME, ANY, "parked", 120, 1, DemoCrew.RIGGING, null);
    skilled(DemoSetups.SUSPENSION, ANY, "strings", 210, 1, DemoCrew.RIGGING, null);
    skilled(DemoSetups.SUSPENSION, ANY, "hanger", 150, 1, DemoCrew.RIGGING, null);
    skilled(DemoSetups.SUSPENSION, ANY, "none", 60, 1, DemoCrew.HANDLING, null);
  }

  private void powerAndFlags() {
    skilled(
        DemoSetups.POWER,
        ANY,
        "on",
        120,
        1,
        DemoCrew.ELECTRICAL,
        "Socket: fit and test it, leave it switched off");
    skilled(
        DemoSetups.POWER,
        ANY,
        "off",
        60,
        1,
        DemoCrew.ELECTRICAL,
        "Socket: take it out of service and secure it");
    plain(DemoSetups.FLAGS, ANY, "sides", 110);
    plain(DemoSetups.FLAGS, ANY, "sides-under", 210);
    plain(DemoSetups.FLAGS, "sides", "sides-under", 120);
    plain(DemoSetups.FLAGS, ANY, "none", 60);
  }

  private void align(String to) {
    String step = "Camera and lens: {from} to {to}; align its sensor";
    skilled(DemoSetups.CAMERA, ANY, to, 330, 1, DemoCrew.CAMERA, step);
  }

  private void lens(String from, String to, int seconds) {
    String step = "Camera and lens: {from} to {to}; the lens only";
    skilled(DemoSetups.CAMERA, from, to, seconds, 1, DemoCrew.CAMERA, step);
  }

  private void plain(String attribute, String from, String to, int seconds) {
    warmUp(attribute, from, to, seconds, 0);
  }

  private void warmUp(String attribute, String from, String to, int seconds, int tailSeconds) {
    rules.add(
        new ChangeoverRule(
            attribute, from, to, Set.of(), scaled(seconds), tailSeconds, 1, Set.of(), null));
  }

  private void skilled(
      String attribute,
      String from,
      String to,
      int seconds,
      int people,
      String skill,
      @Nullable String step) {
    rules.add(
        new ChangeoverRule(
            attribute, from, to, Set.of(), scaled(seconds), 0, people, Set.of(skill), step));
  }

  private static int scaled(int seconds) {
    return (int) Math.round(seconds * DemoKnobs.CHANGEOVER_SCALE);
  }
}
