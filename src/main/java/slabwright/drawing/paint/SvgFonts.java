package slabwright.drawing.paint;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import slabwright.drawing.FontFace;
import slabwright.drawing.PrimitiveInk;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;

/**
 * The style element that carries the characters a drawing uses, one subset a face. Each face is
 * read once for all drawings that are written with it.
 */
public final class SvgFonts implements Closeable {
  /** Our embedded subset first, then the same font where it is installed. */
  static final String FAMILIES = "Slabwright Text, DejaVu Sans, sans-serif";

  private final Map<FontFace, TrueTypeFont> read = new EnumMap<>(FontFace.class);

  String style(List<PrimitiveInk> parts) {
    StringBuilder css = new StringBuilder();
    for (FontFace face : FontFace.values()) {
      Set<Integer> used = used(parts, face);
      if (!used.isEmpty()) {
        css.append("@font-face{font-family:'Slabwright Text';font-weight:").append(face.weight());
        css.append(";src:url(data:font/ttf;base64,").append(base64(face, used)).append(")}\n");
      }
    }
    return css.length() == 0 ? "" : "<style>\n" + css + "</style>\n";
  }

  private static Set<Integer> used(List<PrimitiveInk> parts, FontFace face) {
    Set<Integer> used = new TreeSet<>();
    for (PrimitiveInk part : parts) {
      if (part instanceof Text t && FontFace.of(t.style()) == face && !t.words().isBlank()) {
        TextMeasure.showable(t.words()).codePoints().forEach(used::add);
      }
    }
    return used;
  }

  @Override
  public void close() throws IOException {
    for (TrueTypeFont font : read.values()) {
      font.close();
    }
  }

  private String base64(FontFace face, Set<Integer> used) {
    try {
      TTFSubsetter subset = new TTFSubsetter(read.computeIfAbsent(face, FontFace::read));
      subset.addAll(used);
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      subset.writeToStream(bytes);
      return Base64.getEncoder().encodeToString(bytes.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException("the bundled font cannot be subset", e);
    }
  }
}
