package slabwright.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import slabwright.inlay.proof.ReturnedFiles;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/** A drawing that the sign shop sent back. */
final class ReturnedTarget implements FuzzTarget {
  private final List<byte[]> files;
  private final Path scratch;
  private final String ending;

  ReturnedTarget(List<byte[]> files, Path scratch, String ending) {
    this.files = files;
    this.scratch = scratch;
    this.ending = ending;
  }

  @Override
  public byte[] input(Random random) {
    return GraphicTarget.spoilt(files.get(random.nextInt(files.size())), random);
  }

  @Override
  public List<Message> read(byte[] input) throws IOException {
    Path file = Files.write(scratch.resolve("returned" + ending), input);
    return ReturnedFiles.read(List.of(file), OptionalInt.empty()) instanceof Result.Refused<?> bad
        ? bad.refusals().stream().map(Refusal::message).toList()
        : List.of();
  }
}
