package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import slabwright.inlay.settingout.PanelPlace;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.settingout.SettingOutOrigin;
import slabwright.inlay.settingout.SnappedLines;
import slabwright.inlay.settingout.SquareCheck;
import slabwright.inlay.settingout.TieCheck;

/** The setting out of one inlay as JSON, points in the site's frame. */
final class SettingOutJson {
  private SettingOutJson() {}

  static void write(SettingOut out, ObjectNode o) {
    out.lines().ifPresent(l -> lines(l, o));
    ArrayNode panels = o.putArray("panels");
    out.panels().forEach(p -> panel(p, panels.addObject()));
    o.putObject("blank")
        .put("left_mm", JsonText.number(out.blank().left()))
        .put("right_mm", JsonText.number(out.blank().right()))
        .put("above_mm", JsonText.number(out.blank().above()))
        .put("below_mm", JsonText.number(out.blank().below()));
    o.put("diagonal_mm", JsonText.number(out.diagonal()));
    ArrayNode checks = o.putArray("checks");
    out.checks().forEach(c -> check(c, checks.addObject()));
  }

  private static void lines(SnappedLines l, ObjectNode o) {
    ObjectNode origin = o.putObject("origin").put("wall", l.origin().wallLetter());
    JsonText.place(origin, l.origin().at());
    if (l.origin() instanceof SettingOutOrigin.DoorMiddle d) {
      origin.put("doorway", d.doorway());
      origin.put("half_mm", JsonText.number(d.halfWidth()));
    } else if (l.origin() instanceof SettingOutOrigin.WallPoint p) {
      origin.put("corner", p.from().number());
      origin.put("fromCorner_mm", JsonText.number(p.distance()));
    }
    square(l.square(), o.putObject("squareAtWall"));
    o.put("along_mm", JsonText.number(l.along()));
    o.put("aside_mm", JsonText.number(l.aside()));
    o.put("side", word(l.side()));
    JsonText.place(o.putObject("cross"), l.cross());
    square(l.crossSquare(), o.putObject("squareAtStation"));
    l.turned()
        .ifPresent(
            t ->
                o.putObject("turned")
                    .put("on_mm", JsonText.number(t.on()))
                    .put("off_mm", JsonText.number(t.off()))
                    .put("side", word(t.side())));
  }

  private static void square(SquareCheck s, ObjectNode o) {
    o.put("line_mm", JsonText.number(s.lineLeg() * s.unit()));
    o.put("square_mm", JsonText.number(s.squareLeg() * s.unit()));
    o.put("across_mm", JsonText.number(s.across() * s.unit()));
  }

  private static void panel(PanelPlace p, ObjectNode o) {
    o.put("panel", p.panel());
    o.put("lap", word(p.lap()));
    o.put("left_mm", JsonText.number(p.left()));
    o.put("right_mm", JsonText.number(p.right()));
    o.put("above_mm", JsonText.number(p.above()));
    o.put("below_mm", JsonText.number(p.below()));
  }

  private static void check(TieCheck c, ObjectNode o) {
    o.put("corner", word(c.corner()));
    o.put("first", c.ties().first().number());
    o.put("fromFirst_mm", JsonText.number(c.ties().fromFirst()));
    o.put("second", c.ties().second().number());
    o.put("fromSecond_mm", JsonText.number(c.ties().fromSecond()));
    o.put("errorAt95_mm", JsonText.number(c.ties().errorAt95()));
  }

  private static String word(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
