package slabwright.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

  Length width() {
    return width;
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
    if (colours.equals("all")) {
      return List.of();
    }
    List<ColourChoice> out = new ArrayList<>();
    for (String part : colours.split(",", -1)) {
      String colour = part.strip().toLowerCase(Locale.ROOT);
      if (!colour.matches("#[0-9a-f]{6}")) {
        throw RefusedInput.of(Message.of("cli.inlay.no-colour", part));
      }
      out.add(new ColourChoice(colour, ColourChoice.Use.DYE, ""));
    }
    return out;
  }
}
