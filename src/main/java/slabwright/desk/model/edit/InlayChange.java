package slabwright.desk.model.edit;

import java.util.OptionalInt;
import slabwright.site.GraphicSource;
import slabwright.site.Inlay;
import slabwright.site.Spot;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** Inlays with one thing changed. */
public final class InlayChange {
  private InlayChange() {}

  public static Inlay placed(Inlay i, Spot middle, double turn) {
    return i.withMiddle(middle).withTurn(turn);
  }

  public static Inlay named(Inlay i, String name) {
    return i.withName(name);
  }

  public static Inlay accepted(Inlay i, String hash) {
    return i.withAccepted(hash);
  }

  public static Inlay wide(Inlay i, Length width) {
    return i.withWidth(width);
  }

  /** Takes another page of a PDF, from 1. */
  public static Inlay page(Inlay i, int page) {
    return i.withSource(new GraphicSource(OptionalInt.of(page), i.source().picture()));
  }

  public static Inlay with(Inlay i, StencilSpec spec) {
    return i.withSpec(spec);
  }
}
