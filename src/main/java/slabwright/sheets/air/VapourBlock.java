package slabwright.sheets.air;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Text;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.Slice;
import slabwright.sheets.page.TypeSizes;
import slabwright.words.Words;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.FreshAirNeed;
import slabwright.work.air.VapourStep;

/**
 * Vapour over time as a share of the lower explosive limit: a plot without fresh air and one with
 * the stated air, each well mixed and held low, with the limits as lines. Each plot has its own
 * height, so that neither is cut off or pressed flat.
 */
record VapourBlock(AirScreening air, JobClock clock, Words words) implements Block {
  static final Pen MEAN = Pen.of(0.6, Palette.BLUE);
  static final Pen LOW = Pen.of(0.6, Palette.RED).dashed(3, 1);
  private static final Pen TENTH = Pen.of(0.35, Palette.INK).dashed(1, 1);
  private static final Pen QUARTER = Pen.of(0.35, Palette.INK).dashed(4, 1.2);
  private static final Pen WHOLE = Pen.of(0.5, Palette.INK);

  @Override
  public List<Slice> slices(TypeSizes type, double width) {
    List<Slice> slices = new ArrayList<>();
    boolean alone = air.stated().isEmpty();
    slices.add(plot(words.say("sheets.vapour-block.closed"), air.closed(), alone, type, width));
    air.stated()
        .ifPresent(
            f -> slices.add(plot(words.say("sheets.vapour-block.stated"), f, true, type, width)));
    List<Slice> key = key().slices(type, width);
    for (int i = 0; i < key.size(); i++) {
      slices.add(new Slice(key.get(i).height(), i < key.size() - 1, key.get(i).inks()));
    }
    return slices;
  }

  /** The last plot stands over the key; one before it may stand in the column before. */
  private Slice plot(String title, AirFigures figures, boolean last, TypeSizes type, double width) {
    double k = type.k();
    double height = 46 * k;
    double from = air.steps().stream().mapToDouble(VapourStep::from).min().orElse(0);
    double until = Math.max(from + 60, figures.lel().end());
    double room = 0.12 * (until - from);
    double top = Math.max(1.1 * figures.layerPeakLel(), 1.3 * AirFigures.HAZARDOUS_SHARE);
    VapourPlot plot =
        new VapourPlot(
            15 * k, 9 * k, width - 2 * k, height - 8 * k, from - room / 2, until + room, top);
    List<Ink> inks = new ArrayList<>(plot.axes(type, clock));
    inks.add(Text.start(new Vec(0, 4 * k), title, type.strong()));
    inks.add(plot.level(AirFigures.HAZARDOUS_SHARE, TENTH));
    if (top >= FreshAirNeed.FIRE_SHARE) {
      inks.add(plot.level(FreshAirNeed.FIRE_SHARE, QUARTER));
    }
    if (top >= 1) {
      inks.add(plot.level(1, WHOLE));
    }
    inks.add(plot.curve(figures.lel(), air.space().layerFactor(), LOW));
    inks.add(plot.curve(figures.lel(), 1, MEAN));
    return new Slice(height + 2 * k, last, inks);
  }

  private KeyBlock key() {
    return KeyBlock.of(
        List.of(
            KeyBlock.line(MEAN, words.say("sheets.vapour-block.mean")),
            KeyBlock.line(LOW, words.say("sheets.vapour-block.low")),
            KeyBlock.line(TENTH, words.say("sheets.vapour-block.tenth")),
            KeyBlock.line(QUARTER, words.say("sheets.vapour-block.quarter")),
            KeyBlock.line(WHOLE, words.say("sheets.vapour-block.whole"))));
  }
}
