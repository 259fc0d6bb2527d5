package slabwright.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import slabwright.pdfin.picture.Photo;
import slabwright.pdfin.picture.Picture;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/** A picture or a page to draw over, and a photo of the floor. */
final class UnderlayTarget implements FuzzTarget {
  private final List<byte[]> pictures = GraphicTarget.pictures();
  private final List<byte[]> pages = GraphicTarget.pdfs();
  private final Path scratch;

  UnderlayTarget(Path scratch) throws IOException {
    this.scratch = scratch;
  }

  @Override
  public byte[] input(Random random) {
    List<byte[]> from = random.nextInt(3) == 0 ? pages : pictures;
    return GraphicTarget.spoilt(from.get(random.nextInt(from.size())), random);
  }

  @Override
  public List<Message> read(byte[] input) throws IOException {
    boolean page = input.length > 0 && input[0] == '%';
    Path file = Files.write(scratch.resolve(page ? "under.pdf" : "under.png"), input);
    Result<?> read = page ? Picture.read(file, 1) : Photo.read(file);
    return read instanceof Result.Refused<?> bad
        ? bad.refusals().stream().map(Refusal::message).toList()
        : List.of();
  }
}
