/**
 * What is handed over: cost with every line traceable, scope with declined advice, placement
 * approval, reopening and care, the load list, the walkthrough's questions; and what really
 * happened written back to the shop book. All values, from a work plan.
 */
package slabwright.work.job;
