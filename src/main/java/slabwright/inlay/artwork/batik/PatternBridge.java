package slabwright.inlay.artwork.batik;

import java.awt.Color;
import java.awt.Paint;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.SVGPatternElementBridge;
import org.apache.batik.gvt.GraphicsNode;
import org.w3c.dom.Element;

/** Hands a pattern on with its content; the SVG library would keep that to itself. */
final class PatternBridge extends SVGPatternElementBridge {
  /** A paint that stands for a pattern; its own colour is never seen. */
  static final class Pattern extends Color {
    private static final long serialVersionUID = 1;

    private final transient GraphicsNode content;

    private Pattern(GraphicsNode content) {
      super(0);
      this.content = content;
    }

    GraphicsNode content() {
      return content;
    }
  }

  @Override
  public Paint createPaint(
      BridgeContext context,
      Element pattern,
      Element painted,
      GraphicsNode paintedNode,
      float opacity) {
    GraphicsNode content = extractPatternContent(pattern, context);
    return content == null || opacity == 0 ? null : new Pattern(content);
  }
}
