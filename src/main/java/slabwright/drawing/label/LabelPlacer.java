package slabwright.drawing.label;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import slabwright.drawing.SegmentClip;
import slabwright.drawing.TextBox;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.shape.near.BoxIndex;

/**
 * Gives labels places on paper, first come, first served: no box lies on another, on a line to keep
 * clear of, on a leader, or outside the frame. A label whose wishes are all taken moves outwards in
 * rings and gets a leader; one that finds no place within its reach gets none.
 *
 * <p>Greedy, so an early label may keep a later one from the better place.
 */
public final class LabelPlacer {
  private static final int DIRECTIONS = 16;
  private static final double STEP = 1.2;

  private final Bounds frame;
  private final double gap;
  private final BoxIndex<TextBox> taken = new BoxIndex<>();
  private final BoxIndex<List<Vec>> lines = new BoxIndex<>();

  /**
   * An empty frame to place labels in.
   *
   * @param gap millimetres kept free around every box
   */
  public LabelPlacer(Bounds frame, double gap) {
    this.frame = frame;
    this.gap = gap;
  }

  /** Keeps labels off the box. */
  public LabelPlacer avoid(Bounds b) {
    take(box(b));
    return this;
  }

  /** Keeps labels off words already set. */
  public LabelPlacer avoid(TextBox words) {
    take(words);
    return this;
  }

  /** Keeps labels off the straight line. */
  public LabelPlacer avoid(Vec from, Vec to) {
    keepClearOf(List.of(from, to));
    return this;
  }

  private void take(TextBox box) {
    taken.add(box.bounds(), box);
  }

  private void keepClearOf(List<Vec> line) {
    lines.add(Bounds.of(line), line);
  }

  /** Keeps labels off the ring's sides. */
  public LabelPlacer avoid(Ring ring) {
    List<Vec> p = ring.points();
    for (int i = 0; i < p.size(); i++) {
      avoid(p.get(i), p.get((i + 1) % p.size()));
    }
    return this;
  }

  /** Whether words in this box would lie inside the frame and on nothing placed or avoided. */
  public boolean isFree(TextBox words) {
    return inFrame(words.bounds()) && free(words, words.bounds());
  }

  /** Whether the straight line crosses no box placed or avoided. */
  public boolean isClear(Vec from, Vec to) {
    return !taken.any(Bounds.of(List.of(from, to)), t -> SegmentClip.meets(from, to, t.bounds()));
  }

  /** Finds a free place and takes it; empty when there is none within the label's reach. */
  public Optional<Label.Placed> place(Label label) {
    return place(label, middle -> true);
  }

  /** The same among the places whose middle is good. */
  public Optional<Label.Placed> place(Label label, Predicate<Vec> isGood) {
    for (Vec wish : label.wishes()) {
      Optional<Label.Placed> placed = isGood.test(wish) ? at(label, wish) : Optional.empty();
      if (placed.isPresent()) {
        return placed;
      }
    }
    for (double r = STEP; r <= label.reach(); r += STEP) {
      for (int i = 0; i < DIRECTIONS; i++) {
        double a = 2 * Math.PI * i / DIRECTIONS;
        Vec middle = label.about().plus(new Vec(Math.cos(a) * r, -Math.sin(a) * r));
        Optional<Label.Placed> placed = isGood.test(middle) ? at(label, middle) : Optional.empty();
        if (placed.isPresent()) {
          return placed;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Label.Placed> at(Label label, Vec middle) {
    Bounds b = bounds(label, middle);
    List<Vec> leader = leader(label, b);
    Bounds about = b.grown(gap);
    if (!inFrame(b) || !free(box(about), about) || !clear(leader)) {
      return Optional.empty();
    }
    take(box(b));
    if (!leader.isEmpty()) {
      keepClearOf(leader);
    }
    return Optional.of(new Label.Placed(middle, leader));
  }

  private boolean inFrame(Bounds b) {
    return b.minX() >= frame.minX()
        && b.minY() >= frame.minY()
        && b.maxX() <= frame.maxX()
        && b.maxY() <= frame.maxY();
  }

  private boolean free(TextBox box, Bounds b) {
    return !taken.any(b, box::overlaps)
        && !lines.any(b, l -> SegmentClip.meets(l.get(0), l.get(1), b));
  }

  /** Whether the leader crosses no box but those its own point lies in. */
  private boolean clear(List<Vec> leader) {
    return leader.isEmpty() || !taken.any(Bounds.of(leader), t -> blocks(t.bounds(), leader));
  }

  private static boolean blocks(Bounds b, List<Vec> leader) {
    return !b.contains(leader.get(0)) && SegmentClip.meets(leader.get(0), leader.get(1), b);
  }

  /** From the point to the nearest place of the box's rim; none when they are close. */
  private static List<Vec> leader(Label label, Bounds b) {
    Vec about = label.about();
    Vec rim =
        new Vec(
            Math.min(Math.max(about.x(), b.minX()), b.maxX()),
            Math.min(Math.max(about.y(), b.minY()), b.maxY()));
    return about.distanceTo(rim) < label.near() ? List.of() : List.of(about, rim);
  }

  private static Bounds bounds(Label label, Vec middle) {
    double w = label.width() / 2;
    double h = label.height() / 2;
    return new Bounds(middle.x() - w, middle.y() - h, middle.x() + w, middle.y() + h);
  }

  private static TextBox box(Bounds b) {
    return new TextBox("", Ring.rectangle(b.minX(), b.minY(), b.maxX(), b.maxY()));
  }
}
