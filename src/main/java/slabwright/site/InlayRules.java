package slabwright.site;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slabwright.units.Length;

/** What must hold of inlays; the graphic itself is read elsewhere. */
public final class InlayRules {
  /** Narrowest and widest inlay that makes sense on a floor, in mm. */
  private static final double NARROWEST = 10;

  private static final double WIDEST = 100_000;

  private InlayRules() {}

  static void size(FloorArea area, String path, List<Refusal> out) {
    Set<String> ids = new HashSet<>();
    for (int i = 0; i < area.inlays().size(); i++) {
      Inlay inlay = area.inlays().get(i);
      Ids.check(inlay.id(), path + ".inlays[" + i + "].id", ids, out);
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
                path, "The inlay's width is " + width + "; it must lie between 10 mm and 100 m."));
  }

  /** Faults of the settings for cutting and masking. */
  public static List<Refusal> spec(StencilSpec s, String path) {
    List<Refusal> out = new java.util.ArrayList<>();
    Sizes.between(s.roll().mm(), 50, 10_000, "The roll width in mm", path + ".roll", out);
    Sizes.notNegative(s.overlap(), "The overlap", path + ".overlap", out);
    Sizes.notNegative(s.margin(), "The margin", path + ".margin", out);
    Sizes.notNegative(s.press(), "The press band", path + ".press", out);
    Sizes.notNegative(s.spread(), "The spread", path + ".spread", out);
    Sizes.between(
        s.overspray().reachMm(), 0, 20_000, "The overspray reach in mm", path + ".overspray", out);
    if (s.usableMm() > s.roll().mm()) {
      out.add(
          Refusal.at(
              path + ".usable", "The usable width is larger than the roll; correct one of them."));
    }
    if (s.usableMm() <= s.overlap().mm()) {
      out.add(
          Refusal.at(
              path + ".roll",
              "The roll's usable width, "
                  + Length.mm(s.usableMm())
                  + ", is not wider than the overlap, "
                  + s.overlap()
                  + "; take a wider roll or a smaller overlap."));
    }
    if (s.margin().mm() < s.press().mm()) {
      out.add(
          Refusal.at(
              path + ".margin",
              "The margin, "
                  + s.margin()
                  + ", is narrower than the press band, "
                  + s.press()
                  + "; make it at least as wide."));
    }
    return out;
  }

  static void graphicPath(FloorArea area, String path, List<Refusal> out) {
    for (int i = 0; i < area.inlays().size(); i++) {
      String file = area.inlays().get(i).graphic();
      if (!staysInside(file)) {
        out.add(
            Refusal.at(
                path + ".inlays[" + i + "].graphic",
                "The graphic \""
                    + file
                    + "\" lies outside the plan's folder; copy it beside the plan and name it by a relative path."));
      }
    }
  }

  /** Whether a relative path names something inside its folder, by its text alone. */
  public static boolean staysInside(String file) {
    return !file.isBlank()
        && !file.startsWith("/")
        && !file.startsWith("\\")
        && !file.matches("^[A-Za-z]:.*")
        && List.of(file.split("[/\\\\]")).stream().noneMatch(".."::equals);
  }
}
