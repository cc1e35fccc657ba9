/** The board's web server: who may ask, from where, and what is sent. */
@NullMarked
package rigmorrow.app.board.server;

import org.jspecify.annotations.NullMarked;
