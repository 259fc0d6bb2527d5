package slabwright.work.coat;

import java.util.List;
import java.util.OptionalDouble;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.work.book.Figure;
import slabwright.work.book.Kit;

/**
 * A coat that is laid section by section, each in one go.
 *
 * @param sections in the order they are laid, the farthest from the way out first
 * @param lines between them
 * @param lap that the next section laps the one before at a line, mm; empty where nothing is rolled
 */
public record DividedCoat(List<Section> sections, List<DivisionLine> lines, OptionalDouble lap) {
  public DividedCoat {
    sections = List.copyOf(sections);
    lines = List.copyOf(lines);
  }

  /**
   * One section.
   *
   * @param number from 1
   * @param share of the coat's floor, 0 to 1
   * @param plan of this section alone, not divided again
   */
  public record Section(int number, Region region, double share, CoatPlan plan) {
    /** How many batches it is laid in; 0 where nothing is mixed. */
    int batches() {
      return plan.mixed().map(b -> b.list().size()).orElse(0);
    }
  }

  /** Why a coat is divided just there. */
  public enum Source {
    /** Drawn on the plan by hand. */
    PLAN,
    /** A joint that is marked. */
    JOINT,
    /** No joint lies near: a straight line, to be taped. */
    STRAIGHT
  }

  /** A line between two sections. */
  public record DivisionLine(Line line, Source source) {}

  /** Whole kits that are opened for each section, together. */
  static Figure<Kits> kits(List<Section> sections, Figure<List<Kit>> sold) {
    return Figure.all(sections.stream().map(s -> s.plan().kits()).toList())
        .with(sold, (all, kits) -> all.stream().reduce(Kits::and).orElseThrow());
  }
}
