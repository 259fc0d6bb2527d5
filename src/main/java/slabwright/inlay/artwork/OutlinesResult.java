package slabwright.inlay.artwork;

/** What reading a drawing's outlines gives: the outlines, or why there are none. */
public sealed interface OutlinesResult permits DrawnOutlines, ArtworkRefusal {}
