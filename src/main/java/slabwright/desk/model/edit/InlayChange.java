package slabwright.desk.model.edit;

import slabwright.site.Inlay;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** Inlays with one thing changed. */
public final class InlayChange {
  private InlayChange() {}

  public static Inlay placed(Inlay i, Spot middle, double turn) {
    return new Inlay(
        i.id(), i.name(), i.graphic(), i.accepted(), middle, i.width(), turn, i.spec());
  }

  public static Inlay named(Inlay i, String name) {
    return new Inlay(
        i.id(), name, i.graphic(), i.accepted(), i.middle(), i.width(), i.turn(), i.spec());
  }

  public static Inlay accepted(Inlay i, String hash) {
    return new Inlay(
        i.id(), i.name(), i.graphic(), hash, i.middle(), i.width(), i.turn(), i.spec());
  }

  public static Inlay wide(Inlay i, Length width) {
    return new Inlay(
        i.id(), i.name(), i.graphic(), i.accepted(), i.middle(), width, i.turn(), i.spec());
  }

  public static Inlay with(Inlay i, StencilSpec spec) {
    return i.withSpec(spec);
  }
}
