package slabwright.drawing;

import java.awt.Transparency;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.ColorModel;
import java.awt.image.ComponentColorModel;
import java.awt.image.DataBuffer;
import java.awt.image.DataBufferByte;
import java.awt.image.Raster;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * A picture as the bytes of a JPEG file (ISO/IEC 10918-1), which every output takes as they are. A
 * value: equal bytes are equal pictures. No time and no place stand in it.
 */
public final class EncodedPicture {
  private final byte[] jpeg;

  private EncodedPicture(byte[] jpeg) {
    this.jpeg = jpeg;
  }

  /**
   * An opaque picture.
   *
   * @param quality 0 smallest to 1 best
   */
  public static EncodedPicture of(BufferedImage image, float quality) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      ImageWriteParam how = writer.getDefaultWriteParam();
      how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      how.setCompressionQuality(quality);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(byChannel(image), null, null), how);
    } catch (IOException cannotHappenInMemory) {
      throw new UncheckedIOException(cannotHappenInMemory);
    } finally {
      writer.dispose();
    }
    return new EncodedPicture(out.toByteArray());
  }

  /**
   * The same pixels, red, green and blue a byte each: the encoder takes these row by row, and asks
   * for those of an image of whole numbers one by one.
   */
  private static BufferedImage byChannel(BufferedImage image) {
    if (image.getType() != BufferedImage.TYPE_INT_RGB) {
      return image;
    }
    int w = image.getWidth();
    int h = image.getHeight();
    WritableRaster raster = Raster.createInterleavedRaster(DataBuffer.TYPE_BYTE, w, h, 3, null);
    byte[] to = ((DataBufferByte) raster.getDataBuffer()).getData();
    int[] row = new int[w];
    int i = 0;
    for (int y = 0; y < h; y++) {
      image.getRaster().getDataElements(0, y, w, 1, row);
      for (int rgb : row) {
        to[i++] = (byte) (rgb >> 16);
        to[i++] = (byte) (rgb >> 8);
        to[i++] = (byte) rgb;
      }
    }
    ColorModel bytes =
        new ComponentColorModel(
            ColorSpace.getInstance(ColorSpace.CS_sRGB),
            false,
            false,
            Transparency.OPAQUE,
            DataBuffer.TYPE_BYTE);
    return new BufferedImage(bytes, raster, false, null);
  }

  /** A picture that is encoded already. */
  public static EncodedPicture ofJpeg(byte[] file) {
    return new EncodedPicture(file.clone());
  }

  /** A picture that is encoded already, where it can be read to its end. */
  public static Optional<EncodedPicture> whole(byte[] file) {
    try {
      BufferedImage read = ImageIO.read(new ByteArrayInputStream(file));
      return Optional.ofNullable(read).map(r -> ofJpeg(file));
    } catch (IOException broken) {
      return Optional.empty();
    }
  }

  /** The bytes of the file. */
  public byte[] jpeg() {
    return jpeg.clone();
  }

  /** The file as a web address that holds it. */
  public String dataAddress() {
    return "data:image/jpeg;base64," + Base64.getEncoder().encodeToString(jpeg);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof EncodedPicture o && Arrays.equals(jpeg, o.jpeg);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(jpeg);
  }

  @Override
  public String toString() {
    return "JPEG, " + jpeg.length + " bytes";
  }
}
