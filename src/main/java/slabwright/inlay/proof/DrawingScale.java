package slabwright.inlay.proof;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.inlay.panel.Panel;
import slabwright.shape.Bounds;
import slabwright.shape.Ring;

/**
 * A returned drawing brought to the size of what is to be cut. A page that says "1:25" is 25 times
 * as large in truth. One that is far too small for its stencil and says nothing was fitted to its
 * page: how large the shop would cut it can't be told.
 *
 * @param drawing at the size that it stands for
 * @param denominator what it was enlarged by; 1 when it is drawn in true size
 * @param stated whether the page says so; else the size was taken from the plan itself
 */
record DrawingScale(ShopDrawing drawing, double denominator, boolean stated) {
  private static final Pattern SCALE =
      Pattern.compile("(?:\\b1 ?: ?|(?i)\\bscale:? +1 ?/ ?)([0-9]{1,4}(?:[.,][0-9]{1,3})?)\\b");

  /** A drawing so near to its true size is not meant to be at another scale. */
  private static final double TRUE_SIZE = 0.1;

  /** Below this scale a drawing was fitted to its page; above it, it is simply too small. */
  private static final double FITTED = 0.4;

  private static final double MUCH_SMALLER = 0.5;
  private static final double SURE = 0.5;

  /**
   * The drawing as it is, when that is how it is meant.
   *
   * @param seen the drawing's contours
   */
  static DrawingScale of(ProofPlan plan, ShopDrawing drawing, DrawingContours seen) {
    List<Double> said = said(drawing);
    if (said.isEmpty() && !isMuchSmaller(plan, drawing)) {
      return new DrawingScale(drawing, 1, true);
    }
    OptionalDouble found = drawnAt(plan, seen);
    if (found.isEmpty() || Math.abs(found.getAsDouble() - 1) < TRUE_SIZE) {
      return new DrawingScale(drawing, 1, true);
    }
    double at = found.getAsDouble();
    Optional<Double> meant =
        said.stream()
            .filter(d -> d != 1)
            .min(Comparator.comparingDouble(d -> Math.abs(Math.log(d * at))));
    if (meant.isPresent()) {
      return new DrawingScale(drawing.scaled(meant.get()), meant.get(), true);
    }
    return at < FITTED
        ? new DrawingScale(drawing.scaled(1 / at), 1 / at, false)
        : new DrawingScale(drawing, 1, true);
  }

  /** The same once it is known how much the size taken from the plan was off. */
  DrawingScale enlarged(double by) {
    return new DrawingScale(drawing.scaled(by), denominator * by, stated);
  }

  DrawingScale withoutLetters() {
    return new DrawingScale(drawing.withoutLetters(), denominator, stated);
  }

  private static List<Double> said(ShopDrawing drawing) {
    List<Double> all = new ArrayList<>();
    for (ShopDrawing.Words words : drawing.words()) {
      Matcher m = SCALE.matcher(words.text());
      while (m.find()) {
        double d = Double.parseDouble(m.group(1).replace(',', '.'));
        if (d > 0 && !all.contains(d)) {
          all.add(d);
        }
      }
    }
    return all;
  }

  private static boolean isMuchSmaller(ProofPlan plan, ShopDrawing drawing) {
    Bounds all = Bounds.EMPTY;
    for (ShopDrawing.Piece piece : drawing.pieces()) {
      for (Ring ring : piece.rings()) {
        all = all.including(ring.bounds());
      }
    }
    double least = longer(plan.blank());
    for (Panel panel : plan.panels()) {
      least = Math.min(least, longer(panel.box()));
    }
    return !all.isEmpty() && longer(all) < MUCH_SMALLER * least;
  }

  private static double longer(Bounds b) {
    return Math.max(b.width(), b.height());
  }

  /** The scale of whatever of the plan is found best. */
  private static OptionalDouble drawnAt(ProofPlan plan, DrawingContours contours) {
    if (contours.rings().isEmpty() || plan.openings().isEmpty()) {
      return OptionalDouble.empty();
    }
    PoseSearch search = new PoseSearch(contours, ScaleRange.ANY);
    List<PlannedPiece> sheets = new ArrayList<>();
    sheets.add(new PlannedPiece("", plan.blank(), plan.openings()));
    if (plan.panels().size() > 1) {
      sheets.addAll(plan.pieces());
    }
    return sheets.stream()
        .flatMap(sheet -> search.fits(sheet, p -> true).stream().limit(1))
        .filter(f -> f.overlap() > SURE)
        .max(Comparator.comparingDouble(PoseFit::overlap))
        .map(f -> OptionalDouble.of(f.pose().scale()))
        .orElse(OptionalDouble.empty());
  }
}
