package slabwright.site.rules;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slabwright.site.FloorArea;
import slabwright.site.GraphicSource;
import slabwright.site.Inlay;
import slabwright.site.LocalBlank;
import slabwright.site.StencilChanges;
import slabwright.site.StencilSpec;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;

/** What must hold of inlays; the graphic itself is read elsewhere. */
public final class InlaySpecRules {
  /** Narrowest and widest inlay that makes sense on a floor, in mm. */
  private static final double NARROWEST = 10;

  private static final double WIDEST = 100_000;

  /** Changes to vinyl are a matter of millimetres; anything else is a slip of the unit. */
  private static final double LEAST_CHANGE = 0.1;

  private static final double MOST_CHANGE = 300;

  /** A square decimetre, in mm²: larger bits of a graphic are meant. */
  private static final double BIT = 10_000;

  private InlaySpecRules() {}

  static void size(FloorArea area, String path, List<Refusal> out) {
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < area.inlays().size(); i++) {
      Inlay inlay = area.inlays().get(i);
      IdRules.check(inlay.id(), path + ".inlays[" + i + "].id", ids, out);
      out.addAll(width(inlay.width(), path + ".inlays[" + i + "].width"));
    }
  }

  static void roll(FloorArea area, String path, List<Refusal> out) {
    for (int i = 0; i < area.inlays().size(); i++) {
      out.addAll(spec(area.inlays().get(i).spec(), path + ".inlays[" + i + "].stencil"));
    }
  }

  /** Faults of an inlay's width. */
  public static List<Refusal> width(Length width, String path) {
    return width.mm() >= NARROWEST && width.mm() <= WIDEST
        ? List.of()
        : List.of(
            Refusal.at(
                path,
                Message.of("site.inlay-spec-rules.the-inlays-width-is-it", width.toString())));
  }

  /** Faults of the settings for cutting and masking. */
  public static List<Refusal> spec(StencilSpec s, String path) {
    List<Refusal> out = new java.util.ArrayList<>();
    SizeRules.between(
        s.roll().mm(),
        50,
        10_000,
        Message.of("site.inlay-spec-rules.the-roll-width-in-mm"),
        path + ".roll",
        out);
    SizeRules.notNegative(
        s.overlap(), Message.of("site.inlay-spec-rules.the-overlap"), path + ".overlap", out);
    SizeRules.notNegative(
        s.margin(), Message.of("site.inlay-spec-rules.the-margin"), path + ".margin", out);
    SizeRules.notNegative(
        s.press(), Message.of("site.inlay-spec-rules.the-press-band"), path + ".press", out);
    SizeRules.notNegative(
        s.spread(), Message.of("site.inlay-spec-rules.the-spread"), path + ".spread", out);
    SizeRules.between(
        s.overspray().reachMm(),
        0,
        20_000,
        Message.of("site.inlay-spec-rules.the-overspray-reach-in-mm"),
        path + ".overspray",
        out);
    changes(s.changes(), path + ".changes", out);
    blanks(s.changes(), path + ".changes", out);
    if (s.usableMm() > s.roll().mm()) {
      out.add(
          Refusal.at(
              path + ".usable", Message.of("site.inlay-spec-rules.the-usable-width-is-larger")));
    }
    if (s.usableMm() <= s.overlap().mm()) {
      out.add(
          Refusal.at(
              path + ".roll",
              Message.of(
                  "site.inlay-spec-rules.the-rolls-usable-width-is",
                  Length.mm(s.usableMm()).toString(),
                  s.overlap().toString())));
    }
    if (s.margin().mm() < s.press().mm()) {
      out.add(
          Refusal.at(
              path + ".margin",
              Message.of(
                  "site.inlay-spec-rules.the-margin-is-narrower-than",
                  s.margin().toString(),
                  s.press().toString())));
    }
    return out;
  }

  private static void changes(StencilChanges c, String path, List<Refusal> out) {
    c.thickenMask()
        .ifPresent(
            v ->
                small(
                    v,
                    Message.of("site.inlay-spec-rules.the-width-that-thin-vinyl"),
                    path + ".thickenMask",
                    out));
    c.roundNeedles()
        .ifPresent(
            v ->
                small(
                    v,
                    Message.of("site.inlay-spec-rules.the-radius-of-needle-points"),
                    path + ".roundNeedles",
                    out));
    c.tieWidth()
        .ifPresent(
            v ->
                small(
                    v,
                    Message.of("site.inlay-spec-rules.the-width-of-ties"),
                    path + ".tieWidth",
                    out));
    c.dropUnder()
        .ifPresent(
            v ->
                SizeRules.between(
                    v,
                    0,
                    BIT,
                    Message.of("site.inlay-spec-rules.the-area-of-scraps-in"),
                    path + ".dropUnder",
                    out));
    c.fillUnder()
        .ifPresent(
            v ->
                SizeRules.between(
                    v,
                    0,
                    BIT,
                    Message.of("site.inlay-spec-rules.the-area-of-small-loose"),
                    path + ".fillUnder",
                    out));
    c.baseLightness()
        .ifPresent(
            v ->
                SizeRules.between(
                    v,
                    0,
                    100,
                    Message.of("site.inlay-spec-rules.the-lightness-of-the-base"),
                    path + ".baseLightness",
                    out));
    c.seams()
        .ifPresent(
            s ->
                s.places()
                    .forEach(
                        p ->
                            SizeRules.positive(
                                p,
                                Message.of("site.inlay-spec-rules.a-seams-place"),
                                path + ".seams.places",
                                out)));
  }

  private static void blanks(StencilChanges c, String path, List<Refusal> out) {
    for (int i = 0; i < c.blanks().size(); i++) {
      LocalBlank b = c.blanks().get(i);
      String at = path + ".blanks[" + i + "]";
      FileRules.colour(b.colour(), at + ".colour", out);
      SizeRules.positive(
          b.width(), Message.of("site.inlay-spec-rules.the-width-of-a-local"), at + ".width", out);
      SizeRules.positive(
          b.height(),
          Message.of("site.inlay-spec-rules.the-height-of-a-local"),
          at + ".height",
          out);
    }
  }

  static void source(FloorArea area, String path, List<Refusal> out) {
    for (int i = 0; i < area.inlays().size(); i++) {
      GraphicSource source = area.inlays().get(i).source();
      String at = path + ".inlays[" + i + "]";
      source
          .page()
          .ifPresent(
              p ->
                  SizeRules.between(
                      p,
                      1,
                      10_000,
                      Message.of("site.inlay-spec-rules.the-page-of-the-graphic"),
                      at + ".page",
                      out));
      source.picture().ifPresent(t -> traced(t, at + ".picture", out));
    }
  }

  private static void traced(GraphicSource.Traced t, String at, List<Refusal> out) {
    FileRules.inside(
        t.file(),
        Message.of("site.file-rules.traced-picture-lies-outside", t.file()),
        at + ".file",
        out);
    SizeRules.between(
        t.colours(),
        2,
        64,
        Message.of("site.inlay-spec-rules.the-number-of-traced-colours"),
        at + ".colours",
        out);
    SizeRules.notNegative(
        t.speck(), Message.of("site.inlay-spec-rules.the-speck-size"), at + ".speck", out);
    SizeRules.between(
        t.roundness(),
        0,
        1,
        Message.of("site.inlay-spec-rules.the-roundness-of-corners"),
        at + ".roundness",
        out);
    if (!t.background().isEmpty()) {
      FileRules.colour(t.background(), at + ".background", out);
    }
  }

  private static void small(Length v, Message what, String path, List<Refusal> out) {
    SizeRules.between(v.mm(), LEAST_CHANGE, MOST_CHANGE, what, path, out);
  }

  static void graphicPath(FloorArea area, String path, List<Refusal> out) {
    for (int i = 0; i < area.inlays().size(); i++) {
      String file = area.inlays().get(i).graphic();
      if (!staysInside(file)) {
        out.add(
            Refusal.at(
                path + ".inlays[" + i + "].graphic",
                Message.of("site.inlay-spec-rules.the-graphic-lies-outside-the", file)));
      }
    }
  }

  /** Whether a relative path names something inside its folder, by its text alone. */
  public static boolean staysInside(String file) {
    return !file.isBlank()
        && file.chars().noneMatch(Character::isISOControl)
        && !file.contains(":/")
        && !file.startsWith("/")
        && !file.startsWith("\\")
        && !file.matches("^[A-Za-z]:.*")
        && List.of(file.split("[/\\\\]")).stream().noneMatch(".."::equals);
  }
}
