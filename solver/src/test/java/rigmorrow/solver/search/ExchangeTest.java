package rigmorrow.solver.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import rigmorrow.solver.timeline.Sequences;

@Timeout(value = 20, unit = TimeUnit.SECONDS)
class ExchangeTest {
  @Test
  void givesEachTheBestOfTheOthersWhereItIsBetter() {
    Exchange exchange = new Exchange(3);

    CompletableFuture<Sequences> first = meeting(exchange, 0, 30);
    CompletableFuture<Sequences> second = meeting(exchange, 1, 10);
    CompletableFuture<Sequences> third = meeting(exchange, 2, 20);

    assertThat(first.join()).isEqualTo(plan(10));
    assertThat(second.join()).isNull();
    assertThat(third.join()).isEqualTo(plan(10));
  }

  @Test
  void waitsForNobodyWhoHasLeft() {
    Exchange exchange = new Exchange(2);
    exchange.leave(0);
    exchange.leave(0);

    assertThat(meeting(exchange, 1, 10).join()).isNull();
  }

  @Test
  void letsThoseGoOnWhoWaitForSomebodyWhoLeaves() {
    Exchange exchange = new Exchange(2);
    CompletableFuture<Sequences> waiting = meeting(exchange, 0, 10);
    assertThat(waiting).isNotDone();

    exchange.leave(1);

    assertThat(waiting.join()).isNull();
  }

  private static CompletableFuture<Sequences> meeting(Exchange exchange, int search, long soft) {
    return CompletableFuture.supplyAsync(
        () -> exchange.meet(search, plan(soft)), task -> new Thread(task).start());
  }

  private static Sequences plan(long soft) {
    return new Sequences(List.of(), List.of(), 0, 0, soft);
  }
}
