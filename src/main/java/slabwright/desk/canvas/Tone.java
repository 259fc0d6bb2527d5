package slabwright.desk.canvas;

import javafx.scene.paint.Color;
import slabwright.drawing.Colour;

/** How ink colours, made for white paper, are shown on the screen. */
public enum Tone {
  /** As printed. */
  LIGHT {
    @Override
    public Color of(Colour c) {
      return Color.rgb(c.red(), c.green(), c.blue());
    }
  },
  /** Light and dark exchanged, hue kept, for a dark table. */
  DARK {
    @Override
    public Color of(Colour c) {
      Color plain = LIGHT.of(c);
      double low = Math.min(plain.getRed(), Math.min(plain.getGreen(), plain.getBlue()));
      double high = Math.max(plain.getRed(), Math.max(plain.getGreen(), plain.getBlue()));
      double turned = 1 - (low + high) / 2;
      double lightness = 0.17 + turned * 0.76;
      double span = 1 - Math.abs(low + high - 1);
      double saturation = span < 1e-6 ? 0 : (high - low) / span;
      return saturation < 0.05
          ? hsl(200, lightness > 0.6 ? 0.04 : 0.11, lightness)
          : hsl(plain.getHue(), Math.min(0.85, saturation), lightness);
    }
  };

  public abstract Color of(Colour c);

  private static Color hsl(double hue, double saturation, double lightness) {
    double c = (1 - Math.abs(2 * lightness - 1)) * saturation;
    double value = lightness + c / 2;
    return Color.hsb(hue, value == 0 ? 0 : Math.min(1, c / value), Math.min(1, value));
  }
}
