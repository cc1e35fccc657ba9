/**
 * Pure functions of how things move on a rig: moves of plate and arm, what a free-standing item
 * bears, how a hanging item settles, and what blurs a picture.
 *
 * <p>Units: lengths in millimetres, angles in radians, times in seconds, forces felt by an item as
 * accelerations in metres per second squared. {@link rigmorrow.model.motion.DoubleSProfile} and
 * {@link rigmorrow.model.motion.TrapezoidalProfile} work in any one unit of position, such as
 * radians for a plate or millimetres for an arm: speed is that unit per second, and so on.
 */
@NullMarked
package rigmorrow.model.motion;

import org.jspecify.annotations.NullMarked;
