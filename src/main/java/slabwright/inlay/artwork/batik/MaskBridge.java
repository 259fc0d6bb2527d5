package slabwright.inlay.artwork.batik;

import java.awt.geom.Rectangle2D;
import org.apache.batik.bridge.BridgeContext;
import org.apache.batik.bridge.SVGMaskElementBridge;
import org.apache.batik.ext.awt.image.renderable.Filter;
import org.apache.batik.gvt.GraphicsNode;
import org.apache.batik.gvt.filter.Mask;
import org.apache.batik.gvt.filter.MaskRable8Bit;
import org.w3c.dom.Element;
import slabwright.inlay.artwork.css.Svg11Rewriter;

/** Masks, and of what kind they are; the SVG library knows masks by brightness alone. */
final class MaskBridge extends SVGMaskElementBridge {
  /** A mask that lets through where anything is painted, whatever its colour. */
  // the library overrides a method of AWT with a raw type
  @SuppressWarnings("unchecked")
  static final class AlphaMask extends MaskRable8Bit {
    AlphaMask(Filter source, GraphicsNode content, Rectangle2D extent) {
      super(source, content, extent);
    }
  }

  @Override
  public Mask createMask(
      BridgeContext context, Element mask, Element masked, GraphicsNode maskedNode) {
    Mask made = super.createMask(context, mask, masked, maskedNode);
    boolean alpha = mask.getAttributeNS(null, Svg11Rewriter.MASK_TYPE).equals("alpha");
    return made != null && alpha
        ? new AlphaMask(made.getSource(), made.getMaskNode(), made.getFilterRegion())
        : made;
  }
}
