package slabwright.sheets.packet.client;

import slabwright.figures.ColourWord;
import slabwright.words.Words;
import slabwright.work.InlayTakeoff;

/** What a client calls the colours of a graphic. */
final class ColourNames {
  private ColourNames() {}

  /** The name on the plan; without one the nearest plain word. */
  static String of(String colour, InlayTakeoff dyes, Words words) {
    return dyes.dyes().stream()
        .filter(d -> d.colour().equals(colour) && !d.name().equals(colour))
        .map(InlayTakeoff.StencilDye::name)
        .findFirst()
        .orElseGet(() -> words.say(ColourWord.of(colour).word()));
  }
}
