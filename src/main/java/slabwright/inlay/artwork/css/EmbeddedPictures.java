package slabwright.inlay.artwork.css;

import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.GraphicFormat;
import slabwright.inlay.artwork.RefusedArtworkException;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.inlay.artwork.picture.TracedPicture;
import slabwright.units.Message;

/**
 * Pictures that an SVG carries in itself become the outlines traced of them, as an inner drawing in
 * their place. The paper of a picture that nothing is painted before stays bare.
 *
 * <p>Known limits: how large a picture is drawn, which its doubt follows from, is told by its own
 * size, the transforms and the pages round it and round its copies, not by the width and height of
 * a copied symbol.
 */
public final class EmbeddedPictures {
  private static final int MOST = 50;

  /** Copies of copies are followed so far. */
  private static final int DEEPEST_COPY = 3;

  private static final Set<String> PAINTED =
      Set.of(
          "path",
          "rect",
          "circle",
          "ellipse",
          "line",
          "polyline",
          "polygon",
          "text",
          "use",
          "image");
  private static final Set<String> KEPT_FOR_USE =
      Set.of("defs", "symbol", "pattern", "mask", "clipPath", "marker");
  private static final Set<String> PLACE =
      Set.of("x", "y", "width", "height", "preserveAspectRatio");
  private static final Pattern SCALING =
      Pattern.compile("(matrix|scale)\\s*\\(([^)]*)\\)", Pattern.CASE_INSENSITIVE);
  private static final Pattern NUMBER =
      Pattern.compile("\\s*([+-]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][+-]?\\d+)?)(?:px)?\\s*");

  private final WarningCollector notes;
  private final Map<String, Optional<TracedPicture>> known = new HashMap<>();
  private boolean painted;
  private boolean others;
  private boolean leftOut;
  private boolean drawn;
  private int count;
  private double doubt;

  /** The largest scale at which something is copied, by its id. */
  private final Map<String, Double> copies = new HashMap<>();

  private EmbeddedPictures(WarningCollector notes) {
    this.notes = notes;
  }

  /**
   * Traces all pictures below a root whose page is settled.
   *
   * @return how far 95 % of the traced edges may be off at most, in the page's pixels; 0 without
   *     pictures
   */
  public static double trace(SvgElement root, WarningCollector notes) {
    EmbeddedPictures all = new EmbeddedPictures(notes);
    for (int depth = 0; depth < DEEPEST_COPY; depth++) {
      all.copies(root, pageScale(root));
    }
    all.visit(root, pageScale(root), false);
    if (all.leftOut && !all.drawn && !all.others) {
      throw new RefusedArtworkException(Reason.PICTURE, Message.of("inlay.svg11-rewriter.picture"));
    }
    return all.doubt;
  }

  /** Once for copies, then for copies in what is copied. */
  private void copies(SvgElement outer, double scale) {
    for (SvgElement child : outer.elements()) {
      double drawn = copied(child, scale) * scaling(child);
      String link = child.get("xlink:href");
      if (child.is("use") && link.startsWith("#")) {
        copies.merge(link.substring(1), drawn, Math::max);
      }
      copies(child, drawn * (child.is("svg") ? pageScale(child) : 1));
    }
  }

  private double copied(SvgElement e, double inPlace) {
    return Math.max(inPlace, copies.getOrDefault(e.get("id"), 0.0));
  }

  private void visit(SvgElement outer, double inPlace, boolean kept) {
    for (SvgElement child : outer.elements()) {
      double scale = copied(child, inPlace);
      if (child.is("image")) {
        picture(outer, child, scale * scaling(child));
      } else {
        double inner = child.is("svg") ? pageScale(child) : 1;
        visit(child, scale * scaling(child) * inner, kept || KEPT_FOR_USE.contains(child.name));
      }
      boolean paints = !kept && PAINTED.contains(child.name);
      painted |= paints;
      others |= paints && !child.is("image");
    }
  }

  private void picture(SvgElement outer, SvgElement image, double scale) {
    int at = outer.children.indexOf(image);
    Optional<TracedPicture> traced =
        count++ < MOST
            ? known.computeIfAbsent(image.get("xlink:href"), EmbeddedPictures::traced)
            : Optional.empty();
    if (traced.isEmpty()) {
      outer.children.remove(at);
      leftOut = true;
      notes.add(Kind.PART_LEFT_OUT, Message.of("inlay.embedded-pictures.left-out"));
      return;
    }
    drawn = true;
    SvgElement drawing = drawing(image, traced.get());
    doubt = Math.max(doubt, traced.get().doubt() * scale * pageScale(drawing));
    outer.children.set(at, held(image, drawing));
  }

  /** The picture, or nothing when it can't be read or is no drawing of few colours. */
  private static Optional<TracedPicture> traced(String link) {
    try {
      return Optional.of(TracedPicture.of(bytes(link)));
    } catch (RefusedArtworkException unreadable) {
      return Optional.empty();
    }
  }

  private static byte[] bytes(String link) {
    int comma = link.indexOf(',');
    String head = link.substring(0, Math.max(0, comma)).toLowerCase(Locale.ROOT);
    byte[] bytes = {};
    if (head.contains(";base64")) {
      bytes = Base64.getMimeDecoder().decode(link.substring(comma + 1).replace("%2B", "+"));
    }
    if (GraphicFormat.of(bytes) != GraphicFormat.PICTURE) {
      throw new RefusedArtworkException(Reason.PICTURE, Message.of("inlay.svg11-rewriter.picture"));
    }
    return bytes;
  }

  /** A group with all that the picture had but its place. */
  private static SvgElement held(SvgElement image, SvgElement drawing) {
    SvgElement group = new SvgElement("g");
    image.attributes.forEach(
        (name, value) -> {
          if (!PLACE.contains(name) && !name.equals("xlink:href")) {
            group.attributes.put(name, value);
          }
        });
    group.children.add(drawing);
    return group;
  }

  private SvgElement drawing(SvgElement image, TracedPicture picture) {
    SvgElement page = new SvgElement("svg");
    for (String name : PLACE) {
      if (image.attributes.containsKey(name)) {
        page.attributes.put(name, image.get(name));
      }
    }
    fillSize(page, picture);
    page.attributes.put("viewBox", "0 0 " + picture.width() + " " + picture.height());
    boolean bare = picture.paper().isPresent() && !painted;
    List<TracedPicture.Area> areas = picture.areas();
    for (TracedPicture.Area area : areas.subList(bare ? 1 : 0, areas.size())) {
      SvgElement path = new SvgElement("path");
      path.attributes.put("d", area.pathData());
      // a style, so that no rule of the file paints it otherwise
      path.attributes.put(
          "style",
          "fill:"
              + area.hex()
              + ";fill-opacity:1;fill-rule:evenodd;stroke:none;opacity:1;display:inline");
      page.children.add(path);
    }
    return page;
  }

  /** A side that is not stated follows from the other and from the picture's own pixels. */
  private static void fillSize(SvgElement page, TracedPicture picture) {
    Optional<Double> w = number(page.get("width"));
    Optional<Double> h = number(page.get("height"));
    if (page.get("width").isBlank() || page.get("width").equals("auto")) {
      double from = h.map(v -> v * picture.width() / picture.height()).orElse(picture.width());
      page.attributes.put("width", String.valueOf(from));
    }
    if (page.get("height").isBlank() || page.get("height").equals("auto")) {
      double from = w.map(v -> v * picture.height() / picture.width()).orElse(picture.height());
      page.attributes.put("height", String.valueOf(from));
    }
  }

  private static double scaling(SvgElement e) {
    double scale = 1;
    Matcher m = SCALING.matcher(e.get("transform"));
    while (m.find()) {
      double[] v = numbers(m.group(2));
      if (m.group(1).equalsIgnoreCase("scale") && v.length > 0) {
        scale *= Math.max(Math.abs(v[0]), Math.abs(v[v.length - 1]));
      } else if (v.length == 6) {
        scale *= Math.max(Math.hypot(v[0], v[1]), Math.hypot(v[2], v[3]));
      }
    }
    return scale;
  }

  /** Pixels outside an inner or the outer page to one of its own units. */
  private static double pageScale(SvgElement svg) {
    double[] box = numbers(svg.get("viewBox"));
    Optional<Double> w = number(svg.get("width"));
    Optional<Double> h = number(svg.get("height"));
    return box.length == 4 && box[2] > 0 && box[3] > 0 && w.isPresent() && h.isPresent()
        ? Math.max(w.get() / box[2], h.get() / box[3])
        : 1;
  }

  private static double[] numbers(String list) {
    return Pattern.compile("[\\s,]+")
        .splitAsStream(list.trim())
        .map(EmbeddedPictures::number)
        .flatMap(Optional::stream)
        .mapToDouble(v -> v)
        .toArray();
  }

  private static Optional<Double> number(String text) {
    Matcher m = NUMBER.matcher(text);
    return m.matches() ? Optional.of(Double.parseDouble(m.group(1))) : Optional.empty();
  }
}
