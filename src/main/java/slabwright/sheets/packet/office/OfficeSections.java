package slabwright.sheets.packet.office;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TableBlock;

/**
 * Headings with what stands under them, told apart by the room they need.
 *
 * @param narrow for two columns on a page
 * @param wide for the whole width
 */
record OfficeSections(List<Block> narrow, List<Block> wide) {
  /** With more, heads of columns are broken in half the width. */
  private static final int MOST_COLUMNS = 4;

  /**
   * Tells them apart.
   *
   * @param mostHigher a section that gets more than so many times as high in half the width is wide
   */
  static OfficeSections of(List<Block> blocks, double mostHigher, SheetContext context) {
    List<Block> narrow = new ArrayList<>();
    List<Block> wide = new ArrayList<>();
    for (List<Block> section : sections(blocks)) {
      (isNarrow(section, mostHigher, context) ? narrow : wide).addAll(section);
    }
    return new OfficeSections(List.copyOf(narrow), List.copyOf(wide));
  }

  /** Each with its heading, or the headings that follow each other. */
  static List<List<Block>> sections(List<Block> blocks) {
    List<List<Block>> all = new ArrayList<>();
    for (Block b : blocks) {
      boolean starts = b instanceof Heading && !(last(all) instanceof Heading);
      if (starts || all.isEmpty()) {
        all.add(new ArrayList<>());
      }
      all.get(all.size() - 1).add(b);
    }
    return all;
  }

  private static Block last(List<List<Block>> all) {
    if (all.isEmpty()) {
      return new Gap(0);
    }
    List<Block> section = all.get(all.size() - 1);
    return section.get(section.size() - 1);
  }

  private static double height(List<Block> blocks, SheetContext context, int columns) {
    double width = context.page().column(0, columns).width();
    return blocks.stream()
        .flatMap(b -> b.slices(context.type(), width).stream())
        .mapToDouble(Slice::height)
        .sum();
  }

  private static boolean isNarrow(Block block) {
    return block instanceof TableBlock t && t.columns().size() <= MOST_COLUMNS;
  }

  /** Tables that lose nothing in half the width, with nothing else under their heading. */
  private static boolean isNarrow(List<Block> section, double mostHigher, SheetContext context) {
    return section.stream().anyMatch(TableBlock.class::isInstance)
        && section.stream().allMatch(b -> b instanceof Heading || b instanceof Gap || isNarrow(b))
        && height(section, context, 2) <= mostHigher * height(section, context, 1);
  }
}
