package slabwright.work.book;

/** What a product is laid with. */
public enum LayingTool {
  ROLLER,
  SPRAYER,
  BRUSH,
  PAD
}
