package slabwright.desk.cards.inlay;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.inlay.artwork.Artwork;
import slabwright.inlay.artwork.ColourRegion;
import slabwright.site.ColourChoice;
import slabwright.site.ColourChoice.Use;
import slabwright.site.StencilSpec;

/** What happens with each colour of a graphic: dye, leave or ignore. */
final class ColourUse {
  private ColourUse() {}

  /** Every colour seen in the graphic or spoken of in the settings. */
  public static List<String> all(Optional<Artwork> artwork, StencilSpec spec) {
    Set<String> all = new LinkedHashSet<>();
    spec.colours().forEach(c -> all.add(c.colour()));
    artwork.ifPresent(a -> a.colours().stream().map(ColourRegion::hex).forEach(all::add));
    return List.copyOf(all);
  }

  /** What happens with a colour now. */
  public static Use of(StencilSpec spec, String colour) {
    return spec.colours().stream()
        .filter(c -> c.colour().equals(colour))
        .findFirst()
        .map(ColourChoice::use)
        .orElse(anyDyed(spec) ? Use.LEAVE : Use.DYE);
  }

  /**
   * The settings with another use of one colour and the same use of all others; its place in the
   * laying order stays if it can.
   *
   * @param all colours, see {@link #all}
   */
  public static StencilSpec with(StencilSpec spec, List<String> all, String colour, Use use) {
    if (!anyDyed(spec) && use == Use.DYE) {
      return spec.withColours(
          spec.colours().stream().filter(c -> !c.colour().equals(colour)).toList());
    }
    List<ColourChoice> choices = new ArrayList<>();
    for (ColourChoice c : spec.colours()) {
      boolean same = c.colour().equals(colour);
      choices.add(same ? c.withUse(use) : c);
    }
    for (String other : all) {
      boolean isSpoken = choices.stream().anyMatch(c -> c.colour().equals(other));
      if (!isSpoken && (other.equals(colour) || anyDyed(spec))) {
        choices.add(new ColourChoice(other, other.equals(colour) ? use : Use.LEAVE, ""));
      }
    }
    return spec.withColours(choices);
  }

  /** Whether the settings name a dye; if so, what they do not name is left. */
  private static boolean anyDyed(StencilSpec spec) {
    return spec.colours().stream().anyMatch(c -> c.use() == Use.DYE);
  }
}
