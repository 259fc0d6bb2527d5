package slabwright.inlay.artwork.css;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.inlay.artwork.WarningCollector;
import slabwright.units.Message;

/** Strokes asked to lie under their fill ({@code paint-order}) become an element of their own. */
final class PaintOrderRewriter {
  private static final Set<String> PAINTED =
      Set.of("path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "text");

  private PaintOrderRewriter() {}

  static void rewrite(SvgElement e, WarningCollector notes) {
    for (int i = 0; i < e.children.size(); i++) {
      if (e.children.get(i) instanceof SvgElement child) {
        rewrite(child, notes);
        if (strokeFirst(child)) {
          split(e, i, child, notes);
        }
      }
    }
  }

  private static boolean strokeFirst(SvgElement e) {
    String style = CssDeclarations.parse(e.get("style")).getOrDefault("paint-order", "");
    String order = style.isEmpty() ? e.get("paint-order") : style;
    return order.trim().startsWith("stroke");
  }

  private static void split(SvgElement parent, int at, SvgElement child, WarningCollector notes) {
    if (!PAINTED.contains(child.name)) {
      notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.paint-order-rewriter.group-left-out"));
      return;
    }
    child.attributes.remove("paint-order");
    SvgElement under = child.copy();
    under.attributes.remove("id");
    override(under, "fill");
    override(child, "stroke");
    SvgElement group = new SvgElement("g");
    group.children.add(under);
    group.children.add(child);
    parent.children.set(at, group);
  }

  private static void override(SvgElement e, String property) {
    Map<String, String> style = CssDeclarations.parse(e.get("style"));
    style.remove("paint-order");
    style.put(property, "none !important");
    e.attributes.put("style", CssDeclarations.print(style));
    Optional.of(property)
        .filter(p -> p.equals("fill"))
        .ifPresent(p -> e.attributes.put("marker", "none"));
  }
}
