package rigmorrow.model.use;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigmorrow.model.FloorFixtures;
import rigmorrow.model.RigBuilder;
import rigmorrow.model.outside.OutsideCheck;

class RigUseTest {
  @ParameterizedTest
  @MethodSource("rigmorrow.model.use.UseChecks#all")
  void isWhatTheStandardDefines(OutsideCheck check) {
    check.verify();
  }

  @Test
  void isNothingForARigThatDoesNothing() {
    RigUse use = RigUse.of(new RigBuilder("R1").build(), List.of(), UseChecks.CLOCK);
    assertThat(use.plannedBusySeconds()).isEqualTo(39_600);
    assertThat(use.allocationEfficiencyPercent()).isZero();
    assertThat(use.utilisationEfficiencyPercent()).isZero();
    assertThat(use.setupRatioPercent()).isZero();
  }

  @Test
  void isNothingForARigThatIsNeverOpen() {
    RigBuilder rig =
        new RigBuilder("R1")
            .open(FloorFixtures.hours("08:00", "10:00", java.time.DayOfWeek.SUNDAY));
    RigUse use = RigUse.of(rig.build(), List.of(), UseChecks.CLOCK);
    assertThat(use.plannedBusySeconds()).isZero();
    assertThat(use.allocationEfficiencyPercent()).isZero();
  }

  @Test
  void refusesTimesThatCannotBe() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RigUse("R1", 10, 5, 3, 3))
        .withMessageContaining("setup and production");
    assertThatIllegalArgumentException().isThrownBy(() -> new RigUse("R1", -1, 0, 0, 0));
  }
}
