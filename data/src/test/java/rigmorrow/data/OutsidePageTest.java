package rigmorrow.data;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import rigmorrow.data.csv.CsvChecks;
import rigmorrow.model.outside.OutsidePage;

class OutsidePageTest {
  @Test
  void listsWhatTheChecksGiveToday() throws IOException {
    OutsidePage.holdsSection("data", CsvChecks.all());
  }
}
