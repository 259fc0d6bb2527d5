package slabwright.inlay.proof;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One page that came back from the sign shop.
 *
 * @param file its file's name
 * @param page from 1
 */
public record ReturnedPage(String file, int page, ShopDrawing drawing) {
  private static final Pattern PANEL =
      Pattern.compile("(?i)panel[-_ ]([a-z]{1,2}[0-9]{0,3})(?![a-z0-9])");
  private static final Pattern STENCIL = Pattern.compile("(?i)stencil[-_ ]([0-9]{1,2})(?![0-9])");

  /** A page whose file's name may say which panel it holds. */
  static ReturnedPage of(String file, int page, ShopDrawing drawing) {
    return new ReturnedPage(file, page, labelled(drawing, file));
  }

  /** The drawing with the panel's label that a text about the whole of it has. */
  static ShopDrawing labelled(ShopDrawing drawing, String text) {
    Matcher m = PANEL.matcher(text);
    return m.find() ? drawing.named("panel " + m.group(1)) : drawing;
  }

  /** The stencil that the file's name says it is of. */
  OptionalInt stencilInName() {
    Matcher m = STENCIL.matcher(file);
    return m.find() ? OptionalInt.of(Integer.parseInt(m.group(1))) : OptionalInt.empty();
  }
}
