package slabwright.site.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.Move;
import slabwright.units.Message;

/** Edits of the marks of one floor area. */
public sealed interface MarkEdit extends AreaEdit {
  /** Adds a mark on top, or changes the one with its id where it lies. */
  record Put(String areaId, Mark mark) implements MarkEdit {
    @Override
    public Message name() {
      return Message.of("site.mark-edit.mark", mark.kind().type().label());
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(area.withMarks(ListEdits.put(area.marks(), mark, Mark::id)));
    }
  }

  /** Takes marks away. */
  record Remove(String areaId, Set<String> ids) implements MarkEdit {
    public Remove {
      ids = java.util.Collections.unmodifiableSet(new TreeSet<>(ids));
    }

    @Override
    public Message name() {
      return ids.size() == 1
          ? Message.of("site.mark-edit.remove-mark")
          : Message.of("site.mark-edit.remove-marks");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      List<Mark> left = area.marks().stream().filter(m -> !ids.contains(m.id())).toList();
      return area.marks().size() - left.size() == ids.size()
          ? Optional.of(area.withMarks(left))
          : Optional.empty();
    }
  }

  /** Moves or turns marks together. */
  record MoveAll(String areaId, Set<String> ids, Move how) implements MarkEdit {
    public MoveAll {
      ids = java.util.Collections.unmodifiableSet(new TreeSet<>(ids));
    }

    @Override
    public Message name() {
      return how.turn() == 0
          ? Message.of("site.mark-edit.move")
          : Message.of("site.mark-edit.turn");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      return Optional.of(
          area.withMarks(
              area.marks().stream()
                  .map(m -> ids.contains(m.id()) ? m.withForm(m.form().map(how)) : m)
                  .toList()));
    }
  }

  /** Puts a mark at another place in the order of laying; the last lies on top. */
  record Reorder(String areaId, String id, int to) implements MarkEdit {
    @Override
    public Message name() {
      return Message.of("site.mark-edit.reorder");
    }

    @Override
    public Optional<FloorArea> change(FloorArea area) {
      Optional<Mark> mark = area.mark(id);
      if (mark.isEmpty() || to < 0 || to >= area.marks().size()) {
        return Optional.empty();
      }
      List<Mark> order = new ArrayList<>(area.marks());
      order.remove(mark.get());
      order.add(to, mark.get());
      return Optional.of(area.withMarks(order));
    }
  }
}
