package slabwright.inlay.artwork.css;

import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;

/** Unpacks fonts in the Web Open Font Format 1.0 (W3C Recommendation of 13 December 2012). */
final class WoffReader {
  static final int SIGNATURE = 0x774F4646;

  private static final int HEADER = 44;
  private static final int ENTRY = 20;
  private static final int SFNT_HEADER = 12;
  private static final int SFNT_ENTRY = 16;
  private static final int MOST_BYTES = 32 << 20;

  private record Table(int tag, int checksum, ByteBuffer data) {
    int length() {
      return data.capacity();
    }

    int padded() {
      return (length() + 3) & ~3;
    }
  }

  private WoffReader() {}

  /** The font as it was before it was packed; empty when the packing is damaged. */
  static Optional<byte[]> unpack(byte[] woff) {
    try {
      ByteBuffer in = ByteBuffer.wrap(woff);
      int flavour = in.getInt(4);
      int count = Short.toUnsignedInt(in.getShort(12));
      List<Table> tables = new ArrayList<>();
      long size = SFNT_HEADER;
      for (int i = 0; i < count; i++) {
        Table t = table(in, HEADER + ENTRY * i);
        tables.add(t);
        size += SFNT_ENTRY + t.padded();
      }
      return size > MOST_BYTES ? Optional.empty() : Optional.of(sfnt(flavour, tables, (int) size));
    } catch (BufferUnderflowException | IndexOutOfBoundsException | DataFormatException e) {
      return Optional.empty();
    }
  }

  private static Table table(ByteBuffer in, int at) throws DataFormatException {
    int offset = in.getInt(at + 4);
    int packed = in.getInt(at + 8);
    int length = in.getInt(at + 12);
    if (length < 0 || length > MOST_BYTES || packed < 0 || packed > length) {
      throw new DataFormatException("a table of an impossible length");
    }
    byte[] raw = new byte[packed];
    in.get(offset, raw);
    byte[] data = packed == length ? raw : whole(raw, length);
    return new Table(in.getInt(at), in.getInt(at + 16), ByteBuffer.wrap(data));
  }

  private static byte[] whole(byte[] packed, int length) throws DataFormatException {
    Inflater inflater = new Inflater();
    try {
      inflater.setInput(packed);
      byte[] data = new byte[length];
      int done = 0;
      while (done < length) {
        int step = inflater.inflate(data, done, length - done);
        if (step == 0) {
          throw new DataFormatException("a table shorter than it says");
        }
        done += step;
      }
      return data;
    } finally {
      inflater.end();
    }
  }

  private static byte[] sfnt(int flavour, List<Table> tables, int size) {
    int power = Integer.highestOneBit(Math.max(1, tables.size()));
    ByteBuffer out = ByteBuffer.allocate(size);
    out.putInt(flavour).putShort((short) tables.size()).putShort((short) (power * 16));
    out.putShort((short) Integer.numberOfTrailingZeros(power));
    out.putShort((short) (tables.size() * 16 - power * 16));
    int at = SFNT_HEADER + SFNT_ENTRY * tables.size();
    for (Table t : tables) {
      out.putInt(t.tag).putInt(t.checksum).putInt(at).putInt(t.length());
      out.put(at, t.data, 0, t.length());
      at += t.padded();
    }
    return out.array();
  }
}
