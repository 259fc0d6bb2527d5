package slabwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Option;
import slabwright.project.RefusedInput;
import slabwright.site.ColourChoice;
import slabwright.site.Overspray;
import slabwright.site.StencilSpec;
import slabwright.site.rules.InlaySpecRules;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.UnitSystem;

/** The options of {@code inlay} and the settings they make. */
final class InlayOptions {
  private static final String LEN = "LEN";
  private static final double MOST_DIFFERENCE = 100;
  private static final Pattern PAIR =
      Pattern.compile("\\s*(#[0-9a-fA-F]{6})\\s*=\\s*(#[0-9a-fA-F]{6})\\s*");

  @Option(names = "--width", required = true, paramLabel = LEN)
  private Length width;

  @Option(names = "--roll", required = true, paramLabel = LEN)
  private Length roll;

  @Option(names = "--usable", paramLabel = LEN)
  private Length usable;

  @Option(names = "--overlap", paramLabel = LEN)
  private Length overlap;

  @Option(names = "--margin", paramLabel = LEN)
  private Length margin;

  @Option(names = "--press", paramLabel = LEN)
  private Length press;

  @Option(names = "--reach", paramLabel = LEN)
  private Length reach;

  @Option(names = "--colours", paramLabel = "all|#HEX,…", defaultValue = "all")
  private String colours;

  @Option(names = "--merge", paramLabel = "DELTA_E|#HEX=#HEX,…", split = ",")
  private List<String> merge = List.of();

  @Option(names = "--leave-bare", paramLabel = "#HEX,…", split = ",")
  private List<String> bare = List.of();

  @Option(names = "--ignore", paramLabel = "#HEX,…", split = ",")
  private List<String> ignored = List.of();

  @Option(names = "--page", paramLabel = "N", defaultValue = "1")
  private int page;

  @Option(names = "--as-drawn")
  private boolean asDrawn;

  Length width() {
    return width;
  }

  /** Whether every question about colours is answered by dyeing them as they are drawn. */
  boolean asDrawn() {
    return asDrawn;
  }

  /** Which page of a PDF, from 1. */
  int page() {
    return page;
  }

  /** What is said is said in the units that the width was typed in. */
  UnitSystem units() {
    return width.typedIn().orElse(UnitSystem.METRIC);
  }

  /** The settings; refused when they contradict each other. */
  StencilSpec spec() throws RefusedInput {
    StencilSpec base = StencilSpec.forRoll(roll);
    Length band = press == null ? base.press() : press;
    Length rim = margin != null ? margin : band.mm() > base.margin().mm() ? band : base.margin();
    StencilSpec spec =
        new StencilSpec(
            roll,
            Optional.ofNullable(usable),
            overlap == null ? base.overlap() : overlap,
            rim,
            band,
            reach == null ? base.overspray() : new Overspray.Stated(reach),
            choices(),
            mergeOr(base.mergeDeltaE()),
            base.spread(),
            base.longestPiece(),
            base.vinylHolds(),
            base.ties(),
            base.changes());
    List<Refusal> faults = new ArrayList<>(InlaySpecRules.width(width, ""));
    InlaySpecRules.spec(spec, "").forEach(f -> faults.add(Refusal.of(f.message())));
    if (!faults.isEmpty()) {
      throw RefusedInput.of(faults);
    }
    return spec;
  }

  /** The colour difference up to which colours are merged; the last that is stated. */
  private double mergeOr(double usual) throws RefusedInput {
    double within = usual;
    for (String part : merge) {
      if (!PAIR.matcher(part).matches()) {
        within = difference(part);
      }
    }
    return within;
  }

  private static double difference(String part) throws RefusedInput {
    if (!part.strip().matches("\\d{1,3}(\\.\\d{1,6})?")
        || Double.parseDouble(part) > MOST_DIFFERENCE) {
      throw RefusedInput.of(Message.of("cli.inlay.merge", part));
    }
    return Double.parseDouble(part);
  }

  /** Colours that count as another; refused when one counts as two. */
  Map<String, String> merged() throws RefusedInput {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String part : merge) {
      Matcher pair = PAIR.matcher(part);
      if (pair.matches()) {
        String from = pair.group(1).toLowerCase(Locale.ROOT);
        String to = pair.group(2).toLowerCase(Locale.ROOT);
        String before = pairs.putIfAbsent(from, to);
        if (before != null && !before.equals(to)) {
          throw RefusedInput.of(Message.of("cli.inlay.merged-twice", from));
        }
      }
    }
    for (String to : pairs.values()) {
      if (pairs.containsKey(to)) {
        throw RefusedInput.of(Message.of("cli.inlay.merged-twice", to));
      }
    }
    return pairs;
  }

  private List<ColourChoice> choices() throws RefusedInput {
    Map<String, ColourChoice.Use> out = new LinkedHashMap<>();
    if (!colours.equals("all")) {
      choose(out, "--colours", List.of(colours.split(",", -1)), ColourChoice.Use.DYE);
    }
    choose(out, "--leave-bare", bare, ColourChoice.Use.LEAVE);
    choose(out, "--ignore", ignored, ColourChoice.Use.IGNORE);
    List<ColourChoice> choices = new ArrayList<>();
    out.forEach((colour, use) -> choices.add(new ColourChoice(colour, use, "")));
    return choices;
  }

  private static void choose(
      Map<String, ColourChoice.Use> out, String option, List<String> parts, ColourChoice.Use use)
      throws RefusedInput {
    for (String part : parts) {
      String colour = part.strip().toLowerCase(Locale.ROOT);
      if (!colour.matches("#[0-9a-f]{6}")) {
        throw RefusedInput.of(Message.of("cli.inlay.no-colour", part, option));
      }
      ColourChoice.Use before = out.putIfAbsent(colour, use);
      if (before != null && before != use) {
        throw RefusedInput.of(Message.of("cli.inlay.colour-twice", colour));
      }
    }
  }
}
