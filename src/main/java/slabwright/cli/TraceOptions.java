package slabwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import picocli.CommandLine.Option;
import slabwright.inlay.artwork.picture.TraceSettings;
import slabwright.project.RefusedInput;
import slabwright.shape.Vec;
import slabwright.units.Length;
import slabwright.units.Message;

/** The options of {@code inlay} that only a picture has use of: how it is traced. */
final class TraceOptions {
  private static final int FEWEST = 2;
  private static final int MOST = 64;
  private static final double WIDEST_SPECK_MM = 1000;
  private static final int CORNERS = 4;

  @Option(names = "--trace-colours", paramLabel = "N")
  private Integer colours;

  @Option(names = "--speck", paramLabel = "LEN")
  private Length speck;

  @Option(names = "--round", paramLabel = "0…1", defaultValue = "0")
  private double round;

  @Option(names = "--paper", paramLabel = "#HEX|none")
  private String paper;

  @Option(names = "--square", paramLabel = "X,Y", arity = "4")
  private List<String> square = List.of();

  /** The settings; refused when one of them makes no sense. */
  TraceSettings settings() throws RefusedInput {
    if (colours != null && (colours < FEWEST || colours > MOST)) {
      throw RefusedInput.of(Message.of("cli.trace.colours", FEWEST, MOST, colours));
    }
    if (!(round >= 0 && round <= 1)) {
      throw RefusedInput.of(Message.of("cli.trace.round", round));
    }
    if (speck != null && !(speck.mm() >= 0 && speck.mm() <= WIDEST_SPECK_MM)) {
      throw RefusedInput.of(Message.of("cli.trace.speck"));
    }
    return new TraceSettings(
        colours == null ? OptionalInt.empty() : OptionalInt.of(colours),
        speck == null ? OptionalDouble.empty() : OptionalDouble.of(speck.mm()),
        round,
        paper(),
        corners());
  }

  private Optional<String> paper() throws RefusedInput {
    if (paper == null) {
      return Optional.empty();
    }
    String hex = paper.strip().toLowerCase(Locale.ROOT);
    if (hex.equals("none")) {
      return Optional.of("");
    }
    if (!hex.matches("#[0-9a-f]{6}")) {
      throw RefusedInput.of(Message.of("cli.inlay.no-colour", paper, "--paper"));
    }
    return Optional.of(hex);
  }

  private List<Vec> corners() throws RefusedInput {
    List<Vec> corners = new ArrayList<>();
    for (String s : square) {
      if (!s.matches("\\d{1,6}(\\.\\d{1,3})?,\\d{1,6}(\\.\\d{1,3})?")) {
        throw RefusedInput.of(Message.of("cli.trace.square", s));
      }
      int comma = s.indexOf(',');
      corners.add(
          new Vec(
              Double.parseDouble(s.substring(0, comma)),
              Double.parseDouble(s.substring(comma + 1))));
    }
    if (!corners.isEmpty() && corners.size() != CORNERS) {
      throw RefusedInput.of(Message.of("cli.trace.square", String.join(" ", square)));
    }
    return corners;
  }
}
