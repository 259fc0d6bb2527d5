package slabwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import slabwright.project.RefusedInput;
import slabwright.project.export.PictureRequest;
import slabwright.store.AtomicFile;
import slabwright.units.Message;
import slabwright.words.Words;

/** {@code picture PLAN}: a floor as it should look, as a PNG. */
@Command(name = "picture", mixinStandardHelpOptions = true)
final class PictureCommand implements Callable<Integer> {
  private static final byte[] PNG = {(byte) 137, 'P', 'N', 'G'};
  private static final int MOST_PIXELS = 8000;
  private static final int LEAST_PIXELS = 100;

  @Parameters(paramLabel = "PLAN")
  private Path plan;

  @ArgGroup private Seen seen = new Seen();

  @Option(names = "--area", paramLabel = "ID")
  private String area;

  @Option(names = "--pixels", paramLabel = "N", defaultValue = "2400")
  private int pixels;

  @Option(names = "--out", paramLabel = "FILE.png", defaultValue = "floor.png")
  private Path out;

  @Spec private CommandSpec spec;

  private final Words words;

  PictureCommand(Words words) {
    this.words = words;
  }

  /** From above, unless one of these is said. */
  private static final class Seen {
    @Option(names = "--from-door")
    private boolean fromDoor;

    @Option(names = "--photo", paramLabel = "FILE")
    private Path photo;

    PictureRequest.View view() {
      if (photo != null) {
        return new PictureRequest.OnPhoto(photo);
      }
      return fromDoor ? new PictureRequest.FromDoor() : new PictureRequest.FromAbove();
    }
  }

  @Override
  public Integer call() throws RefusedInput, IOException {
    if (pixels < LEAST_PIXELS || pixels > MOST_PIXELS) {
      throw RefusedInput.of(Message.of("cli.picture.pixels", LEAST_PIXELS, MOST_PIXELS));
    }
    if (Files.isDirectory(out) || (Files.exists(out) && !startsLikePng(out))) {
      throw RefusedInput.of(Message.of("cli.picture.not-a-png", out.toString()));
    }
    PictureRequest.FloorShown floor =
        PlanLoader.orRefuse(
            new PictureRequest(
                    PlanLoader.compute(PlanLoader.read(plan), plan),
                    Optional.ofNullable(area),
                    seen.view(),
                    pixels)
                .shown());
    String caption = words.say(PictureRequest.CAPTION);
    AtomicFile.write(out, floor.rendering().png(caption, () -> false));
    int wide = floor.rendering().width();
    int high = floor.rendering().height();
    var print = spec.commandLine().getOut();
    print.println(words.say("cli.picture.written", floor.areaName(), wide, high, out.toString()));
    floor.notes().forEach(n -> print.println(words.say(n)));
    print.println(caption);
    return ExitCode.DONE.code();
  }

  private static boolean startsLikePng(Path file) throws IOException {
    try (var in = Files.newInputStream(file)) {
      return Arrays.equals(in.readNBytes(PNG.length), PNG);
    }
  }
}
