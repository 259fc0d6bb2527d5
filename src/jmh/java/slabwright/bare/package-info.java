/** {@link slabwright.bare.BareProgram}: the yardstick of the whole-process figures. */
package slabwright.bare;
