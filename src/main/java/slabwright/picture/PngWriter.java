package slabwright.picture;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes an opaque sRGB picture row by row as PNG (ISO/IEC 15948), so that a large one need not lie
 * in memory. No time and no place stand in it.
 */
final class PngWriter implements AutoCloseable {
  private static final byte[] SIGNATURE = {(byte) 137, 80, 78, 71, 13, 10, 26, 10};

  /** The format's own word for what a picture shows. */
  private static final byte[] DESCRIPTION = {'D', 'e', 's', 'c', 'r', 'i', 'p', 't', 'i', 'o', 'n'};

  private static final int CHUNK = 1 << 16;

  private final DataOutputStream out;
  private final int width;
  private final Deflater deflater = new Deflater(3);
  private final ByteArrayOutputStream waiting = new ByteArrayOutputStream();
  private final DeflaterOutputStream data = new DeflaterOutputStream(waiting, deflater);
  private byte[] before;

  PngWriter(OutputStream stream, int width, int height, String description) throws IOException {
    out = new DataOutputStream(stream);
    this.width = width;
    before = new byte[3 * width];
    out.write(SIGNATURE);
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    DataOutputStream h = new DataOutputStream(head);
    h.writeInt(width);
    h.writeInt(height);
    h.write(new byte[] {8, 2, 0, 0, 0});
    chunk("IHDR", head.toByteArray());
    chunk("sRGB", new byte[] {0});
    chunk("iTXt", text(description));
  }

  /** International text, for words of any language: keyword, not compressed, no language tag. */
  private static byte[] text(String description) {
    ByteArrayOutputStream t = new ByteArrayOutputStream();
    t.writeBytes(DESCRIPTION);
    t.writeBytes(new byte[5]);
    t.writeBytes(description.getBytes(StandardCharsets.UTF_8));
    return t.toByteArray();
  }

  /** The next rows, each filtered by the one above it (filter type 2). */
  void rows(int[] rgb, int rows) throws IOException {
    for (int y = 0; y < rows; y++) {
      byte[] row = new byte[3 * width];
      byte[] line = new byte[3 * width + 1];
      line[0] = 2;
      for (int x = 0; x < width; x++) {
        int p = rgb[y * width + x];
        row[3 * x] = (byte) (p >> 16);
        row[3 * x + 1] = (byte) (p >> 8);
        row[3 * x + 2] = (byte) p;
      }
      for (int i = 0; i < row.length; i++) {
        line[i + 1] = (byte) (row[i] - before[i]);
      }
      data.write(line);
      before = row;
      if (waiting.size() > CHUNK) {
        flush();
      }
    }
  }

  private void flush() throws IOException {
    chunk("IDAT", waiting.toByteArray());
    waiting.reset();
  }

  private void chunk(String name, byte[] content) throws IOException {
    byte[] type = name.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(type);
    sum.update(content);
    out.writeInt(content.length);
    out.write(type);
    out.write(content);
    out.writeInt((int) sum.getValue());
  }

  /** Ends the file; the stream stays open. */
  @Override
  public void close() throws IOException {
    data.finish();
    deflater.end();
    flush();
    chunk("IEND", new byte[0]);
    out.flush();
  }
}
