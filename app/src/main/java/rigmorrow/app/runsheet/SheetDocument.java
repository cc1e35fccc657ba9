package rigmorrow.app.runsheet;

import java.util.List;
import org.jspecify.annotations.Nullable;
import rigmorrow.app.print.Paper;
import rigmorrow.app.runsheet.text.PlanStamp;

/**
 * Everything that the template prints.
 *
 * @param heading what a sheet says at its head
 * @param front null where only some sheets were asked for
 * @param paper to print on
 * @param forPdf true for the page that becomes a PDF file, false for one that a browser shows
 */
record SheetDocument(
    Heading heading,
    @Nullable FrontPage front,
    List<RigSheet> rigs,
    List<OperatorSheet> operators,
    Paper paper,
    boolean forPdf) {

  /**
   * What stands at the head of every sheet.
   *
   * @param floor name of the floor
   * @param date the planned days in words
   * @param stamp which plan it is
   * @param warning that the plan breaks rules and is not to be worked from; empty when it does not
   */
  record Heading(String floor, String date, PlanStamp stamp, String warning) {}
}
