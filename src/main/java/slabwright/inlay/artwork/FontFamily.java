package slabwright.inlay.artwork;

import java.awt.Font;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.util.Map;
import org.apache.batik.gvt.font.AWTFontFamily;
import org.apache.batik.gvt.font.GVTFont;

/** A family of two cuts, regular and bold; slanted by shearing when italics are asked for. */
class FontFamily extends AWTFontFamily {
  private static final float BOLD_FROM = 1.4f;

  private final Font regular;
  private final Font bold;

  FontFamily(String name, Font regular, Font bold) {
    super(name);
    this.regular = regular;
    this.bold = bold;
  }

  @Override
  public GVTFont deriveFont(float size, AttributedCharacterIterator text) {
    return deriveFont(size, text.getAttributes());
  }

  // the overridden method has a raw parameter
  @SuppressWarnings("rawtypes")
  @Override
  public GVTFont deriveFont(float size, Map attributes) {
    return UnitsFont.at(cut(attributes), size);
  }

  Font cut(Map<?, ?> attributes) {
    boolean heavy =
        attributes.get(TextAttribute.WEIGHT) instanceof Number n && n.floatValue() > BOLD_FROM;
    boolean slanted =
        attributes.get(TextAttribute.POSTURE) instanceof Number n && n.floatValue() > 0;
    Font cut = heavy ? bold : regular;
    return slanted
        ? cut.deriveFont(Map.of(TextAttribute.POSTURE, TextAttribute.POSTURE_OBLIQUE))
        : cut;
  }

  /** A family that was asked for and is not at hand; it draws nothing. */
  static final class Missing extends FontFamily {
    Missing(String name, Font any) {
      super(name, any, any);
    }

    @SuppressWarnings("rawtypes")
    @Override
    public GVTFont deriveFont(float size, Map attributes) {
      return UnitsFont.blank(cut(attributes), size);
    }
  }
}
