package rigmorrow.solver.search;

import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.optaplanner.core.api.score.director.ScoreDirector;
import org.optaplanner.core.impl.heuristic.move.Move;
import org.optaplanner.core.impl.heuristic.selector.move.factory.MoveIteratorFactory;
import rigmorrow.solver.timeline.CompiledBatch;

/**
 * Draws the moves of the search: one job or a whole run of one setup is put beside a job that goes
 * well with it or anywhere, or changes places with another. Never proposes a job on a rig that
 * cannot take it and never touches what is running or done.
 */
public final class SetupAwareMoves
    implements MoveIteratorFactory<FloorSchedule, Move<FloorSchedule>> {
  @Override
  public long getSize(ScoreDirector<FloorSchedule> director) {
    long jobs = director.getWorkingSolution().getJobs().size();
    return Math.max(1, jobs * jobs);
  }

  @Override
  public Iterator<Move<FloorSchedule>> createOriginalMoveIterator(
      ScoreDirector<FloorSchedule> director) {
    throw new UnsupportedOperationException("moves are drawn at random only");
  }

  @Override
  public Iterator<Move<FloorSchedule>> createRandomMoveIterator(
      ScoreDirector<FloorSchedule> director, Random random) {
    return new Draw(director.getWorkingSolution(), random);
  }

  /** Draws one move after another; ends when so many draws in a row are no moves. */
  static final class Draw implements Iterator<Move<FloorSchedule>> {
    private static final int PATIENCE = 1000;
    private static final int LONGEST_STRETCH = 4;

    private final CompiledBatch batch;
    private final Neighbours neighbours;
    private final List<RigQueue> queues;
    private final Random random;
    private final int backlog;
    private @Nullable Move<FloorSchedule> upcoming;

    /** Where the job is that was found last. */
    private int foundQueue;

    private int foundAt;

    Draw(FloorSchedule schedule, Random random) {
      this.batch = schedule.batch();
      this.neighbours = schedule.neighbours();
      this.queues = schedule.getQueues();
      this.random = random;
      this.backlog = batch.rigCount();
    }

    @Override
    public boolean hasNext() {
      for (int tries = 0; upcoming == null && tries < PATIENCE; tries++) {
        upcoming = draw();
      }
      return upcoming != null;
    }

    @Override
    public Move<FloorSchedule> next() {
      if (!hasNext()) {
        throw new NoSuchElementException();
      }
      Move<FloorSchedule> move = upcoming;
      upcoming = null;
      return java.util.Objects.requireNonNull(move);
    }

    private @Nullable Move<FloorSchedule> draw() {
      if (batch.jobCount() == 0) {
        return null;
      }
      int fromQueue;
      int at;
      List<QueuedJob> left = queues.get(backlog).getJobs();
      if (!left.isEmpty() && random.nextInt(8) == 0) {
        fromQueue = backlog;
        at = random.nextInt(left.size());
      } else {
        find(random.nextInt(batch.jobCount()));
        fromQueue = foundQueue;
        at = foundAt;
      }
      if (at < frozen(fromQueue)) {
        return null;
      }
      int kind = random.nextInt(100);
      if (kind < 40) {
        return beside(fromQueue, at, 1);
      }
      if (kind < 55) {
        return anywhere(fromQueue, at, 1);
      }
      if (kind < 75) {
        return swap(fromQueue, at, 1, 1);
      }
      if (kind < 85) {
        return fromQueue == backlog ? null : run(fromQueue, at);
      }
      int stretch = stretch(fromQueue, at);
      return kind < 93
          ? anywhere(fromQueue, at, stretch)
          : swap(fromQueue, at, stretch, 1 + random.nextInt(LONGEST_STRETCH));
    }

    /** Puts jobs beside one that goes well with the first of them. */
    private @Nullable Move<FloorSchedule> beside(int fromQueue, int at, int count) {
      int job = queues.get(fromQueue).getJobs().get(at).number();
      int near = neighbours.pick(job, random);
      if (near == job) {
        return null;
      }
      find(near);
      int target = foundAt + random.nextInt(2);
      return move(fromQueue, at, count, foundQueue, target);
    }

    private @Nullable Move<FloorSchedule> anywhere(int fromQueue, int at, int count) {
      int toQueue = random.nextInt(backlog);
      int target = random.nextInt(queues.get(toQueue).getJobs().size() + 1);
      return move(fromQueue, at, count, toQueue, target);
    }

    /** Moves the whole run of one setup that the job stands in. */
    private @Nullable Move<FloorSchedule> run(int fromQueue, int at) {
      List<QueuedJob> queue = queues.get(fromQueue).getJobs();
      int request = batch.request(queue.get(at).number());
      int first = at;
      while (first > frozen(fromQueue) && batch.request(queue.get(first - 1).number()) == request) {
        first--;
      }
      int end = at + 1;
      while (end < queue.size() && batch.request(queue.get(end).number()) == request) {
        end++;
      }
      return random.nextBoolean()
          ? beside(fromQueue, first, end - first)
          : anywhere(fromQueue, first, end - first);
    }

    /**
     * @param target place counted with the jobs still in; put right here
     */
    private @Nullable Move<FloorSchedule> move(
        int fromQueue, int at, int count, int toQueue, int target) {
      if (!fit(fromQueue, at, count, toQueue) || target < frozen(toQueue)) {
        return null;
      }
      int place = target;
      if (fromQueue == toQueue) {
        if (target >= at && target <= at + count) {
          return null;
        }
        place = target > at ? target - count : target;
      }
      return new SegmentMove(queues.get(fromQueue), at, count, queues.get(toQueue), place);
    }

    private @Nullable Move<FloorSchedule> swap(int fromQueue, int at, int count, int mostOther) {
      int job = queues.get(fromQueue).getJobs().get(at).number();
      int other = random.nextBoolean() ? neighbours.pick(job, random) : randomJob();
      find(other);
      int otherQueue = foundQueue;
      int otherAt = foundAt;
      int otherCount = Math.min(mostOther, queues.get(otherQueue).getJobs().size() - otherAt);
      if (otherAt < frozen(otherQueue)
          || !fit(fromQueue, at, count, otherQueue)
          || !fit(otherQueue, otherAt, otherCount, fromQueue)) {
        return null;
      }
      RigQueue one = queues.get(fromQueue);
      RigQueue two = queues.get(otherQueue);
      if (fromQueue != otherQueue || at + count <= otherAt) {
        return new SegmentSwapMove(one, at, count, two, otherAt, otherCount);
      }
      return otherAt + otherCount <= at
          ? new SegmentSwapMove(two, otherAt, otherCount, one, at, count)
          : null;
    }

    private int randomJob() {
      return random.nextInt(batch.jobCount());
    }

    private int stretch(int queue, int at) {
      return Math.min(
          2 + random.nextInt(LONGEST_STRETCH - 1), queues.get(queue).getJobs().size() - at);
    }

    private boolean fit(int fromQueue, int at, int count, int toQueue) {
      if (toQueue == fromQueue) {
        return true;
      }
      List<QueuedJob> queue = queues.get(fromQueue).getJobs();
      for (int i = at; i < at + count; i++) {
        int job = queue.get(i).number();
        if (toQueue == backlog ? batch.pinnedRig(job) >= 0 : !batch.fits(job, toQueue)) {
          return false;
        }
      }
      return true;
    }

    private int frozen(int queue) {
      return queue == backlog ? 0 : batch.frozen(queue);
    }

    private void find(int job) {
      for (int queue = 0; queue <= backlog; queue++) {
        List<QueuedJob> jobs = queues.get(queue).getJobs();
        int size = jobs.size();
        for (int at = 0; at < size; at++) {
          if (jobs.get(at).number() == job) {
            foundQueue = queue;
            foundAt = at;
            return;
          }
        }
      }
      throw new IllegalStateException("job " + job + " is in no queue");
    }
  }
}
