/**
 * The floor's clock: turns seconds of the plan into the time on the floor's wall, whatever zone the
 * browser is in. Right on the days on which clocks change, because every instant has the offset that
 * the zone gives it.
 */

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const WEEKDAYS = ['Sun', 'Mon', 'Tue', 'Wed', 'Thu', 'Fri', 'Sat'];

const two = value => String(value).padStart(2, '0');

export class FloorClock {
  /**
   * @param {string} zone as in the IANA database
   * @param {number} originMillis the plan's second 0
   * @param {number} horizonSeconds
   * @param {number} days planned
   */
  constructor(zone, originMillis, horizonSeconds, days) {
    this.zone = zone;
    this.originMillis = originMillis;
    this.horizonSeconds = horizonSeconds;
    this.days = days;
    this.parts = new Intl.DateTimeFormat('en-GB', {
      timeZone: zone, hourCycle: 'h23', year: 'numeric', month: '2-digit', day: '2-digit',
      hour: '2-digit', minute: '2-digit', second: '2-digit',
    });
    /** @type {{from: number, minutes: number}[]} offsets and the instants from which they hold */
    this.from = originMillis - 48 * HOUR;
    this.to = originMillis + horizonSeconds * 1000 + 15 * 24 * HOUR;
    this.offsets = this.findOffsets(this.from, this.to);
  }

  /** Asks the zone every hour and halves down to the minute where the answer changes. */
  findOffsets(from, to) {
    let known = this.ask(from);
    const found = [{from: -Infinity, minutes: known}];
    for (let at = from + HOUR; at <= to; at += HOUR) {
      const minutes = this.ask(at);
      if (minutes !== known) {
        let low = at - HOUR;
        let high = at;
        while (high - low > MINUTE) {
          const middle = low + Math.floor((high - low) / 2 / MINUTE) * MINUTE;
          if (this.ask(middle) === known) {
            low = middle;
          } else {
            high = middle;
          }
        }
        found.push({from: high, minutes});
        known = minutes;
      }
    }
    return found;
  }

  ask(millis) {
    const p = Object.fromEntries(this.parts.formatToParts(millis).map(part => [part.type, Number(part.value)]));
    return Math.round((Date.UTC(p.year, p.month - 1, p.day, p.hour, p.minute, p.second)
      - Math.floor(millis / 1000) * 1000) / MINUTE);
  }

  /** Minutes that the floor is ahead of UTC at an instant. */
  offsetMinutes(millis) {
    if (millis < this.from || millis > this.to) {
      return this.ask(millis);
    }
    let minutes = this.offsets[0].minutes;
    for (const offset of this.offsets) {
      if (offset.from <= millis) {
        minutes = offset.minutes;
      }
    }
    return minutes;
  }

  millis(second) {
    return this.originMillis + second * 1000;
  }

  second(millis) {
    return Math.round((millis - this.originMillis) / 1000);
  }

  /** A date whose UTC fields read as the floor's wall clock. */
  wall(second) {
    const millis = this.millis(second);
    return new Date(millis + this.offsetMinutes(millis) * MINUTE);
  }

  /** "14:05"; in the hour that comes twice, with the offset. */
  clock(second) {
    const wall = this.wall(second);
    const text = `${two(wall.getUTCHours())}:${two(wall.getUTCMinutes())}`;
    return this.twice(second) ? `${text} (${offsetText(this.offsetMinutes(this.millis(second)))})` : text;
  }

  /** True where the wall clock shows the same time an hour apart. */
  twice(second) {
    const millis = this.millis(second);
    return this.offsets.some((offset, i) => {
      const gap = i === 0 ? 0 : this.offsets[i - 1].minutes - offset.minutes;
      return gap > 0 && Math.abs(millis - offset.from) <= gap * MINUTE
        && millis !== offset.from + gap * MINUTE;
    });
  }

  /** Clock with the day of the week, where more than one day is planned or it is another day; far off with the date. */
  at(second) {
    const day = this.dayOf(second);
    if (day < 0 || day > this.days + 5) {
      return `${this.day(second)} ${this.clock(second)}`;
    }
    const other = this.days > 1 || day !== 0;
    return other ? `${WEEKDAYS[this.wall(second).getUTCDay()]} ${this.clock(second)}` : this.clock(second);
  }

  /** From and to; the day stands only once. */
  span(start, end) {
    const sameDay = this.wall(start).getUTCDate() === this.wall(end).getUTCDate();
    return `${this.at(start)}–${sameDay ? this.clock(end) : this.at(end)}`;
  }

  /** "Wed 18 March" of a second. */
  day(second) {
    const wall = this.wall(second);
    const month = wall.toLocaleString('en-GB', {month: 'short', timeZone: 'UTC'});
    return `${WEEKDAYS[wall.getUTCDay()]} ${wall.getUTCDate()} ${month}`;
  }

  /** Floor time as a form field has it: 2026-03-18T14:05. */
  field(second) {
    return this.wall(second).toISOString().slice(0, 16);
  }

  /** Which planned day a second is of, 0 for the first; the midnight that ends a day is still of it. */
  dayOf(second) {
    const first = this.wall(0);
    const wall = this.wall(second > 0 ? second - 1 : second);
    return Math.round((Date.UTC(wall.getUTCFullYear(), wall.getUTCMonth(), wall.getUTCDate())
      - Date.UTC(first.getUTCFullYear(), first.getUTCMonth(), first.getUTCDate())) / (24 * HOUR));
  }

  /** Seconds at which the planned days begin, and the horizon last. */
  dayStarts() {
    const first = this.wall(0);
    const starts = [];
    for (let day = 0; day < this.days; day++) {
      const wall = Date.UTC(first.getUTCFullYear(), first.getUTCMonth(), first.getUTCDate() + day);
      const guess = wall - this.offsetMinutes(wall) * MINUTE;
      starts.push(this.second(wall - this.offsetMinutes(guess) * MINUTE));
    }
    return [...starts, this.horizonSeconds];
  }

  /** The zone with its offset on the planned days, and when clocks change on one of them. */
  zoneSentence() {
    const end = this.millis(this.horizonSeconds);
    const first = offsetText(this.offsetMinutes(this.originMillis));
    const changes = this.offsets.filter(offset => offset.from > this.originMillis && offset.from < end);
    const then = changes.map(offset =>
      `, from ${this.changeText(offset)} ${offsetText(offset.minutes)}`).join('');
    return `${this.zone}, ${first}${then}`;
  }

  changeText(offset) {
    const second = this.second(offset.from);
    const wall = this.wall(second);
    const text = `${two(wall.getUTCHours())}:${two(wall.getUTCMinutes())}`;
    return this.days > 1 ? `${WEEKDAYS[wall.getUTCDay()]} ${text}` : text;
  }
}

/** "UTC+01:00" of minutes. */
export function offsetText(minutes) {
  const size = Math.abs(minutes);
  return `UTC${minutes < 0 ? '−' : '+'}${two(Math.floor(size / 60))}:${two(size % 60)}`;
}
