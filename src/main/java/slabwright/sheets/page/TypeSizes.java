package slabwright.sheets.page;

import slabwright.drawing.Palette;
import slabwright.drawing.Symbol;
import slabwright.drawing.TextStyle;

/**
 * The sizes of words on a page. Single sheets scale with their paper; a packet has the same four
 * sizes on any paper, and what does not fit takes another page.
 *
 * @param k 1 on Tabloid; smaller on small paper, larger on large, so that a wall print reads from a
 *     step away. It scales distances too
 * @param packet whether the four sizes of packets hold
 * @param lead from baseline to baseline of running words, mm at k = 1
 */
public record TypeSizes(double k, boolean packet, double lead) {
  private static final double POINT = 25.4 / 72;

  /** Size of running words in a packet, mm: 11 pt. */
  public static final double PACKET_BODY = 11 * POINT;

  private static final double PACKET_TITLE = 20 * POINT;
  private static final double PACKET_HEADING = 14 * POINT;
  private static final double PACKET_SMALL = 10 * POINT;
  private static final double BODY = 3.1;

  /** From baseline to baseline of words of the size 1, mm. */
  private static final double LEADING = 4.7;

  private static final double CLOSE = 3.85;
  private static final double CLOSER = 4.3;

  public TypeSizes(double k, boolean packet) {
    this(k, packet, LEADING);
  }

  static TypeSizes of(PaperSize paper) {
    double k = paper.width() / PaperSize.TABLOID.width();
    return new TypeSizes(Math.max(0.82, Math.min(1.35, k)), false);
  }

  /** The four sizes of a packet: title 20 pt, heading and dimension 14, words 11, small 10. */
  public static TypeSizes ofPacket() {
    return new TypeSizes(PACKET_BODY / BODY, true);
  }

  /** The same four sizes with running words in the smallest of them, 10 pt, and lines closer. */
  TypeSizes dense() {
    return packet ? new TypeSizes(PACKET_SMALL / BODY, true, CLOSE) : this;
  }

  /** The same sizes with lines a little closer. */
  TypeSizes closer() {
    return packet ? new TypeSizes(k, true, CLOSER) : this;
  }

  TypeSizes tighter(double by) {
    return packet ? this : new TypeSizes(k * by, false);
  }

  public TextStyle title() {
    return TextStyle.bold(packet ? PACKET_TITLE : 5.2 * k);
  }

  public TextStyle heading() {
    return TextStyle.bold(packet ? PACKET_HEADING : 4.2 * k);
  }

  /** Between heading and words: heads of boxes and charts. */
  public TextStyle subheading() {
    return TextStyle.bold(packet ? PACKET_HEADING : 3.6 * k);
  }

  public TextStyle body() {
    return TextStyle.plain(BODY * k);
  }

  public TextStyle strong() {
    return TextStyle.bold(BODY * k);
  }

  /** A length on a plan: what crews read from a step away. */
  public TextStyle dimension() {
    return packet ? heading() : strong();
  }

  public TextStyle small() {
    return TextStyle.plain(packet ? PACKET_SMALL : 2.6 * k).in(Palette.SOFT);
  }

  /** A name on a plan. */
  public TextStyle label() {
    return TextStyle.bold(packet ? PACKET_SMALL : 2.8 * k);
  }

  /** From baseline to baseline of running words. */
  public double leading() {
    return lead * k;
  }

  /**
   * How wide a ring about a number is, mm; in a packet its number is no smaller than other words.
   */
  public double ring(String words, double width) {
    return packet ? Symbol.ringFor(words, PACKET_SMALL) : width * k;
  }
}
