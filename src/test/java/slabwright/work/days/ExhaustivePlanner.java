package slabwright.work.days;

import java.util.Arrays;
import java.util.List;

/**
 * The shortest plan of a few steps by trying every full hour for every step: slow, simple, and of
 * no kinship with the planner. Days of eight hours, work every day, abrading one hour.
 */
final class ExhaustivePlanner {
  static final int DAY = 8;

  private final List<WorkStep> tasks;
  private final int crew;
  private final int days;
  private final int[] busy;
  private final int[] starts;
  private final int[] ends;
  private int best = Integer.MAX_VALUE;

  private ExhaustivePlanner(List<WorkStep> tasks, int crew, int days) {
    this.tasks = tasks;
    this.crew = crew;
    this.days = days;
    this.busy = new int[24 * (days + 1)];
    this.starts = new int[tasks.size()];
    this.ends = new int[tasks.size()];
  }

  /** Hours from the first morning to the end of the shortest plan that ends within the days. */
  static int shortest(List<WorkStep> tasks, int crew, int days) {
    ExhaustivePlanner all = new ExhaustivePlanner(tasks, crew, days);
    all.from(0, 0);
    return all.best;
  }

  private void from(int i, int end) {
    if (end >= best) {
      return;
    }
    if (i == tasks.size()) {
      best = end;
      return;
    }
    WorkStep t = tasks.get(i);
    int opens = window(t, true);
    int closes = window(t, false);
    for (int at = opens; at < 24 * days; at++) {
      if (at <= closes) {
        place(t, at, () -> from(i + 1, Math.max(end, ends[i])), i);
      } else {
        abrade(t, i, opens, at, end);
      }
    }
  }

  private void abrade(WorkStep t, int i, int opens, int at, int end) {
    if (t.abrading().isEmpty()) {
      return;
    }
    WorkStep first = TestSteps.pausing("", "", "", t.abrading().get(), t.people());
    for (int a = opens; a < at; a++) {
      int done = work(first, a);
      if (done >= 0 && done <= at) {
        int from = a;
        take(first, from, 1);
        place(t, at, () -> from(i + 1, Math.max(end, ends[i])), i);
        take(first, from, -1);
      }
    }
  }

  private void place(WorkStep t, int at, Runnable then, int i) {
    int done = work(t, at);
    if (done >= 0 && done <= 24 * days) {
      take(t, at, 1);
      starts[i] = at;
      ends[i] = done;
      then.run();
      take(t, at, -1);
    }
  }

  private int window(WorkStep t, boolean opens) {
    return t.waits().stream()
        .mapToInt(
            w -> {
              int end = ends[Integer.parseInt(w.after().substring(1))];
              return opens
                  ? end + (int) w.atLeast().toHours()
                  : w.atMost().map(m -> end + (int) m.toHours()).orElse(Integer.MAX_VALUE);
            })
        .reduce(opens ? Math::max : Math::min)
        .orElse(opens ? 0 : Integer.MAX_VALUE);
  }

  /** When a step begun at an hour is done; -1 when it can't begin then. */
  private int work(WorkStep t, int at) {
    int left = (int) t.length().toHours();
    int h = at;
    if (h % 24 >= DAY || (!t.mayPause() && h % 24 + left > DAY)) {
      return -1;
    }
    while (left > 0) {
      if (h >= busy.length) {
        return -1;
      }
      if (h % 24 < DAY) {
        if (busy[h] + t.people() > crew) {
          return -1;
        }
        left--;
      }
      h++;
    }
    return h;
  }

  private void take(WorkStep t, int at, int sign) {
    int left = (int) t.length().toHours();
    for (int h = at; left > 0; h++) {
      if (h % 24 < DAY) {
        busy[h] += sign * t.people();
        left--;
      }
    }
  }

  @Override
  public String toString() {
    return Arrays.toString(starts) + Arrays.toString(ends);
  }
}
