package slabwright.desk;

import slabwright.desk.canvas.SlabView;
import slabwright.desk.shell.EntryBar;

/** What actions ask of the screen, which is put together after them. */
interface SlabAccess {
  SlabView slab();

  EntryBar entry();
}
