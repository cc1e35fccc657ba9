/** An invented studio and a seeded generator of shot lists for it. Nothing in it is real. */
@NullMarked
package rigmorrow.data.demo;

import org.jspecify.annotations.NullMarked;
