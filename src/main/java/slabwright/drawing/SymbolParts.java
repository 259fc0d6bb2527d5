package slabwright.drawing;

import java.util.List;

/** The shape of every symbol kind. */
final class SymbolParts {
  private static final Colour PAPER = Palette.WHITE;

  private SymbolParts() {}

  static List<PrimitiveInk> of(Symbol s) {
    SymbolPen pen = new SymbolPen(s);
    return draw(pen, s).parts();
  }

  private static SymbolPen draw(SymbolPen pen, Symbol s) {
    return switch (s.kind()) {
      case NUMBER -> pen.circle(PAPER, 0, 0, 0.95).words(figures(s.words().length()));
      case WAY_IN -> pen.line(0, -1, 0, 0.95).line(-0.55, 0.3, 0, 0.95, 0.55, 0.3);
      case NEEDLE -> needle(pen, s);
      case WITNESS -> pen.line(-1, 0, 1, 0).line(0, -1, 0, 1);
      case JOIN -> pen.circle(PAPER, 0, 0, 0.55).line(-1, 0, 1, 0).line(0, -1, 0, 1);
      case POINT -> pen.circle(PAPER, 0, 0, 0.6).dot(0, 0, 0.22);
      case LOOK -> pen.arc(0, 0, 0.9, 0, 360);
      case TICK_BOX -> pen.shape(PAPER, -0.9, -0.9, 0.9, -0.9, 0.9, 0.9, -0.9, 0.9);
      case LEVEL_CHANGE -> pen.line(-1, -0.5, 0, -0.5, 0, 0.5, 1, 0.5);
      case SPALL -> spall(pen);
      case CAMERA ->
          pen.shape(
                  PAPER, -1, -0.7, 1, -0.7, 1, 0.45, 0.4, 0.45, 0.25, 0.75, -0.25, 0.75, -0.4, 0.45,
                  -1, 0.45)
              .arc(0, -0.12, 0.36, 0, 360);
      case DRAIN, DETECTOR, SPRINKLER, POWER, IGNITION, AIR_OUTLET -> service(pen, s);
    };
  }

  /** The em of the figures in a ring, as a share of its width, so that they keep off its line. */
  static double figures(int count) {
    return count == 1 ? 0.56 : count == 2 ? 0.46 : 0.36;
  }

  /** What hangs, stands or sits in the building and the crew must know of. */
  private static SymbolPen service(SymbolPen pen, Symbol s) {
    return switch (s.kind()) {
      case DRAIN -> drain(pen);
      case DETECTOR ->
          pen.circle(PAPER, 0, 0, 0.95)
              .dot(0, -0.35, 0.2)
              .arc(0, -0.35, 0.5, 30, 150)
              .arc(0, -0.35, 0.9, 38, 142);
      case SPRINKLER ->
          pen.circle(PAPER, 0, 0, 0.95)
              .line(0, 0.6, 0, -0.6)
              .line(-0.52, 0.3, 0.52, -0.3)
              .line(-0.52, -0.3, 0.52, 0.3);
      case POWER ->
          pen.circle(PAPER, 0, 0, 0.95)
              .shape(
                  s.colour(), 0.15, 0.65, -0.4, -0.1, -0.02, -0.1, -0.15, -0.65, 0.4, 0.1, 0, 0.1);
      case IGNITION ->
          pen.shape(PAPER, -1, -0.8, 1, -0.8, 0, 0.95).line(0, 0.35, 0, -0.25).dot(0, -0.52, 0.12);
      default ->
          pen.shape(PAPER, -0.9, -0.9, 0.9, -0.9, 0.9, 0.9, -0.9, 0.9)
              .line(0, -0.6, 0, 0.6)
              .line(-0.4, 0.15, 0, 0.6, 0.4, 0.15);
    };
  }

  private static SymbolPen needle(SymbolPen pen, Symbol s) {
    return pen.shape(s.colour(), 0, 1, -0.38, -1, 0, -0.62).shape(PAPER, 0, 1, 0.38, -1, 0, -0.62);
  }

  private static SymbolPen drain(SymbolPen pen) {
    return pen.circle(PAPER, 0, 0, 0.95)
        .line(-0.82, 0.45, 0.82, 0.45)
        .line(-0.95, 0, 0.95, 0)
        .line(-0.82, -0.45, 0.82, -0.45);
  }

  private static SymbolPen spall(SymbolPen pen) {
    return pen.shape(
        PAPER, -0.9, -0.2, -0.35, 0.3, -0.3, 0.85, 0.2, 0.5, 0.85, 0.6, 0.6, 0, 0.9, -0.6, 0.2,
        -0.5, -0.25, -0.9, -0.35, -0.4);
  }
}
