package rigmorrow.app.labels;

import java.util.List;

/**
 * What is printed on a label, line by line.
 *
 * @param name of the product, shortened where it is long
 * @param article number, whole
 * @param articlePt size of its letters
 * @param jobs which jobs the sample is for, and which sample it is
 * @param encoded what the bar code says, for a reader without a scanner; empty where there is no
 *     room for it and the article number says the same
 */
record Label(
    List<String> name,
    List<String> article,
    double articlePt,
    List<String> jobs,
    Symbol symbol,
    List<String> encoded) {}
