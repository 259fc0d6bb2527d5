package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Named groups of a drawing, each taken by itself. */
public final class SvgLayers {
  private static final Set<String> SHARED = Set.of("defs", "style");

  private SvgLayers() {}

  /** Which of the names are ids of groups in the drawing, in the names' order. */
  public static List<String> of(SvgElement root, List<String> names) {
    List<String> found = new ArrayList<>();
    root.walk(
        e -> {
          if (isLayer(e, names) && !found.contains(e.get("id"))) {
            found.add(e.get("id"));
          }
        });
    return names.stream().filter(found::contains).toList();
  }

  /** The drawing's own title; empty without one. */
  public static String title(SvgElement root) {
    return root.elements().stream()
        .filter(e -> e.is("title"))
        .map(SvgElement::text)
        .findFirst()
        .orElse("")
        .strip();
  }

  /** Takes the named groups out; gives whether anything that can be drawn is left. */
  public static boolean without(SvgElement root, List<String> names) {
    root.children.removeIf(c -> c instanceof SvgElement e && isLayer(e, names));
    boolean left = false;
    for (SvgElement child : root.elements()) {
      boolean inside = without(child, names);
      left |= inside || draws(child);
    }
    return left;
  }

  private static boolean draws(SvgElement e) {
    return switch (e.name) {
      case "path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text", "use" ->
          true;
      default -> false;
    };
  }

  /** Leaves nothing but the named group, what it stands in, and what all groups share. */
  public static void only(SvgElement root, String name) {
    root.children.removeIf(
        c -> !(c instanceof SvgElement e) || !(SHARED.contains(e.name) || isOrHolds(e, name)));
    for (SvgElement child : root.elements()) {
      if (!SHARED.contains(child.name) && !isLayer(child, List.of(name))) {
        only(child, name);
      }
    }
  }

  private static boolean isOrHolds(SvgElement e, String name) {
    return isLayer(e, List.of(name)) || e.elements().stream().anyMatch(c -> isOrHolds(c, name));
  }

  private static boolean isLayer(SvgElement e, List<String> names) {
    return e.is("g") && names.contains(e.get("id"));
  }
}
