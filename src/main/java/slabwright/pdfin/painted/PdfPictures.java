package slabwright.pdfin.painted;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.IdentityHashMap;
import java.util.Optional;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import slabwright.pdfin.picture.Picture;

/** The pixels of pictures on a page, within limits. */
final class PdfPictures {
  private static final long MOST_PIXELS = 16_000_000;
  private static final int MOST = 50;

  private final IdentityHashMap<COSBase, Optional<Picture>> known = new IdentityHashMap<>();
  private long pixels;

  /**
   * The picture; nothing when it can't be read, or when there are too many or too large ones.
   *
   * @param hex of what a stencil of one bit a pixel is painted with
   */
  Optional<Picture> of(PDImage image, String hex) {
    if (!(image instanceof PDImageXObject kept) || image.isStencil()) {
      return read(image, hex);
    }
    return known.computeIfAbsent(kept.getCOSObject(), k -> read(image, hex));
  }

  private Optional<Picture> read(PDImage image, String hex) {
    pixels += Math.max(1, (long) image.getWidth() * image.getHeight());
    if (pixels > MOST_PIXELS || known.size() >= MOST) {
      return Optional.empty();
    }
    try {
      BufferedImage seen =
          image.isStencil() ? image.getStencilImage(Color.decode(hex)) : image.getImage();
      return Optional.ofNullable(seen).map(Picture::new);
    } catch (IOException unreadable) {
      return Optional.empty();
    }
  }
}
