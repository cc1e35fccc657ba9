/** Starts the page. */

import './chart/chart.js';
import {load} from './plan/desk.js';
import {tell} from './base/bus.js';
load().then(() => tell('view', 'plan'));
