package slabwright.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.ints.UnionFind;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.OutlinePiece;
import slabwright.units.Recent;

/**
 * The figures of a floor while marks or corners of it are moved: those of the floor as it was, less
 * what its part about what moved had, with what that part has now. They are the take-off's figures,
 * not near ones: every figure is local but one, whether a machine gets to a place at all, and that
 * is settled by the ways through the part, or left open.
 *
 * <p>Marks may be moved, reshaped, added and taken away, corners and walls of the outline moved,
 * reshaped and made another kind; anything else is left open too.
 */
public final class FollowedTakeoff {
  /** Old and new of a few windows. */
  private static final int ROOM = 12;

  private final FloorTakeoff base;
  private final FloorFigures figures;
  private final FloorBefore rests;
  private final LocalTakeoff.Whole whole;
  private final Recent<Question, LocalTakeoff> locals = new Recent<>(ROOM);

  /** What a part of the floor depends on. */
  private record Question(FloorWindow window, List<OutlinePiece> outline, List<Mark> marks) {}

  /** Follows the floor of a take-off within the usual tolerance. */
  public FollowedTakeoff(FloorTakeoff base) {
    this.base = base;
    figures = FloorFigures.of(base);
    rests = new FloorBefore(base);
    whole = new LocalTakeoff.Whole(base.area(), base.gross(), rests);
  }

  /** The floor that is followed. */
  public FloorTakeoff base() {
    return base;
  }

  /**
   * The figures of the floor with marks changed; none when more than a part must be looked at.
   *
   * @throws CancellationException when {@code cancelled} turned true
   */
  public Optional<FloorFigures> figures(FloorArea area, BooleanSupplier cancelled) {
    List<Mark> marks = between(base.area().marks(), area.marks());
    List<Mark> others = between(area.marks(), base.area().marks());
    Set<Mark> gone = only(marks, others);
    Set<Mark> come = only(others, marks);
    if (!isComparable(area) || !isOrderKept(marks, gone, others, come)) {
      return Optional.empty();
    }
    boolean isWalled = !area.outline().equals(base.area().outline());
    LocalTakeoff.Whole now = isWalled ? reshaped(area) : whole;
    Optional<List<Bounds>> walls = OutlineChange.between(whole, now, base.tolerance());
    if (walls.isEmpty()) {
      return Optional.empty();
    }
    List<Bounds> changes = new ArrayList<>(walls.get());
    changes.addAll(bounds(gone));
    changes.addAll(bounds(come));
    List<FloorWindow> windows =
        FloorWindow.about(changes, isWalled, area.machines(), base.tolerance());
    FloorFigures sum = figures;
    for (FloorWindow window : windows) {
      LocalTakeoff before = local(base.area(), whole, window, cancelled);
      LocalTakeoff after = local(area, now, window, cancelled);
      if (!isSameAccess(before, after, windows)) {
        return Optional.empty();
      }
      sum = sum.changed(before.figures(), after.figures());
    }
    return Optional.of(sum);
  }

  private LocalTakeoff.Whole reshaped(FloorArea area) {
    FloorArea bare = area.withMarks(List.of());
    OutlineRing outline = new OutlineRing(bare, base.tolerance());
    return new LocalTakeoff.Whole(bare, Region.of(outline.ring()), rests);
  }

  /** A body's turning is asked of the whole floor, so its length must be unknown. */
  private boolean isComparable(FloorArea area) {
    return area.withOutline(base.area().outline())
            .withMarks(base.area().marks())
            .equals(base.area())
        && base.tolerance() == FloorTakeoff.TOLERANCE
        && area.machines().stream().allMatch(m -> m.travel().length().isEmpty());
  }

  /** What of one list stands between the marks that both begin with and those that both end in. */
  private static List<Mark> between(List<Mark> these, List<Mark> those) {
    int most = Math.min(these.size(), those.size());
    int first = 0;
    while (first < most && these.get(first).equals(those.get(first))) {
      first++;
    }
    int last = 0;
    while (last < most - first
        && these.get(these.size() - 1 - last).equals(those.get(those.size() - 1 - last))) {
      last++;
    }
    return these.subList(first, these.size() - last);
  }

  /** The marks that one list has and the other has not. */
  private static Set<Mark> only(List<Mark> these, List<Mark> those) {
    Set<Mark> only = new LinkedHashSet<>(these);
    those.forEach(only::remove);
    return only;
  }

  /** Of two marks the later lies on top, so those that stay must stay in their order. */
  private static boolean isOrderKept(
      List<Mark> before, Set<Mark> gone, List<Mark> after, Set<Mark> come) {
    return before.stream()
        .filter(m -> !gone.contains(m))
        .toList()
        .equals(after.stream().filter(m -> !come.contains(m)).toList());
  }

  private List<Bounds> bounds(Set<Mark> marks) {
    return marks.stream()
        .filter(m -> FloorArrangement.owns(m.kind().type()))
        .map(rests::form)
        .filter(form -> !form.isEmpty())
        .map(Region::bounds)
        .toList();
  }

  private LocalTakeoff local(
      FloorArea area, LocalTakeoff.Whole of, FloorWindow window, BooleanSupplier cancelled) {
    List<Mark> marks =
        area.marks().stream().filter(m -> window.input().meets(rests.form(m).bounds())).toList();
    return locals.get(
        new Question(window, area.outline(), marks),
        () -> LocalTakeoff.of(area.withMarks(marks), window, of, cancelled));
  }

  /** Whether what was reached beyond the windows still is, and nothing else. */
  private boolean isSameAccess(LocalTakeoff before, LocalTakeoff after, List<FloorWindow> windows) {
    for (int i = 0; i < before.rooms().size(); i++) {
      WindowAccess.Rooms old = before.rooms().get(i);
      WindowAccess.Rooms now = after.rooms().get(i);
      if (old.torn() || now.torn() || !old.hasGatesOf(now) || !joins(old, now, windows)) {
        return false;
      }
    }
    return true;
  }

  /**
   * Whether gates and doors that one room joined are joined still: through the rooms that are there
   * now or, as far as that can be told for certain, round the windows.
   */
  private boolean joins(WindowAccess.Rooms old, WindowAccess.Rooms now, List<FloorWindow> windows) {
    int outside = now.count();
    if (isJoined(old, now, new UnionFind(now.count() + 1))) {
      return true;
    }
    List<Bounds> shut = windows.stream().flatMap(w -> w.places().boxes().stream()).toList();
    FreeRaster.Round round = rests.round(old.machine(), shut, now.gates());
    UnionFind sets = new UnionFind(now.count() + 1 + round.count());
    round.entered().forEach(piece -> sets.join(outside + 1 + piece, outside));
    for (int i = 0; i < now.gates().size(); i++) {
      int room = now.gates().get(i).room();
      round.beside().get(i).forEach(piece -> sets.join(outside + 1 + piece, room));
    }
    now.doors().forEach(d -> sets.join(d.room(), outside));
    return isJoined(old, now, sets);
  }

  private static boolean isJoined(WindowAccess.Rooms old, WindowAccess.Rooms now, UnionFind sets) {
    int outside = now.count();
    int[] want = new int[old.count()];
    Arrays.fill(want, -1);
    for (WindowAccess.Door door : old.doors()) {
      // A door that is blocked now brings nobody in, so its room needs another way.
      int there = now.door(door.id()).map(WindowAccess.Door::room).orElse(outside);
      if (!isSame(want, door.room(), sets.root(there))) {
        return false;
      }
    }
    for (int i = 0; i < now.gates().size(); i++) {
      WindowAccess.Gate gate = now.gates().get(i);
      if (gate.reached() && !isSame(want, old.gates().get(i).room(), sets.root(gate.room()))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSame(int[] want, int room, int root) {
    if (want[room] < 0) {
      want[room] = root;
    }
    return want[room] == root;
  }
}
