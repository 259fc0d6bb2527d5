package slabwright.inlay.artwork.picture;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.ints.IntList;

/**
 * Walks every border between two colours once. Where two colours meet like the fields of a
 * chessboard, the one that holds more of the four pixels is taken as joined.
 */
final class BoundaryTracer {
  private static final int CORNERS = 4;

  private final LabelMap map;
  private final Pixels pixels;
  private final byte[] walked;
  private final int wide;
  private final List<BoundaryChain> chains = new ArrayList<>();

  private BoundaryTracer(LabelMap map, Pixels pixels) {
    this.map = map;
    this.pixels = pixels;
    this.wide = map.width() + 1;
    this.walked = new byte[wide * (map.height() + 1)];
  }

  static List<BoundaryChain> chains(LabelMap map, Pixels pixels) {
    BoundaryTracer tracer = new BoundaryTracer(map, pixels);
    tracer.walkAll(true);
    tracer.walkAll(false);
    return tracer.chains;
  }

  /** All chains that start at a meeting of three, or all that are left. */
  private void walkAll(boolean fromMeetings) {
    for (int y = 0; y <= map.height(); y++) {
      for (int x = 0; x < wide; x++) {
        if (fromMeetings == isMeeting(x, y)) {
          for (int d = 0; d < CORNERS; d++) {
            if (isOpen(x, y, d)) {
              walk(x, y, d);
            }
          }
        }
      }
    }
  }

  private boolean isOpen(int x, int y, int d) {
    int u = x + PixelEdge.dx(d);
    int v = y + PixelEdge.dy(d);
    return u >= 0
        && v >= 0
        && u < wide
        && v <= map.height()
        && PixelEdge.parts(map, x, y, d)
        && (walked[y * wide + x] >> d & 1) == 0;
  }

  private void walk(int x0, int y0, int first) {
    IntList xs = new IntList();
    IntList ys = new IntList();
    int left = PixelEdge.onLeft(map, x0, y0, first);
    int right = PixelEdge.onRight(map, x0, y0, first);
    int x = x0;
    int y = y0;
    int d = first;
    xs.add(x);
    ys.add(y);
    boolean meeting;
    do {
      walked[y * wide + x] |= (byte) (1 << d);
      x += PixelEdge.dx(d);
      y += PixelEdge.dy(d);
      walked[y * wide + x] |= (byte) (1 << PixelEdge.back(d));
      xs.add(x);
      ys.add(y);
      meeting = isMeeting(x, y);
      d = meeting ? d : next(x, y, d);
    } while (!meeting && (x != x0 || y != y0 || d != first));
    chains.add(new BoundaryChain(xs.toArray(), ys.toArray(), left, right, !meeting));
  }

  private int next(int x, int y, int d) {
    if (isChessboard(x, y)) {
      boolean straight = d == PixelEdge.RIGHT || d == PixelEdge.LEFT;
      boolean turnsLeft = isOtherDiagonalJoined(x, y) == straight;
      return (d + (turnsLeft ? 3 : 1)) % CORNERS;
    }
    for (int turn : new int[] {0, 1, 3}) {
      if (PixelEdge.parts(map, x, y, (d + turn) % CORNERS)) {
        return (d + turn) % CORNERS;
      }
    }
    throw new IllegalStateException("a border ends nowhere");
  }

  private boolean isMeeting(int x, int y) {
    int degree = 0;
    for (int d = 0; d < CORNERS; d++) {
      degree += PixelEdge.parts(map, x, y, d) ? 1 : 0;
    }
    return degree > 2 && !isChessboard(x, y);
  }

  private boolean isChessboard(int x, int y) {
    int a = map.at(x - 1, y - 1);
    int b = map.at(x, y - 1);
    return a != b
        && a == map.at(x, y)
        && b == map.at(x - 1, y)
        && a != LabelMap.OUTSIDE
        && b != LabelMap.OUTSIDE;
  }

  /** Whether the pixels at the top right and bottom left belong together. */
  private boolean isOtherDiagonalJoined(int x, int y) {
    int a = map.colour(map.at(x - 1, y - 1));
    int b = map.colour(map.at(x, y - 1));
    double sum = 0;
    for (int v = y - 1; v <= y; v++) {
      for (int u = x - 1; u <= x; u++) {
        sum += PixelColour.share(pixels.at(u, v), a, b);
      }
    }
    return sum >= 2;
  }
}
