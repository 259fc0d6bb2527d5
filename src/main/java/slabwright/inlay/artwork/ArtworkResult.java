package slabwright.inlay.artwork;

/** What reading a graphic gives: the artwork, or why there is none. */
public sealed interface ArtworkResult permits Artwork, ArtworkRefusal {}
