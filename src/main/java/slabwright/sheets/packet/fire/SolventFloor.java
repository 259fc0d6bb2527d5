package slabwright.sheets.packet.fire;

import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;

/** A floor with solvent on it. */
record SolventFloor(AreaWorkPlan work, AirPlan air) {}
