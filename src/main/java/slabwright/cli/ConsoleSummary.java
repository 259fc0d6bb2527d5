package slabwright.cli;

import java.io.PrintWriter;
import java.util.List;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.OpenQuestions;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.FindingGroups;
import slabwright.site.EdgeClass;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.HeldGroup;
import slabwright.work.JobOutlook;

/** Short texts on the screen. */
final class ConsoleSummary {
  private ConsoleSummary() {}

  /** First of all: why the job can't start, and what of it is held for a reason of its own. */
  static void outlook(PrintWriter out, JobOutlook outlook, Words words) {
    outlook.cannotStart().stream()
        .distinct()
        .forEach(m -> out.println("✕ " + words.say("cli.console-summary.cannot-start", m)));
    HeldGroup.of(outlook.held())
        .forEach(h -> out.println("✕ " + words.say("cli.console-summary.held", h.why())));
  }

  static void tally(PrintWriter out, FloorTakeoff t, UnitSystem units, Words words) {
    out.println(t.area().name());
    row(
        out,
        words.say("cli.console-summary.net-floor"),
        QuantityFormat.area(t.net().area(), units));
    row(
        out,
        t.isGrindingChosen()
            ? words.say("cli.console-summary.to-be-ground")
            : words.say("cli.console-summary.if-ground"),
        QuantityFormat.area(t.ground().area(), units));
    row(
        out,
        words.say("cli.console-summary.by-machine"),
        QuantityFormat.area(t.asFound().machine().area(), units));
    row(
        out,
        words.say("cli.console-summary.by-hand"),
        QuantityFormat.area(t.asFound().hand().area(), units));
    if (!t.levelled().equals(t.asFound())) {
      row(
          out,
          words.say("cli.console-summary.by-hand-once-level"),
          QuantityFormat.area(t.levelled().hand().area(), units));
    }
    for (EdgeClass c : EdgeClass.values()) {
      if (t.edgeLength(c) > 0) {
        row(
            out,
            words.say("cli.console-summary.edge", c.label()),
            QuantityFormat.run(t.edgeLength(c), units));
      }
    }
    row(out, words.say("cli.console-summary.cut-in"), QuantityFormat.run(t.cutIn(), units));
    t.notes().forEach(n -> out.println("  ! " + words.say(n.message())));
  }

  private static void row(PrintWriter out, String label, String value) {
    out.printf("  %-22s%16s%n", label, value);
  }

  static void inlay(PrintWriter out, PlacedInlay placed, UnitSystem units, Words words) {
    InlayPlan plan = placed.plan();
    out.println("  " + words.say("cli.console-summary.inlay", placed.inlay().name()));
    row(out, words.say("cli.console-summary.dyed"), QuantityFormat.area(plan.openingArea(), units));
    row(
        out,
        words.say("cli.console-summary.stencils"),
        Integer.toString(plan.stencils().stencils().size()));
    row(out, words.say("cli.console-summary.panels"), Integer.toString(plan.panelsCut()));
    row(out, words.say("cli.console-summary.roll"), QuantityFormat.run(plan.rollLength(), units));
    row(out, words.say("cli.console-summary.cut"), QuantityFormat.run(plan.cutLength(), units));
    row(out, words.say("cli.console-summary.loose-pieces"), Integer.toString(plan.loosePieces()));
    placed.artwork().warnings().forEach(w -> out.println("  ! " + words.say(w.message())));
    OpenQuestions.of(placed.artwork(), placed.inlay().spec())
        .forEach(q -> out.println("  ? " + words.say(q.message())));
    findings(out, plan.findings(), units, words);
  }

  /** What is asked, and the option of {@code inlay} that takes what is offered. */
  static void question(PrintWriter out, ArtworkQuestion q, Words words) {
    String colour = q.colours().isEmpty() ? "" : q.colours().get(0);
    String how =
        switch (q.kind().offered()) {
          case LEAVE_BARE -> words.say("cli.console-summary.answer-leave-bare", colour);
          case IGNORE -> words.say("cli.console-summary.answer-ignore", colour);
          case MERGE ->
              q.colours().size() < 2
                  ? words.say("cli.console-summary.answer-merge", q.deltaE())
                  : words.say(
                      "cli.console-summary.answer-merge-two",
                      colour,
                      q.colours().get(1),
                      q.deltaE());
        };
    out.println("  ? " + words.say(q.message()) + " " + how);
  }

  /** One line for each kind of finding; the places are in the JSON and on the sheets. */
  static void findings(PrintWriter out, List<Finding> findings, UnitSystem units, Words words) {
    for (FindingGroups.Group g : FindingGroups.of(findings, units)) {
      String sign = g.weight() == Finding.Weight.CANNOT ? "  ✕ " : "  ! ";
      out.println(sign + words.say(g.sentence()));
    }
  }
}
