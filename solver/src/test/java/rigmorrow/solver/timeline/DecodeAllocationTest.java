package rigmorrow.solver.timeline;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.api.Test;
import rigmorrow.solver.dispatch.Dispatcher;
import rigmorrow.solver.fixture.RandomFloors;

class DecodeAllocationTest {
  private static final int DECODES = 2000;

  @Test
  void allocatesNothingOnceItsChangeoversAreKnown() {
    CompiledBatch batch = CompiledBatch.of(RandomFloors.batch(7));
    Timeline timeline = new Timeline(batch);
    new Dispatcher(batch).best(() -> true).decode(timeline);
    ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
    long thread = Thread.currentThread().getId();
    threads.getThreadAllocatedBytes(thread);

    long before = threads.getThreadAllocatedBytes(thread);
    for (int i = 0; i < DECODES; i++) {
      timeline.decode();
    }
    long bytes = threads.getThreadAllocatedBytes(thread) - before;

    // The measurement itself may allocate a little; a byte for each decode would be too much.
    assertThat(bytes).isLessThan(DECODES);
    assertThat(timeline.finishedAt()).isPositive();
  }
}
