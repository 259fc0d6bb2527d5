package slabwright.inlay.artwork.picture;

import java.util.Optional;

/** Kinds of picture that are read, told by a file's first bytes. */
public enum PictureFormat {
  PNG(0x89, 'P', 'N', 'G'),
  JPEG(0xff, 0xd8, 0xff),
  GIF('G', 'I', 'F', '8'),
  BMP('B', 'M'),
  TIFF_INTEL('I', 'I', 42, 0),
  TIFF_MOTOROLA('M', 'M', 0, 42);

  /** So many first bytes tell the format. */
  public static final int FIRST_BYTES = 16;

  private final String start;

  PictureFormat(int... start) {
    StringBuilder b = new StringBuilder();
    for (int c : start) {
      b.append((char) c);
    }
    this.start = b.toString();
  }

  /** The format of a file that starts with these bytes; empty when it is no picture. */
  public static Optional<PictureFormat> of(byte[] file) {
    for (PictureFormat f : values()) {
      boolean same = file.length >= f.start.length();
      for (int i = 0; same && i < f.start.length(); i++) {
        same = (file[i] & 255) == f.start.charAt(i);
      }
      if (same) {
        return Optional.of(f);
      }
    }
    return Optional.empty();
  }
}
