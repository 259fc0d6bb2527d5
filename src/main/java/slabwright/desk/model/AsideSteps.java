package slabwright.desk.model;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import slabwright.site.Site;
import slabwright.site.edit.History;
import slabwright.units.Message;

/**
 * Steps that change something beside the plan, such as a value of the shop book. Each belongs to
 * the state of the plan that it was taken at: it is taken back before the edit that led to that
 * state, and done again before the edit that led on from it.
 */
final class AsideSteps {
  /**
   * One step.
   *
   * @param position of the plan's state in its history
   * @param at that state
   */
  private record Step(int position, Site at, Message name, Runnable back, Runnable again) {
    boolean belongsTo(History h) {
      return h.position() == position && h.now().equals(at);
    }
  }

  private final Deque<Step> done = new ArrayDeque<>();
  private final Deque<Step> undone = new ArrayDeque<>();

  void add(History now, Message name, Runnable back, Runnable again) {
    undone.clear();
    done.push(new Step(now.position(), now.now(), name, back, again));
  }

  /** Another plan is open: nothing of this one's surroundings is changed any more. */
  void clear() {
    done.clear();
    undone.clear();
  }

  /** The plan went another way: what was taken back stays so. */
  void forgetUndone() {
    undone.clear();
  }

  /** What would be taken back before an edit of the plan is. */
  Optional<Message> undoName(History now) {
    return top(done, now).map(Step::name);
  }

  Optional<Message> redoName(History now) {
    return top(undone, now).map(Step::name);
  }

  /** Takes the last step back, if it was taken at this state; whether it did. */
  boolean undo(History now) {
    Optional<Step> step = top(done, now);
    step.ifPresent(
        s -> {
          undone.push(done.pop());
          s.back().run();
        });
    return step.isPresent();
  }

  boolean redo(History now) {
    Optional<Step> step = top(undone, now);
    step.ifPresent(
        s -> {
          done.push(undone.pop());
          s.again().run();
        });
    return step.isPresent();
  }

  /** The newest step when it belongs to the state; those of states that are gone are dropped. */
  private static Optional<Step> top(Deque<Step> steps, History now) {
    while (!steps.isEmpty() && isGone(steps.peek(), now)) {
      steps.pop();
    }
    return Optional.ofNullable(steps.peek()).filter(s -> s.belongsTo(now));
  }

  private static boolean isGone(Step s, History now) {
    return s.position() >= now.sites().size() || !now.sites().get(s.position()).equals(s.at());
  }
}
