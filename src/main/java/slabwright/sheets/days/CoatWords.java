package slabwright.sheets.days;

import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.Words;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.LanePlan;

/** What a crew has to know of one coat, in sentences. */
record CoatWords(CoatPlan coat, SheetContext context) {

  /** How long cutting in takes, and whether it can be done all round first. */
  String cutIn() {
    String takes =
        context.length(coat.job().cutIn())
            + " by brush or small roller, "
            + context.words().say(coat.cutIn().text(Words::time))
            + " for one person. ";
    return takes
        + coat.cutInOutlastsWetEdge()
            .maybe()
            .map(
                outlasts ->
                    outlasts
                        ? "! That outlasts the wet edge: cut in as you go, only as far ahead as the"
                            + " roller follows within "
                            + context.words().say(coat.wetEdge().text(Words::time))
                            + "."
                        : "✓ The edge stays wet longer: cut in all round first.")
            .orElse("? Whether it outlasts the wet edge is not known: " + whyNot());
  }

  private String whyNot() {
    return context.words().say(coat.cutInOutlastsWetEdge().text(x -> "")) + ".";
  }

  /** Whether lanes are lapped while their edge is wet; empty for a coat without lanes. */
  String wetEdge() {
    return coat.lanes().maybe().flatMap(l -> l).map(this::wetEdge).orElse("");
  }

  private String wetEdge(LanePlan lanes) {
    String oldest =
        "The oldest edge that a lane laps is " + Words.time(lanes.worstEdge()) + " old; ";
    if (!coat.wetEdge().isKnown()) {
      return "? "
          + oldest
          + "how long it stays wet is not known: "
          + context.words().say(coat.wetEdge().text(t -> ""))
          + ".";
    }
    String open = "it stays wet for " + context.words().say(coat.wetEdge().text(Words::time)) + ".";
    return coat.keepsWetEdge().maybe().orElse(false)
        ? "✓ " + oldest + open
        : "✕ " + oldest + open + " Add hands, or divide the floor at a joint.";
  }
}
