package slabwright.work.handover;

import java.util.List;
import java.util.Locale;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.units.LengthFormat;
import slabwright.units.UnitSystem;

/** The client's approval of where and how large a graphic lies, before vinyl is cut. */
public final class PlacementApproval {
  private PlacementApproval() {}

  public static HandoverDocument of(Site site, FloorArea area, Inlay inlay) {
    UnitSystem units = site.units();
    List<HandoverDocument.Row> rows =
        List.of(
            HandoverDocument.Row.fact("Graphic", inlay.graphic()),
            HandoverDocument.Row.fact("Width as painted", LengthFormat.show(inlay.width(), units)),
            HandoverDocument.Row.fact(
                "Its middle, from the plan's zero",
                "%s right, %s up"
                    .formatted(
                        LengthFormat.show(inlay.middle().x(), units),
                        LengthFormat.show(inlay.middle().y(), units))),
            HandoverDocument.Row.fact("Turn", turn(inlay.turn())),
            HandoverDocument.Row.fact(
                "Release", site.releaseNumber() == 0 ? "draft" : "" + site.releaseNumber()));
    List<HandoverDocument.Row> checks =
        List.of(
            HandoverDocument.Row.toTick(
                "The place is right", "marked on the floor with tape and seen"),
            HandoverDocument.Row.toTick("It reads the right way for people coming in", ""),
            HandoverDocument.Row.toTick("The size is right", ""),
            HandoverDocument.Row.toTick(
                "The colours are understood: dye is translucent and every slab differs", ""));
    return new HandoverDocument(
        "Placement approval: " + inlay.name() + ", " + area.name(),
        List.of(
            site.note().isBlank() ? site.name() : site.name() + " · " + site.note(),
            "Dye can't be taken out of concrete. Vinyl is cut only after this is signed."),
        List.of(
            new HandoverDocument.Section("On the plan", rows),
            new HandoverDocument.Section("Seen on site", checks)),
        List.of("client, date", "contractor, date"));
  }

  private static String turn(double degrees) {
    String size = String.format(Locale.ROOT, "%.1f°", Math.abs(degrees));
    if (size.equals("0.0°")) {
      return "none: its top is at the top of the plan";
    }
    return size + (degrees > 0 ? " counter-clockwise" : " clockwise");
  }
}
