package rigmorrow.app.runsheet;

import java.util.List;

/** Everything that the template prints. */
record SheetDocument(FrontPage front, List<RigSheet> rigs, List<OperatorSheet> operators) {}
