/** What any shot list file says of a job, and the checks that hold for every format. */
@NullMarked
package rigmorrow.data.shot;

import org.jspecify.annotations.NullMarked;
