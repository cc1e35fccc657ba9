package rigmorrow.app.runsheet;

import rigmorrow.model.shot.ShotJob;

/**
 * What a job is called on every sheet.
 *
 * @param gtin empty when not given
 */
record JobLabel(String id, String article, String gtin, String name, String sample) {

  static JobLabel of(ShotJob job) {
    String gtin = job.gtin();
    return new JobLabel(
        job.id(), job.article(), gtin == null ? "" : gtin, job.name(), job.sample());
  }
}
