/** The best plan over time, as a line that goes down. */

const {uPlot} = globalThis;

/** @type {any} */
let plot = null;
let drawn = '';

const css = name => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

/** A colour that canvas understands: light-dark() is worked out by an element. */
function colour(name) {
  const probe = document.createElement('span');
  probe.style.color = `var(${name})`;
  document.body.append(probe);
  const value = getComputedStyle(probe).color;
  probe.remove();
  return value || css(name);
}

/**
 * Points of plans that are workable and leave out least; the others would need another scale.
 *
 * @param {any[]} course SearchView's moments
 */
function comparable(course) {
  const last = course.at(-1);
  return course.filter(moment => moment.hard === last.hard && moment.leftOutPoints === last.leftOutPoints);
}

/**
 * @param {HTMLElement} holder
 * @param {any[]} course moments, oldest first
 * @param {number | null} until milliseconds the search has run so far; null when it is over
 */
export function courseChart(holder, course, until) {
  const theme = document.documentElement.dataset.theme ?? '';
  const key = `${course.length} ${course.at(-1)?.millis} ${until} ${holder.clientWidth} ${theme}`;
  if (key === drawn) {
    return;
  }
  drawn = key;
  plot?.destroy();
  plot = null;
  if (course.length === 0 || holder.clientWidth === 0) {
    holder.removeAttribute('role');
    holder.removeAttribute('aria-label');
    drawn = '';
    return;
  }
  const moments = comparable(course);
  const times = moments.map(moment => moment.millis / 1000);
  const points = moments.map(moment => moment.softPoints);
  if (until !== null && until / 1000 > times.at(-1)) {
    times.push(until / 1000);
    points.push(points.at(-1));
  } else if (times.length === 1) {
    times.push(times[0] + 0.1);
    points.push(points[0]);
  }
  // After a bad start the rest would lie flat on the ground: then each step of the scale is ten times the last.
  const [most, least] = [Math.max(...points), Math.min(...points)];
  const steep = least > 0 && most > 4 * least;
  const ink = colour('--ink');
  const grid = {stroke: colour('--line'), width: 1};
  const font = '11px system-ui, sans-serif';
  plot = new uPlot({
    width: holder.clientWidth, height: 170, legend: {show: false}, cursor: {show: false},
    scales: {x: {time: false}, y: steep ? {distr: 3, range: [least * 0.9, most * 1.1]} : {}},
    series: [{}, {stroke: colour('--capture'), width: 2, fill: steep ? undefined : colour('--accent-wash'), paths: uPlot.paths.stepped({align: 1}), points: {show: false}}],
    axes: [
      {stroke: ink, grid, ticks: grid, font, size: 30, values: (self, splits) => splits.map(value => `${value} s`)},
      {stroke: ink, grid, ticks: grid, font, size: 58, values: (self, splits) => splits.map(value => value === null || (steep && !/^[125]0*$/.test(String(value))) ? '' : value.toLocaleString('en-GB'))},
    ],
  }, [times, points], holder);
  holder.setAttribute('role', 'img');
  holder.setAttribute('aria-label', `Points of the best plan over time: from ${points[0].toLocaleString('en-GB')} after ${times[0].toFixed(1)} s to ${points.at(-1)?.toLocaleString('en-GB')}. The same as a table below.`);
}
