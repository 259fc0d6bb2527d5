package slabwright.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Option;
import slabwright.project.RefusedInput;
import slabwright.site.ColourChoice;
import slabwright.site.Overspray;
import slabwright.site.StencilSpec;
import slabwright.site.rules.InlaySpecRules;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** The options of {@code inlay} and the settings they make. */
final class InlayOptions {
  private static final String LEN = "LEN";

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

  @Option(names = "--merge", paramLabel = "DELTA_E")
  private Double merge;

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

  private double mergeOr(double usual) throws RefusedInput {
    if (merge == null) {
      return usual;
    }
    if (!(merge >= 0 && merge <= 100)) {
      throw RefusedInput.of(Message.of("cli.inlay.merge", merge));
    }
    return merge;
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
