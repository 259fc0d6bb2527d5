/**
 * How panels find their place on the floor: tape lengths from known corners, checks, what lies
 * under the inlay and whether it reads the way people come in.
 *
 * <p>Frame: the site's, millimetres, x right, y up.
 */
package slabwright.inlay.settingout;
