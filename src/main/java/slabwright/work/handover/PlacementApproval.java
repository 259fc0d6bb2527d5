package slabwright.work.handover;

import java.util.List;
import java.util.Locale;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** The client's approval of where and how large a graphic lies, before vinyl is cut. */
public final class PlacementApproval {
  private PlacementApproval() {}

  public static HandoverDocument of(Site site, FloorArea area, Inlay inlay) {
    UnitSystem units = site.units();
    List<HandoverDocument.Row> rows =
        List.of(
            HandoverDocument.Row.fact(
                Message.of("work.placement-approval.graphic"), inlay.graphic()),
            HandoverDocument.Row.fact(
                Message.of("work.placement-approval.width-as-painted"),
                LengthFormat.show(inlay.width(), units)),
            HandoverDocument.Row.fact(
                Message.of("work.placement-approval.turn"), turn(inlay.turn())),
            HandoverDocument.Row.fact(
                Message.of("work.placement-approval.release"),
                site.releaseNumber() == 0
                    ? Message.of("work.placement-approval.draft")
                    : site.releaseNumber()));
    List<HandoverDocument.Row> checks =
        List.of(
            HandoverDocument.Row.toTick(
                Message.of("work.placement-approval.the-place-is-right"),
                Message.of("work.placement-approval.marked-on-the-floor-with")),
            HandoverDocument.Row.toTick(
                Message.of("work.placement-approval.it-reads-the-right-way"), ""),
            HandoverDocument.Row.toTick(
                Message.of("work.placement-approval.the-size-is-right"), ""),
            HandoverDocument.Row.toTick(
                Message.of("work.placement-approval.the-colours-are-understood-dye"), ""));
    return new HandoverDocument(
        Message.of("work.placement-approval.placement-approval", inlay.name(), area.name()),
        List.of(
            HandoverDocument.said(
                site.note().isBlank() ? site.name() : site.name() + " · " + site.note()),
            Message.of("work.placement-approval.dye-cant-be-taken-out")),
        List.of(
            new HandoverDocument.Section(Message.of("work.placement-approval.on-the-plan"), rows),
            new HandoverDocument.Section(
                Message.of("work.placement-approval.seen-on-site"), checks)),
        List.of(
            Message.of("work.placement-approval.client-date"),
            Message.of("work.placement-approval.contractor-date")));
  }

  private static Message turn(double degrees) {
    String size = String.format(Locale.ROOT, "%.1f°", Math.abs(degrees));
    if (size.equals("0.0°")) {
      return Message.of("work.placement-approval.none-its-top-is-at");
    }
    return degrees > 0
        ? Message.of("work.placement-approval.counter-clockwise", size)
        : Message.of("work.placement-approval.clockwise", size);
  }
}
