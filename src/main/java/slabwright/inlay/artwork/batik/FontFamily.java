package slabwright.inlay.artwork.batik;

import java.awt.Font;
import java.awt.font.TextAttribute;
import java.text.AttributedCharacterIterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.batik.gvt.font.AWTFontFamily;
import org.apache.batik.gvt.font.GVTFont;
import slabwright.inlay.artwork.css.EmbeddedFont;
import slabwright.units.Message;

/**
 * A family of two cuts, regular and bold, and their italics; where there are none of those, slanted
 * by shearing.
 */
class FontFamily extends AWTFontFamily {
  private static final float BOLD_FROM = 1.4f;
  private static final List<String> BOLD_NAMES =
      List.of("bold", "black", "heavy", "fett", "negrita");

  private final Font regular;
  private final Font bold;
  private final Optional<Font> italic;
  private final Optional<Font> boldItalic;

  FontFamily(String name, Font regular, Font bold) {
    this(name, regular, bold, Optional.empty(), Optional.empty());
  }

  private FontFamily(
      String name, Font regular, Font bold, Optional<Font> italic, Optional<Font> boldItalic) {
    super(name);
    this.regular = regular;
    this.bold = bold;
    this.italic = italic;
    this.boldItalic = boldItalic;
  }

  /** Of cuts that a graphic carries, at least one of which can be read; a lacking bold is made. */
  static FontFamily of(String name, List<EmbeddedFont> cuts) {
    Font any = cuts.stream().flatMap(c -> c.font().stream()).findFirst().orElseThrow();
    Font regular = cut(cuts, false, false).orElse(any);
    Font bold = cut(cuts, true, false).orElseGet(() -> regular.deriveFont(Font.BOLD));
    return new FontFamily(name, regular, bold, cut(cuts, false, true), cut(cuts, true, true));
  }

  private static Optional<Font> cut(List<EmbeddedFont> cuts, boolean bold, boolean slanted) {
    return cuts.stream()
        .filter(c -> c.bold() == bold && c.slanted() == slanted)
        .flatMap(c -> c.font().stream())
        .findFirst();
  }

  @Override
  public GVTFont deriveFont(float size, AttributedCharacterIterator text) {
    return deriveFont(size, text.getAttributes());
  }

  // the overridden method has a raw parameter
  @SuppressWarnings("rawtypes")
  @Override
  public GVTFont deriveFont(float size, Map attributes) {
    return HighResolutionFont.at(cut(attributes), size);
  }

  Font cut(Map<?, ?> attributes) {
    boolean heavy =
        attributes.get(TextAttribute.WEIGHT) instanceof Number n && n.floatValue() > BOLD_FROM;
    boolean slanted =
        attributes.get(TextAttribute.POSTURE) instanceof Number n && n.floatValue() > 0;
    Font upright = heavy ? bold : regular;
    return slanted ? (heavy ? boldItalic : italic).orElseGet(() -> sheared(upright)) : upright;
  }

  /** Whether a font is slanted by its own design. */
  static boolean isItalic(Font font) {
    String name = font.getFontName(Locale.ROOT).toLowerCase(Locale.ROOT);
    return name.contains("italic") || name.contains("oblique");
  }

  /** Whether a font is bold by its own design. */
  static boolean isBold(Font font) {
    String name = font.getFontName(Locale.ROOT).toLowerCase(Locale.ROOT);
    return BOLD_NAMES.stream().anyMatch(name::contains);
  }

  /** Of a font that is installed on this computer, with its italics where it has any. */
  static FontFamily installed(String name) {
    return new FontFamily(
        name,
        new Font(name, Font.PLAIN, 1),
        new Font(name, Font.BOLD, 1),
        Optional.of(new Font(name, Font.ITALIC, 1)).filter(FontFamily::isItalic),
        Optional.of(new Font(name, Font.BOLD | Font.ITALIC, 1)).filter(FontFamily::isItalic));
  }

  private static Font sheared(Font upright) {
    return upright.deriveFont(Map.of(TextAttribute.POSTURE, TextAttribute.POSTURE_OBLIQUE));
  }

  /** A family that was asked for and is not at hand; it draws nothing. */
  static final class Missing extends FontFamily {
    private final Optional<Message> trouble;

    Missing(String name, Optional<Message> trouble, Font any) {
      super(name, any, any);
      this.trouble = trouble;
    }

    /** What is wrong with the font that the graphic carries; empty when it carries none. */
    Optional<Message> trouble() {
      return trouble;
    }

    @SuppressWarnings("rawtypes")
    @Override
    public GVTFont deriveFont(float size, Map attributes) {
      return HighResolutionFont.blank(cut(attributes), size);
    }
  }
}
