package slabwright.fuzz;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;

/** Spoils the bytes of a file; of a PNG the check sums are made good again in half of the cases. */
final class ByteMutator {
  private static final int[] WORDS = {0, 1, -1, 0x7fffffff, 0x80000000, 0xffff, 0x10000, 40_000};

  private final Random random;

  ByteMutator(Random random) {
    this.random = random;
  }

  byte[] spoil(byte[] file) {
    byte[] spoilt = file.clone();
    int times = 1 + random.nextInt(1 + random.nextInt(12));
    for (int i = 0; i < times && spoilt.length > 0; i++) {
      spoilt = once(spoilt);
    }
    return isPng(spoilt) && random.nextBoolean() ? checked(spoilt) : spoilt;
  }

  /** Half of the places lie in the first hundred bytes, where sizes and kinds stand. */
  private int place(int length) {
    return random.nextInt(random.nextBoolean() ? length : Math.min(length, 100));
  }

  private byte[] once(byte[] b) {
    int at = place(b.length);
    int to = Math.min(b.length, at + 1 + random.nextInt(16));
    switch (random.nextInt(9)) {
      case 0, 1 -> b[at] ^= (byte) (1 << random.nextInt(8));
      case 2, 3 -> b[at] = (byte) random.nextInt(256);
      case 4 -> {
        int word = WORDS[random.nextInt(WORDS.length)];
        for (int k = 0; k < 4 && at + k < b.length; k++) {
          b[at + k] = (byte) (word >> (24 - 8 * k));
        }
      }
      case 5 -> {
        return joined(Arrays.copyOf(b, at), Arrays.copyOfRange(b, to, b.length));
      }
      case 6 -> {
        return joined(Arrays.copyOf(b, to), Arrays.copyOfRange(b, at, b.length));
      }
      case 7 -> Arrays.fill(b, at, to, (byte) (random.nextBoolean() ? 0 : 255));
      default -> {
        return random.nextInt(4) == 0 ? Arrays.copyOf(b, at) : b;
      }
    }
    return b;
  }

  private static byte[] joined(byte[] a, byte[] b) {
    byte[] both = Arrays.copyOf(a, a.length + b.length);
    System.arraycopy(b, 0, both, a.length, b.length);
    return both;
  }

  private static boolean isPng(byte[] b) {
    return b.length > 8 && (b[0] & 255) == 0x89 && b[1] == 'P';
  }

  /** The same chunks with good check sums, as far as they can be followed. */
  private static byte[] checked(byte[] png) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(png, 0, 8);
    ByteBuffer in = ByteBuffer.wrap(png);
    int at = 8;
    while (at + 12 <= png.length) {
      int length = in.getInt(at);
      if (length < 0 || at + 12L + length > png.length) {
        break;
      }
      CRC32 sum = new CRC32();
      sum.update(png, at + 4, length + 4);
      out.write(png, at, length + 8);
      out.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
      at += length + 12;
    }
    out.write(png, at, png.length - at);
    return out.toByteArray();
  }
}
