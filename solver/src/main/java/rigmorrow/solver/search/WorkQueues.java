package rigmorrow.solver.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import rigmorrow.solver.timeline.CompiledBatch;
import rigmorrow.solver.timeline.Sequences;
import rigmorrow.solver.timeline.Timeline;

/**
 * The queues as primitive arrays while the search works on them: each rig's is the decoder's own,
 * the one behind the last is the backlog. A change is tried in place and either kept or undone.
 */
final class WorkQueues {
  private final CompiledBatch batch;
  private final Timeline timeline;
  private final int backlog;
  private final int[] leftOut;
  private int leftOutCount;

  /** Where each job is, as of the last kept change. */
  private final int[] queueOf;

  private final int[] placeOf;
  private final int[] carried;

  WorkQueues(CompiledBatch batch, Timeline timeline) {
    this.batch = batch;
    this.timeline = timeline;
    this.backlog = batch.rigCount();
    this.leftOut = new int[batch.jobCount()];
    this.queueOf = new int[batch.jobCount()];
    this.placeOf = new int[batch.jobCount()];
    this.carried = new int[batch.jobCount()];
  }

  /** Takes over a plan's sequences. */
  void set(Sequences sequences) {
    for (int rig = 0; rig < backlog; rig++) {
      timeline.setLength(rig, copy(sequences.byRig().get(rig), timeline.sequence(rig)));
    }
    leftOutCount = copy(sequences.backlog(), leftOut);
    for (int queue = 0; queue <= backlog; queue++) {
      settle(queue, 0);
    }
  }

  /** The queues as a plan of the given score. */
  Sequences sequences(long hard, long medium, long soft) {
    List<List<Integer>> byRig = new ArrayList<>();
    for (int rig = 0; rig < backlog; rig++) {
      byRig.add(list(jobs(rig), length(rig)));
    }
    return new Sequences(byRig, list(leftOut, leftOutCount), hard, medium, soft);
  }

  private static List<Integer> list(int[] jobs, int length) {
    return Arrays.stream(jobs, 0, length).boxed().toList();
  }

  private static int copy(List<Integer> from, int[] to) {
    for (int at = 0; at < from.size(); at++) {
      to[at] = from.get(at);
    }
    return from.size();
  }

  /** Number of the backlog's queue. */
  int backlog() {
    return backlog;
  }

  int[] jobs(int queue) {
    return queue == backlog ? leftOut : timeline.sequence(queue);
  }

  int length(int queue) {
    return queue == backlog ? leftOutCount : timeline.length(queue);
  }

  /** Queue that a job stands in, as of the last kept change. */
  int queueOf(int job) {
    return queueOf[job];
  }

  /** Place of a job in its queue, as of the last kept change. */
  int placeOf(int job) {
    return placeOf[job];
  }

  /** Number of jobs at the front of a queue that cannot be moved. */
  int frozen(int queue) {
    return queue == backlog ? 0 : batch.frozen(queue);
  }

  /**
   * First place of a rig whose job is captured after a second, as the plan was kept; behind the
   * last one where there is none.
   */
  int firstCapturedAfter(int rig, int second) {
    int[] jobs = timeline.sequence(rig);
    int low = 0;
    int high = timeline.length(rig);
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (timeline.keptCaptureEnd(jobs[middle]) > second) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /**
   * True where a place is neither over before a job's sample is there nor begins when its pictures
   * are due, as the plan was kept. The backlog is always in time.
   */
  boolean inTime(int job, int queue, int place) {
    if (queue == backlog) {
      return true;
    }
    int[] jobs = timeline.sequence(queue);
    return (place == 0 || timeline.keptCaptureEnd(jobs[place - 1]) < batch.due(job))
        && (place >= timeline.length(queue)
            || timeline.keptCaptureEnd(jobs[place]) > batch.ready(job));
  }

  /** First of the jobs round a place that stand together, ask for one setup and may be moved. */
  int firstOfRun(int queue, int at) {
    int[] jobs = jobs(queue);
    int request = batch.request(jobs[at]);
    int first = at;
    while (first > frozen(queue) && batch.request(jobs[first - 1]) == request) {
      first--;
    }
    return first;
  }

  /** The place behind the last of them. */
  int endOfRun(int queue, int at) {
    int[] jobs = jobs(queue);
    int request = batch.request(jobs[at]);
    int end = at + 1;
    while (end < length(queue) && batch.request(jobs[end]) == request) {
      end++;
    }
    return end;
  }

  /** Exchanges the two stretches. */
  void exchange(Change change) {
    if (change.left == change.right) {
      exchangeWithin(change);
    } else {
      exchangeBetween(change);
    }
  }

  /** Exchanges them back. */
  void undo(Change change) {
    change.turnRound();
    exchange(change);
    change.turnRound();
  }

  /** Remembers where the jobs of the changed queues stand. */
  void settle(Change change) {
    settle(change.left, change.leftAt);
    if (change.right != change.left) {
      settle(change.right, change.rightAt);
    }
  }

  private void settle(int queue, int from) {
    int[] jobs = jobs(queue);
    int length = length(queue);
    for (int at = from; at < length; at++) {
      queueOf[jobs[at]] = queue;
      placeOf[jobs[at]] = at;
    }
  }

  private void exchangeWithin(Change change) {
    int[] jobs = jobs(change.left);
    int start = change.leftAt;
    int middle = start + change.leftCount;
    int end = change.rightAt + change.rightCount;
    System.arraycopy(jobs, start, carried, 0, end - start);
    int to = start;
    System.arraycopy(carried, change.rightAt - start, jobs, to, change.rightCount);
    to += change.rightCount;
    System.arraycopy(carried, middle - start, jobs, to, change.rightAt - middle);
    to += change.rightAt - middle;
    System.arraycopy(carried, 0, jobs, to, change.leftCount);
  }

  private void exchangeBetween(Change change) {
    int[] left = jobs(change.left);
    int[] right = jobs(change.right);
    int leftTail = change.leftAt + change.leftCount;
    int rightTail = change.rightAt + change.rightCount;
    int more = change.rightCount - change.leftCount;
    System.arraycopy(left, change.leftAt, carried, 0, change.leftCount);
    if (more != 0) {
      int leftLength = length(change.left);
      int rightLength = length(change.right);
      System.arraycopy(left, leftTail, left, leftTail + more, leftLength - leftTail);
      System.arraycopy(right, change.rightAt, left, change.leftAt, change.rightCount);
      System.arraycopy(right, rightTail, right, rightTail - more, rightLength - rightTail);
      setLength(change.left, leftLength + more);
      setLength(change.right, rightLength - more);
    } else {
      System.arraycopy(right, change.rightAt, left, change.leftAt, change.rightCount);
    }
    System.arraycopy(carried, 0, right, change.rightAt, change.leftCount);
  }

  private void setLength(int queue, int length) {
    if (queue == backlog) {
      leftOutCount = length;
    } else {
      timeline.setLength(queue, length);
    }
  }
}
