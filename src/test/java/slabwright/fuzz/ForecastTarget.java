package slabwright.fuzz;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import slabwright.store.ForecastFile;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/** A weather forecast. */
final class ForecastTarget implements FuzzTarget {
  private static final String FORECAST =
      """
      date,low,high,humidity,rain
      2026-12-07,3,9,81 %,20 %
      2026-12-08,37 F,50 F,70,yes
      2026-12-09,,,,no
      """;

  private final Path scratch;

  ForecastTarget(Path scratch) {
    this.scratch = scratch;
  }

  @Override
  public byte[] input(Random random) {
    byte[] text =
        new TextMutator(random, List.of()).spoil(FORECAST).getBytes(StandardCharsets.UTF_8);
    return random.nextInt(4) == 0 ? new ByteMutator(random).spoil(text) : text;
  }

  @Override
  public List<Message> read(byte[] input) throws IOException {
    Path file = Files.write(scratch.resolve("forecast.csv"), input);
    return ForecastFile.read(file) instanceof Result.Refused<?> bad
        ? bad.refusals().stream().map(Refusal::message).toList()
        : List.of();
  }
}
