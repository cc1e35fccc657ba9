package rigmorrow.app.board.view;

import org.jspecify.annotations.Nullable;

/**
 * What a plan comes to, with the words the command line uses.
 *
 * @param hard what breaks hard rules, mostly seconds; 0 for a workable plan
 * @param promises jobs with a promise
 * @param promisesKept planned and in time
 * @param finishedAt second at which the last job ends
 * @param bound what no plan can be below, in words; null when nobody worked it out
 * @param boundPoints lower bound on soft points; null with bound
 * @param method how the plan was made, in words
 */
public record FiguresView(
    long hard,
    long leftOutPoints,
    long latenessPoints,
    long changeoverPoints,
    long finishingPoints,
    long softPoints,
    int planned,
    int leftOut,
    int lateJobs,
    long lateSeconds,
    int promises,
    int promisesKept,
    long changeoverSeconds,
    int finishedAt,
    @Nullable String bound,
    @Nullable Long boundPoints,
    String method) {}
