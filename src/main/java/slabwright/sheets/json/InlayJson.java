package slabwright.sheets.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.OpenQuestions;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.artwork.ArtworkWarning;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.panel.RegistrationTick;
import slabwright.inlay.stencil.Finding;
import slabwright.inlay.stencil.FixEffect;
import slabwright.inlay.stencil.Stencil;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.StencilSpec;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** One inlay as JSON; the keys are documented in {@code docs/json.md} and stay. */
public final class InlayJson {

  private InlayJson() {}

  /** One inlay on one line. */
  public static String line(
      String file, Artwork artwork, InlayPlan plan, StencilSpec spec, Words words) {
    return JsonText.line(tree(file, artwork, plan, spec, words));
  }

  /** One inlay, indented. */
  public static String pretty(
      String file, Artwork artwork, InlayPlan plan, StencilSpec spec, Words words) {
    return JsonText.pretty(tree(file, artwork, plan, spec, words));
  }

  /** One inlay on its floor with its setting out, indented. */
  public static String placed(
      PlacedInlay inlay, FloorTakeoff takeoff, UnitSystem units, Words words) {
    ObjectNode o =
        tree(inlay.inlay().graphic(), inlay.artwork(), inlay.plan(), inlay.inlay().spec(), words);
    inlay
        .settingOut(takeoff, units)
        .ifPresent(s -> SettingOutJson.write(s, o.putObject("settingOut")));
    return JsonText.pretty(o);
  }

  /** A graphic that could not be read, on one line. */
  public static String refused(String file, String sentence) {
    return JsonText.line(
        JsonNodeFactory.instance.objectNode().put("file", file).put("refused", sentence));
  }

  static ObjectNode tree(
      String file, Artwork artwork, InlayPlan plan, StencilSpec spec, Words words) {
    ObjectNode o = JsonNodeFactory.instance.objectNode();
    o.put("file", file);
    o.put("mmPerPx", artwork.mmPerPx());
    artwork.doubtMm().ifPresent(d -> o.put("doubt_mm", JsonText.number(d)));
    o.put("width_mm", JsonText.number(artwork.painted().width()));
    o.put("height_mm", JsonText.number(artwork.painted().height()));
    colours(artwork, o.putArray("colours"));
    o.put("opening_mm2", JsonText.number(plan.openingArea()));
    o.put("blank_mm2", JsonText.number(plan.blankArea()));
    o.put("blankWidth_mm", JsonText.number(plan.stencils().blank().width()));
    o.put("blankHeight_mm", JsonText.number(plan.stencils().blank().height()));
    o.put("mask_mm2", JsonText.number(plan.maskArea()));
    o.put("cutLength_mm", JsonText.number(plan.cutLength()));
    o.put("loosePieces", plan.loosePieces());
    panels(plan, o.putArray("panels"));
    ticks(plan, o.putArray("registration"));
    stencils(plan, o.putArray("stencils"));
    seams(plan, o);
    o.put("rollLength_mm", JsonText.number(plan.rollLength()));
    plan.panels().ifPresent(p -> o.put("waste", JsonText.significant(plan.waste())));
    paper(plan, o.putArray("paper"));
    o.put("pressBand_mm2", JsonText.number(plan.pressBandArea()));
    o.put("skirt_mm2", JsonText.number(plan.skirtArea()));
    changes(plan, o.putArray("changes"), words);
    settings(spec, o.putObject("settings"));
    o.put("frame", words.say("sheets.inlay-json.frame"));
    warnings(artwork, plan, o.putArray("warnings"), words);
    questions(artwork, plan, spec, o.putArray("questions"), words);
    return o;
  }

  private static void colours(Artwork artwork, ArrayNode list) {
    for (ColourRegion c : artwork.colours()) {
      ObjectNode o = list.addObject().put("colour", c.hex());
      o.put("area_mm2", JsonText.number(c.region().area()));
      Optional.ofNullable(artwork.names().get(c.hex())).ifPresent(n -> o.put("name", n));
    }
  }

  private static void paper(InlayPlan plan, ArrayNode list) {
    plan.masking().stream()
        .flatMap(m -> m.paper().stream())
        .forEach(
            run ->
                list.addObject()
                    .put("side", run.side().name().toLowerCase(Locale.ROOT))
                    .put("strips", run.strips())
                    .put("width_mm", JsonText.number(run.width()))
                    .put("length_mm", JsonText.number(run.length()))
                    .put("from_mm", JsonText.number(run.from())));
  }

  private static void panels(InlayPlan plan, ArrayNode list) {
    if (plan.panels().isEmpty()) {
      return;
    }
    for (Panel p : plan.panels().get().panels()) {
      box(p.box(), list.addObject().put("name", p.name()));
    }
  }

  private static void ticks(InlayPlan plan, ArrayNode list) {
    for (RegistrationTick t :
        plan.panels().map(PanelPlan::ticks).orElse(List.<RegistrationTick>of())) {
      ObjectNode o = list.addObject().put("tick", t.number());
      JsonText.place(o, t.at());
      plan.toSite()
          .map(m -> m.apply(t.at()))
          .ifPresent(
              p ->
                  o.put("siteX_mm", JsonText.number(p.x()))
                      .put("siteY_mm", JsonText.number(p.y())));
    }
  }

  private static void stencils(InlayPlan plan, ArrayNode list) {
    for (Stencil s : plan.stencils().stencils()) {
      ObjectNode o = list.addObject().put("stencil", s.layer()).put("colour", s.colour());
      plan.panels()
          .ifPresent(
              p -> {
                p.cut(s).forEach(x -> o.withArray("/panels").add(x.name()));
                o.put("rollLength_mm", JsonText.number(p.rollLength(s)));
                p.saving(s).ifPresent(spared -> local(p.of(s), spared, o));
              });
      o.put("blank_mm2", JsonText.number(plan.blankArea(s)));
      o.put("skirt_mm2", JsonText.number(plan.skirtArea(s)));
    }
  }

  /** Blanks no bigger than the colour, with their own panels and what they spare. */
  private static void local(PanelPlan own, PanelPlan.Saving spared, ObjectNode o) {
    ArrayNode blanks = o.putArray("blanks");
    own.blanks().forEach(b -> box(b, blanks.addObject()));
    ArrayNode pieces = o.putArray("pieces");
    own.panels().forEach(p -> box(p.box(), pieces.addObject().put("name", p.name())));
    o.putObject("spared")
        .put("roll_mm", JsonText.number(spared.roll()))
        .put("film_mm2", JsonText.number(spared.film()))
        .put("seams", spared.seams());
  }

  private static void box(Bounds b, ObjectNode o) {
    JsonText.place(o, new Vec(b.minX(), b.minY()));
    o.put("width_mm", JsonText.number(b.width()));
    o.put("height_mm", JsonText.number(b.height()));
  }

  private static void seams(InlayPlan plan, ObjectNode o) {
    plan.panels().ifPresent(p -> o.put("seamCost", JsonText.number(p.cost().total())));
    plan.bestSeams().ifPresent(c -> o.put("bestSeamCost", JsonText.number(c.total())));
  }

  private static void settings(StencilSpec s, ObjectNode o) {
    o.put("roll_mm", JsonText.number(s.roll().mm()));
    o.put("usable_mm", JsonText.number(s.usableMm()));
    o.put("overlap_mm", JsonText.number(s.overlap().mm()));
    o.put("margin_mm", JsonText.number(s.margin().mm()));
    o.put("press_mm", JsonText.number(s.press().mm()));
    o.put("reach_mm", JsonText.number(s.overspray().reachMm()));
    o.put("spread_mm", JsonText.number(s.spread().mm()));
    o.put("ties", s.ties());
  }

  private static void changes(InlayPlan plan, ArrayNode list, Words words) {
    for (FixEffect c : plan.stencils().changes()) {
      list.addObject()
          .put("stencil", c.layer())
          .put("fix", words.say(c.fix().step()))
          .put("places", c.places())
          .put("area_mm2", JsonText.number(c.area()));
    }
  }

  private static void warnings(Artwork artwork, InlayPlan plan, ArrayNode list, Words words) {
    Vec shift = plan.stencils().fromGraphic().apply(Vec.ZERO);
    for (ArtworkWarning w : artwork.warnings()) {
      warning(list, words.say(w.message()), w.place().map(p -> p.plus(shift)));
    }
    for (Finding f : plan.findings()) {
      ObjectNode o = warning(list, words.say(f.message()), f.at());
      f.seen().ifPresent(s -> o.put("stencil", s.layer()));
    }
  }

  /** The open ones. */
  private static void questions(
      Artwork artwork, InlayPlan plan, StencilSpec spec, ArrayNode list, Words words) {
    Vec shift = plan.stencils().fromGraphic().apply(Vec.ZERO);
    for (ArtworkQuestion q : OpenQuestions.of(artwork, spec)) {
      ObjectNode o = list.addObject().put("kind", kebab(q.kind()));
      o.put("text", words.say(q.message()));
      q.colours().forEach(o.putArray("colours")::add);
      o.put("offer", kebab(q.kind().offered()));
      if (q.deltaE() > 0) {
        o.put("mergeDeltaE", q.deltaE());
      }
      q.place().ifPresent(p -> JsonText.place(o, p.plus(shift)));
    }
  }

  private static String kebab(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static ObjectNode warning(ArrayNode list, String text, Optional<Vec> at) {
    ObjectNode o = list.addObject().put("text", text);
    at.ifPresent(p -> JsonText.place(o, p));
    return o;
  }
}
