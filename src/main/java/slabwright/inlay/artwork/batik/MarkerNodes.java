package slabwright.inlay.artwork.batik;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.MarkerShapePainter;
import org.apache.batik.gvt.ProxyGraphicsNode;

/** Arrow heads and the like, placed; the SVG library shows them to its own subclasses only. */
final class MarkerNodes extends MarkerShapePainter {
  private MarkerNodes(MarkerShapePainter of) {
    super(of.getShape());
    setStartMarker(of.getStartMarker());
    setMiddleMarker(of.getMiddleMarker());
    setEndMarker(of.getEndMarker());
  }

  static List<GraphicsNode> of(MarkerShapePainter painter) {
    MarkerNodes m = new MarkerNodes(painter);
    List<GraphicsNode> nodes = new ArrayList<>();
    Stream.of(m.getStartMarker() == null ? null : m.buildStartMarkerProxy())
        .filter(n -> n != null)
        .forEach(nodes::add);
    ProxyGraphicsNode[] middle = m.getMiddleMarker() == null ? null : m.buildMiddleMarkerProxies();
    if (middle != null) {
      nodes.addAll(List.of(middle));
    }
    Stream.of(m.getEndMarker() == null ? null : m.buildEndMarkerProxy())
        .filter(n -> n != null)
        .forEach(nodes::add);
    return nodes;
  }
}
