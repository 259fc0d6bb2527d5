package slabwright.pdfin.page;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.zip.DataFormatException;
import java.util.zip.Inflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.filter.Filter;
import org.apache.pdfbox.filter.FilterFactory;
import org.apache.pdfbox.pdmodel.common.PDStream;
import slabwright.units.Message;

/**
 * How much a file grows when it is unpacked, found before the PDF library unpacks it into memory. A
 * thousand bytes can stand for a million, and packed twice for a billion.
 */
final class PdfInflation {
  private static final long MOST_BYTES = 128L << 20;
  private static final int MOST_OBJECTS = 200_000;

  private static final byte[] STREAM = {'s', 't', 'r', 'e', 'a', 'm'};
  private static final Set<COSName> PICTURES =
      Set.of(
          COSName.DCT_DECODE,
          COSName.DCT_DECODE_ABBREVIATION,
          COSName.JPX_DECODE,
          COSName.JBIG2_DECODE,
          COSName.CCITTFAX_DECODE,
          COSName.CCITTFAX_DECODE_ABBREVIATION);

  private PdfInflation() {}

  /** Unpacks every stream of the file's bytes and only counts; needs no parser. */
  static void checkRaw(byte[] file) {
    long sum = 0;
    byte[] out = new byte[1 << 16];
    Inflater inflater = new Inflater();
    try {
      for (int at = next(file, 0); at >= 0; at = next(file, at)) {
        while (at < file.length && (file[at] == '\r' || file[at] == '\n')) {
          at++;
        }
        inflater.reset();
        inflater.setInput(file, at, file.length - at);
        sum = inflated(inflater, sum, out);
      }
    } finally {
      inflater.end();
    }
  }

  /** The first byte after the next word "stream"; -1 when there is none. */
  private static int next(byte[] file, int from) {
    for (int i = from; i + STREAM.length <= file.length; i++) {
      int n = 0;
      while (n < STREAM.length && file[i + n] == STREAM[n]) {
        n++;
      }
      if (n == STREAM.length) {
        return i + n;
      }
    }
    return -1;
  }

  private static long inflated(Inflater inflater, long before, byte[] out) {
    long sum = before;
    try {
      for (int n = inflater.inflate(out); n > 0; n = inflater.inflate(out)) {
        sum += n;
        if (sum > MOST_BYTES) {
          throw tooMuch();
        }
      }
    } catch (DataFormatException notPacked) {
      // packed otherwise, or not at all
      return sum;
    }
    return sum;
  }

  private static PdfBudgetException tooMuch() {
    return new PdfBudgetException(Message.of("pdfin.painting.inflates", MOST_BYTES >> 20));
  }

  /** Unpacks step by step what of a page is packed otherwise than once by deflating. */
  static void checkChains(COSDictionary page) throws IOException {
    Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    Deque<COSBase> open = new ArrayDeque<>();
    open.push(page);
    Counter counter = new Counter();
    while (!open.isEmpty()) {
      COSBase next = open.pop();
      COSBase object = next instanceof COSObject o ? o.getObject() : next;
      if (object == null || !seen.add(object)) {
        continue;
      }
      if (seen.size() > MOST_OBJECTS) {
        throw new PdfBudgetException(Message.of("pdfin.painting.too-many-parts", MOST_OBJECTS));
      }
      if (object instanceof COSStream s) {
        unpack(s, counter);
      }
      if (object instanceof COSDictionary d) {
        d.entrySet().stream()
            .filter(e -> !e.getKey().equals(COSName.PARENT) && isContainer(e.getValue()))
            .forEach(e -> open.push(e.getValue()));
      } else if (object instanceof COSArray a) {
        a.forEach(
            e -> {
              if (isContainer(e)) {
                open.push(e);
              }
            });
      }
    }
  }

  /** A page may name one stream thousands of times; its content is all of them in a row. */
  static void checkContents(Iterator<PDStream> contents) throws IOException {
    IdentityHashMap<COSStream, Long> known = new IdentityHashMap<>();
    long sum = 0;
    while (contents.hasNext()) {
      COSStream stream = contents.next().getCOSObject();
      Long length = known.get(stream);
      if (length == null) {
        try (InputStream in = stream.createInputStream()) {
          length = in.transferTo(OutputStream.nullOutputStream());
        }
        known.put(stream, length);
      }
      sum += length;
      if (sum > MOST_BYTES) {
        throw tooMuch();
      }
    }
  }

  private static boolean isContainer(COSBase b) {
    return b instanceof COSObject || b instanceof COSDictionary || b instanceof COSArray;
  }

  private static void unpack(COSStream stream, Counter counter) throws IOException {
    List<COSName> filters = filters(stream);
    boolean once =
        filters.size() == 1
            && (filters.get(0).equals(COSName.FLATE_DECODE)
                || filters.get(0).equals(COSName.FLATE_DECODE_ABBREVIATION));
    if (once || filters.isEmpty() || filters.stream().anyMatch(PICTURES::contains)) {
      return;
    }
    byte[] bytes;
    try (InputStream raw = stream.createRawInputStream()) {
      bytes = raw.readAllBytes();
    }
    for (int i = 0; i < filters.size(); i++) {
      Filter filter = FilterFactory.INSTANCE.getFilter(filters.get(i));
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      counter.to = out;
      filter.decode(new ByteArrayInputStream(bytes), counter, stream, i);
      bytes = out.toByteArray();
    }
  }

  private static List<COSName> filters(COSStream stream) {
    COSBase f = stream.getFilters();
    if (f instanceof COSName n) {
      return List.of(n);
    }
    return f instanceof COSArray a
        ? a.toList().stream().filter(COSName.class::isInstance).map(COSName.class::cast).toList()
        : List.of();
  }

  /** Passes on, and counts all that ever passed. */
  private static final class Counter extends OutputStream {
    private OutputStream to = OutputStream.nullOutputStream();
    private long sum;

    @Override
    public void write(int b) throws IOException {
      count(1);
      to.write(b);
    }

    @Override
    public void write(byte[] b, int off, int len) throws IOException {
      count(len);
      to.write(b, off, len);
    }

    private void count(int n) {
      sum += n;
      if (sum > MOST_BYTES) {
        throw tooMuch();
      }
    }
  }
}
