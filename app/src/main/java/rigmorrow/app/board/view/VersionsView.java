package rigmorrow.app.board.view;

import java.util.List;

/** Plans that were put by, oldest first. */
public record VersionsView(List<VersionView> versions) {}
