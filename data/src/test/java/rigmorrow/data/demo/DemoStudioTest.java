package rigmorrow.data.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import rigmorrow.model.floor.Floor;
import rigmorrow.model.floor.Kit;
import rigmorrow.model.floor.KitUnit;
import rigmorrow.model.floor.Operator;
import rigmorrow.model.floor.Rig;
import rigmorrow.model.recipe.ItemSetupRule;
import rigmorrow.model.recipe.Recipe;
import rigmorrow.model.setup.AttributeValue;
import rigmorrow.model.setup.ChangeoverRule;
import rigmorrow.model.setup.Setup;
import rigmorrow.model.setup.SetupAttribute;
import rigmorrow.model.time.PlanClock;
import rigmorrow.model.time.WorkingHours;
import rigmorrow.model.work.ChangeoverModel;

class DemoStudioTest {
  @Test
  void growsInRigsCrewAndKit() {
    assertThat(DemoStudio.floor().rigs()).hasSize(6);
    assertThat(DemoStudio.floor().crew()).hasSize(4);
    Floor ten = DemoStudio.floor(DemoKnobs.DATE, 10);
    assertThat(ten.rigs()).hasSize(10).extracting(Rig::id).doesNotHaveDuplicates();
    assertThat(ten.crew()).hasSize(7);
    assertThat(ten.kit(DemoKit.ROTATOR_HEAD).orElseThrow().units()).hasSize(2);
    assertThat(DemoStudio.floor(DemoKnobs.DATE, 12).crew()).hasSize(9);
  }

  @Test
  void refusesASizeThatItDoesNotHave() {
    assertThatThrownBy(() -> DemoStudio.floor(DemoKnobs.DATE, 13))
        .hasMessageContaining("rigs is 13");
  }

  @Test
  void keepsThePlatformClosedUntilNine() {
    Rig platform = DemoStudio.floor().rig("R4").orElseThrow();
    PlanClock clock = new PlanClock(DemoStudio.floor().zone(), DemoKnobs.DATE, 1);

    assertThat(WorkingHours.of(platform, clock))
        .singleElement()
        .satisfies(
            span -> assertThat(clock.at(span.start()).toLocalTime()).isEqualTo(LocalTime.of(9, 0)));
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 10, 12})
  void knowsEverySetupValueThatItNames(int rigs) {
    Floor floor = DemoStudio.floor(DemoKnobs.DATE, rigs);
    Stream<Setup> setups =
        Stream.of(
                floor.rigs().stream().map(Rig::initialSetup),
                floor.recipes().stream().map(Recipe::setup),
                floor.itemSetups().stream().map(ItemSetupRule::set),
                Stream.of(DemoProduct.values()).map(DemoProduct::asks))
            .flatMap(each -> each);
    assertThat(setups)
        .allSatisfy(setup -> setup.values().forEach((key, value) -> known(floor, key, value)));
    for (Rig rig : floor.rigs()) {
      rig.offers().forEach((key, values) -> values.forEach(value -> known(floor, key, value)));
    }
    for (ChangeoverRule rule : floor.changeovers()) {
      for (String value : List.of(rule.from(), rule.to())) {
        if (!value.equals(ChangeoverRule.ANY)) {
          known(floor, rule.attribute(), value);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 10, 12})
  void startsEveryRigInACompleteSetupThatItOffers(int rigs) {
    Floor floor = DemoStudio.floor(DemoKnobs.DATE, rigs);
    Set<String> attributes =
        floor.attributes().stream().map(SetupAttribute::id).collect(Collectors.toSet());
    for (Rig rig : floor.rigs()) {
      Map<String, String> values = rig.initialSetup().values();
      assertThat(values).containsOnlyKeys(attributes);
      values.forEach(
          (key, value) -> assertThat(rig.offers(key, value)).as(rig.id() + value).isTrue());
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 10, 12})
  void hasATimeForEveryChangeOfEveryRig(int rigs) {
    Floor floor = DemoStudio.floor(DemoKnobs.DATE, rigs);
    ChangeoverModel changeovers = new ChangeoverModel(floor);
    for (Rig rig : floor.rigs()) {
      for (SetupAttribute attribute : floor.attributes()) {
        List<String> offered =
            attribute.values().stream()
                .map(AttributeValue::id)
                .filter(value -> rig.offers(attribute.id(), value))
                .toList();
        for (String from : offered) {
          for (String to : offered) {
            assertThat(changeovers.rule(rig, attribute.id(), from, to))
                .as("%s %s from %s to %s", rig.id(), attribute.id(), from, to)
                .isPresent();
          }
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 10, 12})
  void letsOneOperatorOfEachShiftDoAnyChangeover(int rigs) {
    Floor floor = DemoStudio.floor(DemoKnobs.DATE, rigs);
    Set<String> skills = new HashSet<>();
    floor.changeovers().forEach(rule -> skills.addAll(rule.skills()));
    floor.kits().forEach(kit -> skills.addAll(kit.skills()));
    floor.rigs().stream()
        .filter(rig -> rig.ring() != null)
        .forEach(rig -> skills.addAll(rig.ring().skills()));
    for (LocalTime start : List.of(LocalTime.of(7, 0), LocalTime.of(9, 30))) {
      assertThat(floor.crew().stream().filter(one -> one.shifts().get(0).from().equals(start)))
          .anyMatch(operator -> operator.skills().containsAll(skills));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {6, 10, 12})
  void knowsEveryKitPlaceRigAndSkillThatItNames(int rigs) {
    Floor floor = DemoStudio.floor(DemoKnobs.DATE, rigs);
    List<String> rigIds = floor.rigs().stream().map(Rig::id).toList();
    Set<String> kits = floor.kits().stream().map(Kit::id).collect(Collectors.toSet());
    Set<String> skills = new HashSet<>();
    floor.crew().stream().map(Operator::skills).forEach(skills::addAll);

    assertThat(floor.rigs()).allSatisfy(rig -> assertThat(kits).containsAll(rig.takesKit()));
    assertThat(floor.kits().stream().flatMap(kit -> kit.units().stream()).map(KitUnit::id))
        .doesNotHaveDuplicates();
    assertThat(floor.recipes())
        .allSatisfy(
            recipe -> {
              assertThat(skills).containsAll(recipe.skills());
              assertThat(rigIds).containsAll(recipe.measuredCaptureSeconds().keySet());
            });
    assertThat(skills).containsAll(floor.handling().hangSkills());
    assertThat(skills).containsAll(floor.handling().powerSkills());
  }

  @Test
  void hasChangeoversThatCostMoreOneWayThanTheOther() {
    Floor floor = DemoStudio.floor();
    ChangeoverModel changeovers = new ChangeoverModel(floor);
    Rig rig = floor.rig("R2").orElseThrow();
    for (String attribute : List.of("background", "lighting", "suspension", "flags", "power")) {
      List<String> values =
          floor.attribute(attribute).orElseThrow().values().stream()
              .map(AttributeValue::id)
              .toList();
      int there = seconds(changeovers, rig, attribute, values.get(0), values.get(1));
      int back = seconds(changeovers, rig, attribute, values.get(1), values.get(0));
      assertThat(there).as(attribute).isNotEqualTo(back);
    }
  }

  private static int seconds(
      ChangeoverModel changeovers, Rig rig, String attribute, String from, String to) {
    return changeovers.rule(rig, attribute, from, to).orElseThrow().attendedSeconds();
  }

  private static void known(Floor floor, String attribute, String value) {
    assertThat(floor.attribute(attribute).flatMap(each -> each.value(value)))
        .as(attribute + " " + value)
        .isPresent();
  }
}
