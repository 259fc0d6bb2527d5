package slabwright.inlay.artwork.css;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import slabwright.inlay.artwork.ArtworkPage;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.units.Message;

/**
 * The page of an SVG document. Lengths follow CSS Values 3: 96 px to the inch, 2.54 cm to the inch.
 * A missing size is taken from the viewBox; with neither, the page has no edge.
 */
public final class SvgPageReader {
  /** Pages with a viewBox are drawn this large, so that no unit is too small or too big to draw. */
  private static final double DRAWN = 1000;

  private static final double WIDEST = 1e7;
  private static final double NARROWEST = 1e-3;
  private static final double MOST_SLENDER = 1e4;
  private static final Pattern LENGTH =
      Pattern.compile(
          "([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:e[+-]?\\d+)?)(px|in|cm|mm|q|pt|pc|em|rem)?");

  private SvgPageReader() {}

  /** Reads the root's size and gives it one that can be drawn. */
  public static ArtworkPage settle(SvgElement root) {
    Optional<double[]> box = viewBox(root);
    OptionalDouble w =
        length(root.get("width"), t -> Message.of("inlay.svg-page-reader.page-width-is", t));
    OptionalDouble h =
        length(root.get("height"), t -> Message.of("inlay.svg-page-reader.page-height-is", t));
    ArtworkPage page = box.isPresent() ? ofBox(box.get(), w, h) : ofSize(w, h);
    root.attributes.put("width", String.valueOf(page.width()));
    root.attributes.put("height", String.valueOf(page.height()));
    if (!page.hasEdge()) {
      root.attributes.put("overflow", "visible");
    }
    return page;
  }

  private static ArtworkPage ofBox(double[] box, OptionalDouble w, OptionalDouble h) {
    double aspect = box[2] / box[3];
    double width = w.orElse(h.isPresent() ? h.getAsDouble() * aspect : box[2]);
    double height = h.orElse(width / aspect);
    if (!(Math.max(aspect, 1 / aspect) < MOST_SLENDER)
        || !(Math.max(width / height, height / width) < MOST_SLENDER)) {
      throw absurd(Message.of("inlay.svg-page-reader.page-is", width, height));
    }
    double scale = DRAWN / Math.max(width, height);
    return new ArtworkPage(width * scale, height * scale, 1 / scale, true);
  }

  private static ArtworkPage ofSize(OptionalDouble w, OptionalDouble h) {
    // 300 by 150 px is the size CSS 2.2 (10.3.2) gives to what states none
    double width = w.orElse(300);
    double height = h.orElse(150);
    double large = Math.max(width, height);
    double small = Math.min(width, height);
    if (large > WIDEST || small < NARROWEST) {
      throw absurd(Message.of("inlay.svg-page-reader.page-is", width, height));
    }
    return new ArtworkPage(width, height, 1, w.isPresent() && h.isPresent());
  }

  private static Optional<double[]> viewBox(SvgElement root) {
    String text = root.get("viewBox").trim();
    if (text.isEmpty()) {
      return Optional.empty();
    }
    double[] v;
    try {
      v = Stream.of(text.split("[\\s,]+")).mapToDouble(Double::parseDouble).toArray();
    } catch (NumberFormatException e) {
      throw badBox(text);
    }
    if (v.length != 4 || !DoubleStream.of(v).allMatch(Double::isFinite) || v[2] <= 0 || v[3] <= 0) {
      throw badBox(text);
    }
    return Optional.of(v);
  }

  private static RefusedArtworkException badBox(String text) {
    return absurd(Message.of("inlay.svg-page-reader.view-box-is", text));
  }

  private static RefusedArtworkException absurd(Message what) {
    return new RefusedArtworkException(
        Reason.ABSURD_SIZE, Message.of("inlay.svg-page-reader.give-plain-size", what));
  }

  /** In px; empty for percentages, {@code auto} and what is missing. */
  private static OptionalDouble length(String text, Function<String, Message> which) {
    String s = text.trim().toLowerCase(Locale.ROOT);
    if (s.isEmpty() || s.equals("auto") || s.endsWith("%")) {
      return OptionalDouble.empty();
    }
    Matcher m = LENGTH.matcher(s);
    double px = m.matches() ? Double.parseDouble(m.group(1)) * pxPer(m.group(2)) : Double.NaN;
    if (!(px > 0) || Double.isInfinite(px)) {
      throw absurd(which.apply(text));
    }
    return OptionalDouble.of(px);
  }

  private static double pxPer(String unit) {
    String plain = unit == null ? "px" : unit.equals("em") ? "rem" : unit;
    return CssLength.pxPer(plain).orElse(1.0);
  }
}
