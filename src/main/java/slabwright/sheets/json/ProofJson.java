package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import slabwright.inlay.proof.ProofBatch;
import slabwright.inlay.proof.ProofFault;
import slabwright.inlay.proof.ProofFigures;
import slabwright.inlay.proof.ProofLimits;
import slabwright.inlay.proof.ProofNote;
import slabwright.inlay.proof.ProofReport;
import slabwright.inlay.proof.ProofVerdict;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** A proof check as JSON; the keys are documented in {@code docs/json.md} and stay. */
public final class ProofJson {
  private ProofJson() {}

  /**
   * One check on one line: the first stencil that came back, and under {@code stencils} all of
   * them.
   *
   * @param verdict the gravest of all
   * @param inlay its id
   */
  public static String line(
      List<ProofBatch.Judged> stencils,
      ProofVerdict verdict,
      String inlay,
      UnitSystem units,
      Words words) {
    ObjectNode o = JsonNodeFactory.instance.objectNode();
    ProofBatch.Judged first =
        stencils.stream()
            .filter(s -> s.report().verdict() == verdict)
            .findFirst()
            .orElse(stencils.get(0));
    o.put("verdict", verdict.key());
    o.put("words", words.say(first.report().message()));
    o.put("inlay", inlay);
    stencil(first, o, units, words);
    for (ProofBatch.Judged s : stencils) {
      ObjectNode each = o.withArray("/stencils").addObject();
      each.put("verdict", s.report().verdict().key());
      each.put("words", words.say(s.report().message()));
      stencil(s, each, units, words);
    }
    limits(first.report().limits(), o.putObject("limits"));
    o.put("frame", words.say("sheets.inlay-json.frame"));
    return JsonText.line(o);
  }

  private static void stencil(
      ProofBatch.Judged judged, ObjectNode o, UnitSystem units, Words words) {
    ProofReport report = judged.report();
    o.put("stencil", judged.stencil());
    report.panels().forEach(o.putArray("panels")::add);
    for (ProofFault f : report.faults()) {
      fault(f, o.withArray("/faults").addObject()).put("words", words.say(f.message(units)));
    }
    o.withArray("/faults");
    for (ProofNote n : report.notes()) {
      o.withArray("/notes")
          .addObject()
          .put("kind", n.kind())
          .put("open", n.isDoubt())
          .put("words", words.say(n.message(units)));
    }
    o.withArray("/notes");
    figures(report.figures(), o.putObject("figures"));
  }

  private static ObjectNode fault(ProofFault f, ObjectNode o) {
    o.put("kind", f.kind());
    o.put("x_mm", f.place().map(p -> JsonText.number(p.x())).orElse(null));
    o.put("y_mm", f.place().map(p -> JsonText.number(p.y())).orElse(null));
    o.put("size_mm", JsonText.number(f.sizeMm()));
    if (f instanceof ProofFault.PieceMissing piece) {
      o.put("area_mm2", JsonText.number(piece.area()));
    }
    if (f instanceof ProofFault.PieceAdded piece) {
      o.put("area_mm2", JsonText.number(piece.area()));
    }
    return o;
  }

  private static void figures(ProofFigures f, ObjectNode o) {
    o.put("edge_mm", JsonText.number(f.edge()));
    o.put("move_mm", JsonText.number(f.move()));
    o.put("fat_mm", JsonText.number(f.fat()));
    o.put("slivers_mm2", JsonText.number(f.slivers()));
    o.put("doubt_mm", JsonText.number(f.doubt()));
  }

  private static void limits(ProofLimits l, ObjectNode o) {
    o.put("edge_mm", JsonText.number(l.edge()));
    o.put("move_mm", JsonText.number(l.move()));
    o.put("thin_mm", JsonText.number(l.thin()));
    o.put("pieceArea_mm2", JsonText.number(l.pieceArea()));
    o.put("pieceThick_mm", JsonText.number(l.pieceThick()));
  }
}
