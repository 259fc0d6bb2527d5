package slabwright.site;

/** What the floor ends at along one piece of the outline. Doorways are laid over pieces. */
public enum PieceKind {
  WALL,
  OPEN_EDGE,
  KERB
}
