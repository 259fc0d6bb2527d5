package slabwright.sheets.days;

import slabwright.sheets.page.SheetContext;
import slabwright.units.Message;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.LanePlan;

/** What a crew has to know of one coat, in sentences. */
record CoatWords(CoatPlan coat, SheetContext context) {

  /** How long cutting in takes, and whether it can be done all round first. */
  String cutIn() {
    String takes =
        context.say(
            "sheets.coat-words.cut-in-takes",
            context.length(coat.job().cutIn()),
            coat.cutIn().text(context.times()::duration));
    return takes
        + " "
        + coat.cutInOutlastsWetEdge().maybe().map(this::outlasts).orElseGet(this::notKnown);
  }

  private String outlasts(boolean wetEdge) {
    return wetEdge
        ? context.say(
            "sheets.coat-words.cut-in-as-you-go", coat.wetEdge().text(context.times()::duration))
        : context.say("sheets.coat-words.cut-in-all-round-first");
  }

  /** Whether all edges may be cut in before the first lane; not while that is unknown. */
  boolean cutInFirst() {
    return !coat.cutInOutlastsWetEdge().maybe().orElse(true);
  }

  /** For the crew the answer, for others the reason too. */
  private String notKnown() {
    if (context.page().ofPacket()) {
      return context.say("sheets.coat-words.ask-before");
    }
    return context.say(
        "sheets.coat-words.cut-in-not-known", coat.cutInOutlastsWetEdge().text(x -> ""));
  }

  /** Whether lanes are lapped while their edge is wet; empty for a coat without lanes. */
  String wetEdge() {
    return coat.lanes().maybe().flatMap(l -> l).map(this::wetEdge).orElse("");
  }

  private String wetEdge(LanePlan lanes) {
    String oldest = context.times().duration(lanes.worstEdge());
    if (!coat.wetEdge().isKnown() && context.page().ofPacket()) {
      return context.say("sheets.coat-words.oldest-edge", oldest);
    } else if (!coat.wetEdge().isKnown()) {
      return context.say(
          "sheets.coat-words.wet-edge-not-known", oldest, coat.wetEdge().text(t -> ""));
    }
    Message open = coat.wetEdge().text(context.times()::duration);
    return coat.keepsWetEdge().maybe().orElse(false)
        ? context.say("sheets.coat-words.wet-edge-kept", oldest, open)
        : context.say("sheets.coat-words.wet-edge-lost", oldest, open);
  }
}
