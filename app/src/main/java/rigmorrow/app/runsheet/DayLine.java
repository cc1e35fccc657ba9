package rigmorrow.app.runsheet;

import org.jspecify.annotations.Nullable;

/**
 * One line of a day: something to do, or a remark such as a break or a gap.
 *
 * @param entry what to do; null for a remark
 * @param remark empty for something to do
 */
record DayLine<T>(@Nullable T entry, String remark) {}
