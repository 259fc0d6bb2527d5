package slabwright.inlay.artwork.batik;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.batik.bridge.FontFace;
import org.apache.batik.bridge.FontFamilyResolver;
import org.apache.batik.gvt.font.GVTFontFamily;
import slabwright.inlay.artwork.css.EmbeddedFont;
import slabwright.units.Message;

/**
 * The fonts at hand: those the graphic carries, the shipped DejaVu Sans, then, when allowed, those
 * installed on the computer. A family that is not at hand is remembered in the text, so that its
 * substitution can be said.
 */
final class FontResolver implements FontFamilyResolver {
  /** The name the SVG library is told to use for text that names no font. */
  static final String NO_NAME = "unnamed-font";

  /** Without spaces: it is asked for by either spelling. */
  private static final Set<String> SHIPPED = Set.of("dejavusans", "sans-serif");

  /** Loaded once, when the first text is met: each loading leaves a temporary file behind. */
  private static final class Shipped {
    static final Font REGULAR = shipped(slabwright.drawing.FontFace.REGULAR);
    static final Font BOLD = shipped(slabwright.drawing.FontFace.BOLD);
  }

  private final List<EmbeddedFont> carried;
  private final boolean useInstalled;

  /** One object, as text is split into runs where the family object changes. */
  private FontFamily standard;

  private final Map<String, FontFamily> resolved = new TreeMap<>();

  public FontResolver(List<EmbeddedFont> carried, boolean useInstalled) {
    this.carried = List.copyOf(carried);
    this.useInstalled = useInstalled;
  }

  private static Font shipped(slabwright.drawing.FontFace face) {
    try (InputStream in = face.open()) {
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("the shipped font is damaged: " + face, e);
    }
  }

  @Override
  public FontFamily resolve(String family) {
    return resolved.computeIfAbsent(family.toLowerCase(Locale.ROOT), key -> find(family));
  }

  private FontFamily find(String family) {
    List<EmbeddedFont> own =
        carried.stream().filter(c -> c.family().equalsIgnoreCase(family)).toList();
    if (own.stream().anyMatch(c -> c.font().isPresent())) {
      return FontFamily.of(family, own);
    }
    if (SHIPPED.contains(family.toLowerCase(Locale.ROOT).replace(" ", ""))) {
      return getDefault();
    }
    if (useInstalled && isInstalled(family)) {
      return FontFamily.installed(family);
    }
    Optional<Message> trouble = own.stream().findFirst().flatMap(EmbeddedFont::trouble);
    return new FontFamily.Missing(family, trouble, Shipped.REGULAR);
  }

  private static boolean isInstalled(String family) {
    return Stream.of(
            GraphicsEnvironment.getLocalGraphicsEnvironment()
                .getAvailableFontFamilyNames(Locale.ROOT))
        .anyMatch(name -> name.equalsIgnoreCase(family));
  }

  @Override
  public GVTFontFamily resolve(String family, FontFace face) {
    return null;
  }

  /** Fonts that a graphic carries have been read before; none is loaded while it is drawn. */
  @Override
  public GVTFontFamily loadFont(InputStream in, FontFace face) {
    return null;
  }

  @Override
  public FontFamily getDefault() {
    if (standard == null) {
      standard = new FontFamily("DejaVu Sans", Shipped.REGULAR, Shipped.BOLD);
    }
    return standard;
  }

  @Override
  public GVTFontFamily getFamilyThatCanDisplay(char c) {
    return Shipped.REGULAR.canDisplay(c) ? getDefault() : null;
  }
}
