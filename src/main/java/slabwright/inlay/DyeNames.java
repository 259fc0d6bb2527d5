package slabwright.inlay;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.inlay.stencil.Stencil;
import slabwright.site.ColourChoice;
import slabwright.site.Inlay;
import slabwright.units.ColourNaming;
import slabwright.units.Message;

/** What people call the colours of an inlay's stencils; no two stencils share a name. */
public final class DyeNames {
  private DyeNames() {}

  /** By colour, in laying order: the name a person gave, else the nearest plain words. */
  public static Map<String, Message> of(Inlay inlay, InlayPlan plan) {
    return of(inlay, plan.stencils().stencils().stream().map(Stencil::colour).toList());
  }

  /** The same for any set of the inlay's colours. */
  public static Map<String, Message> of(Inlay inlay, List<String> colours) {
    Map<String, String> own = new HashMap<>();
    for (ColourChoice c : inlay.spec().colours()) {
      own.putIfAbsent(c.colour(), c.name());
    }
    return ColourNaming.of(colours.stream().distinct().toList(), own);
  }
}
