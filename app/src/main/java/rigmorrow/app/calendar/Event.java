package rigmorrow.app.calendar;

import java.time.Instant;

/**
 * An entry of a calendar.
 *
 * @param uid the same for the same piece of work, so that a later plan updates an earlier one
 * @param start first instant
 * @param end exclusive, not before the start
 * @param summary title
 * @param location the rig
 * @param description what to do and what to mind, line by line
 */
record Event(
    String uid, Instant start, Instant end, String summary, String location, String description) {}
