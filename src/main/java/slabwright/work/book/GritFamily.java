package slabwright.work.book;

/** What binds the diamonds of a grinding tool. Only metal tools come in bonds here. */
public enum GritFamily {
  METAL,
  HYBRID,
  RESIN
}
