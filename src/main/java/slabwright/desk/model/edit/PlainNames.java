package slabwright.desk.model.edit;

import java.util.stream.IntStream;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.words.Words;

/** Plain names for what nobody named, such as {@code trench 1}. */
public final class PlainNames {
  private PlainNames() {}

  /**
   * The first free name of a kind.
   *
   * @param taken how many more of the kind have been named and are not on the floor yet
   */
  public static String next(FloorArea area, MarkType type, int taken, Words words) {
    return IntStream.iterate(1, n -> n + 1)
        .mapToObj(n -> words.say("desk.model.plain-name", type.label(), n))
        .filter(name -> area.marks().stream().map(Mark::name).noneMatch(name::equals))
        .skip(taken)
        .findFirst()
        .orElseThrow();
  }
}
