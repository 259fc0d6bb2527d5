package slabwright.sheets.scope;

import java.util.ArrayList;
import java.util.List;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.SignatureLine;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;

/**
 * Advice that was declined, in full, over a line to sign: who signs reads what is declined.
 *
 * @param standing who declined it and when, as far as known
 */
record DeclinedBlock(String advice, String standing, SheetContext context) implements Block {
  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Slice> slices = new ArrayList<>();
    Paragraph words =
        new Paragraph(context.say("sheets.declined-block.declined", advice, standing));
    words.slices(type, width).forEach(s -> slices.add(new Slice(s.height(), true, s.inks())));
    slices.addAll(
        SignatureLine.of(context.say("sheets.declined-block.client"), context).slices(type, width));
    return slices;
  }
}
