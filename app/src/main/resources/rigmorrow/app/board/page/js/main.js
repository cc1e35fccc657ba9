/** Starts the page: every part is wired once, then the board is asked for. */

import {tell} from './base/bus.js';
import {startJobPanel} from './ask/job-panel.js';
import {startLists} from './ask/lists.js';
import {startSearch} from './ask/search.js';
import './chart/chart.js';
import {startCrewLoad} from './chart/crew-load.js';
import {startFocus} from './chart/focus.js';
import {startGhosts} from './chart/ghosts.js';
import {startPeek} from './chart/peek.js';
import {startSelection} from './chart/selection.js';
import {startZoom} from './chart/zoom.js';
import {listen} from './plan/changes.js';
import {load} from './plan/desk.js';
import {startDrag} from './touch/drag.js';
import {startKeys} from './touch/keys.js';
import {startMoving} from './touch/moving.js';
import {startProposalPanel} from './touch/proposal-panel.js';
import {startUndo} from './touch/undo.js';
import {startDropping} from './views/dropping.js';
import {startFigures} from './views/figures.js';
import {startFind} from './views/find.js';
import {startFit} from './views/fit.js';
import {startHandout} from './views/handout.js';
import {startHelp} from './views/help.js';
import {startIntake} from './views/intake.js';
import {startJobs} from './views/jobs.js';
import {startLegend} from './views/legend.js';
import {startPrint} from './views/print.js';
import {startStale} from './views/stale.js';
import {startTabs} from './views/tabs.js';
import {startTheme} from './views/theme.js';
import {startViews} from './views/views.js';
import {startWhatIf} from './whatif/whatif.js';

startTheme();
startStale();
startFigures();
startUndo();
startLegend();
startTabs();
startDrag();
startSelection();
startFocus();
startGhosts();
startPeek();
startCrewLoad();
startZoom();
startProposalPanel();
startMoving();
startKeys();
startJobPanel();
startLists();
startSearch();
startFind();
startJobs();
startFit();
startHandout();
startIntake();
startWhatIf();
startDropping();
startHelp();
startPrint();
startViews();
addEventListener('unhandledrejection', event => tell('failure', event.reason));

const AGAIN_MILLIS = 2000;

/** Asks until the server answers; it may be started after the page. */
function begin() {
  load().then(() => {
    tell('line', true);
    listen();
  }, failure => {
    tell('failure', failure);
    if (failure.status === 0) {
      tell('line', false);
      setTimeout(begin, AGAIN_MILLIS);
    }
  });
}

begin();
