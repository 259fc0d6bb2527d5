package slabwright.pdfin.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The notes that a camera leaves in a JPEG (Exif, JEITA CP-3451): a TIFF of tagged entries.
 * Anything that does not read as one says nothing.
 */
record ExifBlock(ByteBuffer tiff) {
  private static final int SUB_BLOCK = 0x8769;
  private static final int TAKEN = 0x9003;
  private static final int CHANGED = 0x0132;
  private static final int DATE = 10;
  private static final long EXIF = 0x457869660000L;

  /**
   * The block of a file. Segments stand in any order, several may carry the Exif marker (XMP does),
   * and fill bytes may part them (ITU-T T.81, B.1.1.2).
   */
  static Optional<ExifBlock> of(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file);
    if (file.length < 4 || in.getShort() != (short) 0xFFD8) {
      return Optional.empty();
    }
    while (in.remaining() >= 4) {
      int marker = Short.toUnsignedInt(in.getShort());
      if (marker == 0xFFFF) {
        in.position(in.position() - 1);
        continue;
      }
      int length = Short.toUnsignedInt(in.getShort()) - 2;
      if (marker < 0xFFC0 || marker == 0xFFDA || length < 0 || length > in.remaining()) {
        return Optional.empty();
      }
      if (marker == 0xFFE1 && length > 14 && in.getLong(in.position()) >>> 16 == EXIF) {
        ByteBuffer tiff = in.slice(in.position() + 6, length - 6);
        tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
        return Optional.of(new ExifBlock(tiff));
      }
      in.position(in.position() + length);
    }
    return Optional.empty();
  }

  /** The small number under a tag of the first directory. */
  OptionalInt number(int tag) {
    OptionalInt at = entry(tiff.getInt(4), tag);
    return at.isPresent()
        ? OptionalInt.of(Short.toUnsignedInt(tiff.getShort(at.getAsInt() + 8)))
        : at;
  }

  /** The day that the photo was taken, or else that its file was last changed by the camera. */
  Optional<LocalDate> taken() {
    OptionalInt sub = entry(tiff.getInt(4), SUB_BLOCK);
    Optional<LocalDate> own =
        sub.isPresent() ? date(tiff.getInt(sub.getAsInt() + 8), TAKEN) : Optional.empty();
    return own.or(() -> date(tiff.getInt(4), CHANGED));
  }

  /** Written 2026:11:27 08:15:00. */
  private Optional<LocalDate> date(int directory, int tag) {
    OptionalInt entry = entry(directory, tag);
    if (entry.isEmpty()) {
      return Optional.empty();
    }
    int at = tiff.getInt(entry.getAsInt() + 8);
    if (at < 8 || at > tiff.limit() - DATE) {
      return Optional.empty();
    }
    byte[] text = new byte[DATE];
    tiff.get(at, text);
    try {
      return Optional.of(
          LocalDate.parse(new String(text, StandardCharsets.US_ASCII).replace(':', '-')));
    } catch (DateTimeException none) {
      return Optional.empty();
    }
  }

  private OptionalInt entry(int directory, int tag) {
    if (directory < 8 || directory > tiff.limit() - 2) {
      return OptionalInt.empty();
    }
    int entries = Short.toUnsignedInt(tiff.getShort(directory));
    for (int k = 0; k < entries && directory + 2 + 12 * (k + 1) <= tiff.limit(); k++) {
      int entry = directory + 2 + 12 * k;
      if (Short.toUnsignedInt(tiff.getShort(entry)) == tag) {
        return OptionalInt.of(entry);
      }
    }
    return OptionalInt.empty();
  }
}
