package rigmorrow.app.labels;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigmorrow.app.files.RefusedException;
import rigmorrow.app.print.PdfFile;
import rigmorrow.app.print.PdfPages;
import rigmorrow.app.print.PrintableText;
import rigmorrow.app.runsheet.text.PlanStamp;
import rigmorrow.data.problem.InputProblem;
import rigmorrow.model.shot.ShotList;

/**
 * Writes a sheet of labels, one for each sample of a shot list. The article number is never
 * shortened; a bar code keeps its quiet zones and a width that can be read.
 */
public final class Labels {
  private static final TemplateEngine TEMPLATES =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, "rigmorrow.app");

  private final LabelPages pages;

  /**
   * @param list whose samples to label
   * @param floor name of the floor
   * @param stamp which plan they are of
   * @param grid how the labels lie
   * @param larger how to get larger ones, for whom a label is too small
   * @throws RefusedException with every label that does not fit
   */
  public Labels(ShotList list, String floor, PlanStamp stamp, LabelGrid grid, String larger) {
    List<Label> labels = new ArrayList<>();
    List<InputProblem> problems = new ArrayList<>();
    LabelMaker maker = new LabelMaker(grid);
    for (Sample sample : Sample.of(list)) {
      Optional<Label> label = maker.of(sample);
      label.ifPresentOrElse(labels::add, () -> problems.add(tooSmall(sample, larger)));
    }
    if (list.jobs().isEmpty()) {
      problems.add(new InputProblem("", "shot list", "jobs", "none", "at least one job"));
    }
    if (!problems.isEmpty()) {
      throw refused(problems);
    }
    this.pages =
        new LabelPages(
            "Labels: " + floor + ", " + list.date(),
            stamp,
            grid,
            parts(parts(labels, grid.columns()), grid.rows()),
            false);
  }

  private static InputProblem tooSmall(Sample sample, String larger) {
    return new InputProblem(
        "",
        "job " + sample.jobs().get(0),
        sample.gtin() == null ? "article" : "gtin",
        sample.gtin() == null ? sample.article() : sample.gtin(),
        larger + ": it does not fit the label with a bar code that can be read");
  }

  private static RefusedException refused(List<InputProblem> problems) {
    List<String> lines = new ArrayList<>();
    lines.add("Nothing was written:");
    problems.forEach(
        problem ->
            lines.add(
                "  "
                    + problem.where()
                    + ", "
                    + problem.field()
                    + ": '"
                    + problem.value()
                    + "'; accepted: "
                    + problem.accepted()));
    return new RefusedException(String.join("\n", lines), problems);
  }

  private static <T> List<List<T>> parts(List<T> all, int size) {
    List<List<T>> parts = new ArrayList<>();
    for (int from = 0; from < all.size(); from += size) {
      parts.add(all.subList(from, Math.min(all.size(), from + size)));
    }
    return parts;
  }

  /** One HTML file that needs neither network nor script; encode it as UTF-8. */
  public String html() {
    return rendered(pages);
  }

  /** One PDF file. */
  public PdfFile pdf() {
    return PdfPages.of(rendered(pages.asPdf()));
  }

  private static String rendered(LabelPages pages) {
    StringOutput output = new StringOutput();
    TEMPLATES.render("labels/labels.jte", pages, output);
    return PrintableText.forXml(output.toString());
  }
}
