package slabwright.inlay.artwork.batik;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.batik.anim.dom.SVGOMUseElement;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.CSSUtilities;
import org.apache.batik.bridge.SVGClipPathElementBridge;
import org.apache.batik.bridge.SVGUtilities;
import org.apache.batik.ext.awt.image.renderable.ClipRable;
import org.apache.batik.ext.awt.image.renderable.ClipRable8Bit;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.ShapeNode;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import slabwright.inlay.artwork.ClipOutlines;

/**
 * Clip paths by the rule of SVG 1.1, section 14.3.5: the union of the children, each within its own
 * clip, the whole within the clip path's own clip; an empty clip path hides everything. The SVG
 * library's own bridge subtracts inner clips, ignores empty ones, and is slow on many outlines.
 */
final class ClipBridge extends SVGClipPathElementBridge {
  @Override
  public ClipRable createClip(
      BridgeContext context, Element clip, Element clippedElement, GraphicsNode clipped) {
    AffineTransform at = placement(context, clip, clipped);
    List<ClipOutlines.Part> parts = new ArrayList<>();
    for (Node n = clip.getFirstChild(); n != null; n = n.getNextSibling()) {
      if (n instanceof Element child) {
        part(context, child, at).ifPresent(parts::add);
      }
    }
    ClipOutlines outlines = new ClipOutlines(parts, inner(context, clip, clipped));
    return new ClipRable8Bit(clipped.getGraphicsNodeRable(true), new ClipCarrier(outlines), false);
  }

  private static AffineTransform placement(
      BridgeContext context, Element clip, GraphicsNode clipped) {
    String transform = clip.getAttributeNS(null, "transform");
    AffineTransform at =
        transform.isEmpty()
            ? new AffineTransform()
            : SVGUtilities.convertTransform(clip, "transform", transform, context);
    boolean perBox = clip.getAttributeNS(null, "clipPathUnits").equals("objectBoundingBox");
    return perBox ? SVGUtilities.toObjectBBox(at, clipped) : at;
  }

  private static Optional<ClipOutlines.Part> part(
      BridgeContext context, Element child, AffineTransform at) {
    GraphicsNode node = context.getGVTBuilder().build(context, child);
    if (node == null || !node.isVisible() || node.getOutline() == null) {
      return Optional.empty();
    }
    Element drawn = child;
    if (child instanceof SVGOMUseElement use && use.getCSSFirstChild() instanceof Element shadow) {
      drawn = shadow;
    }
    AffineTransform placed = new AffineTransform(at);
    if (node.getTransform() != null) {
      placed.concatenate(node.getTransform());
    }
    Path2D outline = FineOutline.of(outline(node));
    outline.setWindingRule(CSSUtilities.convertClipRule(drawn));
    Path2D here = new Path2D.Double(outline, placed);
    Optional<ClipOutlines> own =
        Optional.ofNullable(node.getClip())
            .map(c -> ClipCarrier.outlines(c.getClipPath()).transformed(placed));
    return Optional.of(new ClipOutlines.Part(here, own));
  }

  /**
   * A lone shape is taken as it is, for its true arcs; what is composed, as the library joins it.
   */
  private static Shape outline(GraphicsNode node) {
    return node instanceof ShapeNode s ? s.getShape() : node.getOutline();
  }

  private static Optional<ClipOutlines> inner(
      BridgeContext context, Element element, GraphicsNode node) {
    ClipRable clip = CSSUtilities.convertClipPath(element, node, context);
    return Optional.ofNullable(clip).map(c -> ClipCarrier.outlines(c.getClipPath()));
  }
}
