/**
 * Whether one person may lift an item onto a rig: the revised lifting equation of the US National
 * Institute for Occupational Safety and Health, and the advice drawn from it.
 *
 * <p>Units follow the equation's metric form: lengths in centimetres, angles in degrees, masses in
 * kilograms.
 */
@NullMarked
package rigmorrow.model.lifting;

import org.jspecify.annotations.NullMarked;
