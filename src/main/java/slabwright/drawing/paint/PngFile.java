package slabwright.drawing.paint;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import slabwright.drawing.Drawing;

/** A drawing as a PNG picture on white. */
public final class PngFile {
  private PngFile() {}

  /** The drawing at so many dots to the inch. */
  public static byte[] write(Drawing drawing, double dotsPerInch) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(PicturePainter.picture(drawing, dotsPerInch), "png", out);
    return out.toByteArray();
  }
}
