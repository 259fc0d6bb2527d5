package slabwright.inlay;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.GZIPInputStream;
import slabwright.inlay.artwork.ArtworkOptions;
import slabwright.inlay.artwork.ArtworkRefusal;
import slabwright.inlay.artwork.ArtworkRefusal.Reason;
import slabwright.inlay.artwork.ArtworkResult;
import slabwright.inlay.artwork.GraphicFormat;
import slabwright.inlay.artwork.batik.SvgArtworkReader;
import slabwright.inlay.artwork.pdf.PdfArtworkReader;
import slabwright.inlay.artwork.picture.PictureArtworkReader;
import slabwright.units.Message;

/**
 * A graphic's file, read by what its first bytes say it is, whatever it is called: SVG, SVG packed
 * with gzip, a page of a PDF, or a picture. Anything else is refused by its kind.
 */
final class GraphicFile {
  private static final int MOST_BYTES = 64 << 20;
  private static final int MOST_UNPACKED = 32 << 20;

  private final String name;
  private final ArtworkOptions options;
  private final GraphicSettings how;

  private GraphicFile(String name, ArtworkOptions options, GraphicSettings how) {
    this.name = name;
    this.options = options.merging(how.merged());
    this.how = how;
  }

  /**
   * Reads a graphic.
   *
   * @throws IOException when the file can't be read at all
   */
  static ArtworkResult read(Path file, ArtworkOptions options, GraphicSettings how)
      throws IOException {
    String name = String.valueOf(file.getFileName());
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(MOST_BYTES + 1);
      return new GraphicFile(name, options, how).read(bytes);
    }
  }

  private ArtworkResult read(byte[] bytes) throws IOException {
    if (bytes.length > MOST_BYTES) {
      return refused(
          Reason.TOO_LARGE, Message.of("inlay.graphic-file.too-large", MOST_BYTES >> 20));
    }
    GraphicFormat format = GraphicFormat.of(bytes);
    Optional<Message> why = format.refusal();
    if (why.isPresent()) {
      return refused(Reason.NOT_UNDERSTOOD, why.get());
    }
    return switch (format) {
      case PACKED -> unpacked(bytes);
      case PDF -> PdfArtworkReader.read(bytes, name, how.page(), options);
      case PICTURE ->
          PictureArtworkReader.read(new ByteArrayInputStream(bytes), name, options, how.tracing());
      default -> svg(bytes);
    };
  }

  private ArtworkResult svg(byte[] bytes) throws IOException {
    return SvgArtworkReader.read(new ByteArrayInputStream(bytes), name, options);
  }

  private ArtworkResult unpacked(byte[] packed) throws IOException {
    byte[] bytes;
    try (InputStream in = new GZIPInputStream(new ByteArrayInputStream(packed))) {
      bytes = in.readNBytes(MOST_UNPACKED + 1);
    } catch (IOException broken) {
      return refused(Reason.NOT_UNDERSTOOD, Message.of("inlay.graphic-file.broken-packing"));
    }
    if (bytes.length > MOST_UNPACKED) {
      return refused(
          Reason.TOO_LARGE, Message.of("inlay.graphic-file.inflates", MOST_UNPACKED >> 20));
    }
    return GraphicFormat.of(bytes) == GraphicFormat.SVG
        ? svg(bytes)
        : refused(Reason.NOT_UNDERSTOOD, Message.of("inlay.graphic-file.packed-not-svg"));
  }

  private ArtworkRefusal refused(Reason reason, Message why) {
    return new ArtworkRefusal(reason, Message.of("inlay.artwork.refused", name, why));
  }
}
