package slabwright.inlay.artwork.css;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

  private final MatchedRules matched;
  private final WarningCollector notes;

  private PaintOrderRewriter(MatchedRules matched, WarningCollector notes) {
    this.matched = matched;
    this.notes = notes;
  }

  static void rewrite(SvgElement root, MatchedRules matched, WarningCollector notes) {
    PaintOrderRewriter rewriter = new PaintOrderRewriter(matched, notes);
    List<SvgElement> path = new ArrayList<>(List.of(root));
    if (strokeFirst(rewriter.order(path))) {
      rewriter.leftOut();
    }
    rewriter.rewrite(path);
  }

  /** All below the last of a path from the root. */
  private void rewrite(List<SvgElement> path) {
    SvgElement e = path.get(path.size() - 1);
    for (int i = 0; i < e.children.size(); i++) {
      if (e.children.get(i) instanceof SvgElement child) {
        path.add(child);
        rewrite(path);
        if (strokeFirst(order(path))) {
          split(e, i, child);
        }
        path.remove(path.size() - 1);
      }
    }
  }

  /** As the element's own style says, else a rule of a style sheet, else its attribute. */
  private String order(List<SvgElement> path) {
    SvgElement e = path.get(path.size() - 1);
    Map<String, String> said = matched.of(path);
    said.putAll(CssDeclarations.parse(e.get("style")));
    return said.getOrDefault("paint-order", e.get("paint-order")).toLowerCase(Locale.ROOT);
  }

  /** What is not named comes after what is: fill, stroke, markers. */
  private static boolean strokeFirst(String order) {
    int stroke = order.indexOf("stroke");
    int fill = order.indexOf("fill");
    return stroke >= 0 && (fill < 0 || stroke < fill);
  }

  private void split(SvgElement parent, int at, SvgElement child) {
    if (!PAINTED.contains(child.name)) {
      leftOut();
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

  private void leftOut() {
    notes.add(Kind.STYLE_LEFT_OUT, Message.of("inlay.paint-order-rewriter.group-left-out"));
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
