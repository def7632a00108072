'use strict';

// The look before anything is drawn: a white flash at night costs the eyes ten minutes.
try {
  const look = localStorage.getItem('spoolbook.look');
  if (look) { document.documentElement.dataset.look = look; }
} catch { /* A browser that keeps nothing has no look to keep. */ }

/** The page's few sums. A test holds each against the program's own. Lengths are frames on the strip. */
const Sums = {
  perFoot: [40, 1],
  metric: false,

  /** Frames up to a mark of feet: where a foot is no whole number of frames, it begins at its first whole frame. */
  footMark(feet) {
    const [n, d] = this.perFoot;
    return Number((BigInt(feet) * BigInt(n) + BigInt(d) - 1n) / BigInt(d));
  },

  /** Frames of `31+12`, `9.54m` or `1252fr`; null where it is no length, or its frames make a foot. */
  frames(text) {
    const feet = /^(\d{1,9})\+(\d{1,6})$/.exec(text || '');
    if (feet) {
      const frames = this.footMark(feet[1]) + Number(feet[2]);
      return frames < this.footMark(Number(feet[1]) + 1) ? frames : null;
    }
    const metres = /^(\d{1,9})(?:\.(\d{1,6}))?m$/.exec(text || '');
    if (metres) {
      const [n, d] = this.perFoot;
      const places = (metres[2] || '').length;
      const up = BigInt(metres[1] + (metres[2] || '')) * BigInt(n) * 10000n;
      const down = 10n ** BigInt(places) * 3048n * BigInt(d);
      return Number((2n * up + down) / (2n * down));
    }
    const frames = /^(\d{1,9})fr$/.exec(text || '');
    return frames ? Number(frames[1]) : null;
  },

  /** `31+12`. */
  feetAndFrames(frames) {
    const [n, d] = this.perFoot.map(BigInt);
    const of = BigInt(Math.abs(frames));
    const feet = of * d / n;
    const over = (of * d - feet * n) / d;
    return (frames < 0 ? '-' : '') + feet + '+' + String(over).padStart(2, '0');
  },

  /** `9.54`: metres by the trade's count, a half rounded up. */
  metres(frames) {
    const [n, d] = this.perFoot.map(BigInt);
    return this.decimal(BigInt(frames) * d * 3048n, n * 10000n, 2);
  },

  /** `17.3`: the seconds that frames run at a speed, which is [numerator, denominator]. */
  seconds(frames, speed) {
    return this.decimal(BigInt(frames) * BigInt(speed[1]), BigInt(speed[0]), 1);
  },

  /** A ratio with so many decimals, a half rounded away from zero. */
  decimal(up, down, places) {
    const scale = 10n ** BigInt(places);
    const digits = String((2n * (up < 0n ? -up : up) * scale + down) / (2n * down)).padStart(places + 1, '0');
    return (up < 0n ? '-' : '') + digits.slice(0, -places) + '.' + digits.slice(-places);
  },

  /** Where a roll is after an entry; `from` is where the entry's film starts. */
  after(at, entry) {
    const frames = key => this.frames(entry[key]);
    const next = { ...at, from: at.position };
    switch (entry.verb) {
      case 'take':
        next.position = Math.max(at.position, frames('to') + at.zero);
        next.speed = entry.speed || at.speed;
        next.spring = !entry.motor;
        next.driven = entry.wound ? 0 : at.driven + (next.spring ? this.within(at.position, next.position, at.length) : 0);
        break;
      case 'run-off':
        next.position = frames('to') + at.zero;
        next.driven = at.driven + (at.spring ? this.within(at.position, next.position, at.length) : 0);
        break;
      case 'wind':
        next.driven = 0;
        break;
      case 'rewind':
        next.position = frames('to') + at.zero;
        next.driven = 0;
        break;
      case 'reload': {
        const moved = frames('zeroMoved') || 0;
        next.position = entry.to ? frames('to') + at.zero + moved : at.position + (frames('lost') || 0);
        next.zero = at.zero + moved;
        next.body = entry.body || at.body;
        next.driven = 0;
        break;
      }
      default:
    }
    return next;
  },

  /** Frames of a stretch that are on a roll of this length. */
  within(from, to, length) {
    const end = length === null ? to : Math.min(to, length);
    return Math.max(0, end - Math.max(0, from));
  },

  /** Film that has not gone through yet; null where nobody knows how much was loaded. */
  filmLeft(at) {
    return at.length === null ? null : Math.max(0, at.length - at.position);
  },

  /** Film that the spring still drives; null for a body without one, and while a motor drives it. */
  windLeft(at, fullWind) {
    return fullWind === null || !at.spring ? null : Math.max(0, fullWind - at.driven);
  },
};

/** What is logged, and where it is kept. Each change is written before the screen answers. */
const Store = {
  state: null,
  device: null,
  failed: null,
  lost: false,

  key(name) { return 'spoolbook.' + name; },

  open(code) {
    this.code = code;
    const fresh = {
      v: 1, rev: 0, next: 1, entries: [], who: null, roll: null, screen: 'roll', back: null,
      take: null, edit: null, form: null, choose: null, opened: 0, handed: null,
    };
    const named = /^#([A-Z][A-Z0-9])$/.exec(location.hash);
    try {
      this.device = localStorage.getItem(this.key('device'));
      this.lost = !this.device && named !== null;
      if (!this.device) {
        this.device = named ? named[1] : this.draw();
        localStorage.setItem(this.key('device'), this.device);
      }
      const kept = localStorage.getItem(this.key(code + '.' + this.device));
      this.state = { ...fresh, ...(kept ? JSON.parse(kept) : {}) };
      this.lost = this.lost || (!kept && named !== null && named[1] === this.device);
    } catch (broken) {
      this.failed = broken;
      this.device = this.device || (named ? named[1] : this.draw());
      this.state = this.state || fresh;
    }
    this.state.opened++;
    this.write();
    // A browser that keeps nothing still keeps the address over a reload: then the loss is noticed.
    location.replace('#' + this.device);
  },

  /** Two characters that nobody mistakes for others. */
  draw() {
    const [a, b] = crypto.getRandomValues(new Uint8Array(2));
    return 'ABCDEFGHJKLMNPQRSTUVWXYZ'[a % 24] + '23456789ABCDEFGHJKLMNPQRSTUVWXYZ'[b % 32];
  },

  redraw() {
    const before = this.device;
    do { this.device = this.draw(); } while (this.device === before);
    try { localStorage.setItem(this.key('device'), this.device); } catch (broken) { this.failed = broken; }
    location.replace('#' + this.device);
  },

  /** Writes all of it, and reads it back: some browsers take a text and keep none. */
  write() {
    const key = this.key(this.code + '.' + this.device);
    this.state.rev++;
    try {
      const text = JSON.stringify(this.state);
      localStorage.setItem(key, text);
      this.failed = localStorage.getItem(key) === text ? null : new Error('not kept');
    } catch (broken) {
      this.failed = broken;
    }
  },

  /** Another window of this page wrote: what it logged is taken over, so that no number is given twice. */
  takeOver(text) {
    const other = JSON.parse(text);
    if (other.rev > this.state.rev || other.next > this.state.next || other.entries.length > this.state.entries.length) {
      this.state = { ...other, screen: this.state.screen, choose: this.state.choose, back: this.state.back, form: this.state.form };
    }
  },
};

/** Lines of the short form, in English whatever the page speaks. */
const Lines = {
  word(value) { return /^[^\s",;:]+$/.test(value) ? value : '"' + String(value).replace(/"/g, "'") + '"'; },

  slate(entry) {
    return /^\d+$/.test(entry.scene) && /^[A-Z]+$/i.test(entry.shot || '')
      ? entry.scene + entry.shot + '/' + entry.number
      : 'take scene ' + this.word(entry.scene) + (entry.shot ? ' shot ' + this.word(entry.shot) : '') + ' take ' + entry.number;
  },

  of(entry, device, date) {
    const number = '#' + device + '-' + entry.n + ' ';
    if (entry.struck) { return number + 'strike'; }
    const said = this[entry.verb.replace('-', '')](entry, date).filter(Boolean).join(' ');
    const remark = (entry.remark || '').trim().replace(/\s+/g, ' ');
    const roll = entry.verb === 'load' ? '' : this.word(entry.roll) + ': ';
    return number + roll + said + (remark && entry.verb !== 'note' ? ' : ' + remark : '');
  },

  key(name, value) { return value === undefined || value === null || value === '' ? '' : name + ' ' + this.word(value); },

  take(e, date) {
    return [
      this.slate(e), 'to ' + e.to, this.key('speed', e.speed), this.key('lens', e.lens || '-'), this.key('stop', e.stop || '-'),
      this.key('reading', e.reading), e.reading && this.key('meter', e.meter),
      Page.data.filters.length ? 'filter ' + (e.filter && e.filter.length ? e.filter.map(f => this.word(f)).join(',') : '-') : '',
      this.key('shutter', e.shutter), this.key('focus', e.focus || '-'), e.mark, this.key('fade-in', e.fadeIn), this.key('fade-out', e.fadeOut),
      e.sync && 'sync', e.mute && 'mute', this.key('motor', e.motor), e.wound && 'wound', this.key('by', e.by), date, 'at ' + e.at,
    ];
  },

  wind(e, date) { return ['wind', date, 'at ' + e.at]; },

  rewind(e, date) {
    return ['rewind to ' + e.to, this.key('shutter', e.shutter), this.key('in', e.in), e.zeroed && 'counter-zeroed', date, 'at ' + e.at];
  },

  runoff(e, date) { return ['run-off to ' + e.to, this.key('lens', e.lens), date, 'at ' + e.at]; },

  fog(e, date) { return ['fog before ' + e.before, 'after ' + e.after, date, 'at ' + e.at]; },

  reload(e) {
    return [
      'reload', e.at, this.key('by', e.by), this.key('body', e.body), this.key('light', e.light), this.key('zero-moved', e.zeroMoved),
      this.key('lost', e.lost), this.key('to', e.to),
    ];
  },

  note(e, date) { return ['note', date, 'at ' + e.at, ': ' + (e.remark || '').trim().replace(/\s+/g, ' ')]; },

  load(e) {
    const stock = e.shortEndOf ? 'short-end-of ' + this.word(e.shortEndOf)
      : /^[\w.-]+$/.test(e.lot || '') && e.unit ? e.lot + '/' + e.unit
        : [this.key('lot', e.lot), this.key('unit', e.unit)].filter(Boolean).join(' ');
    const points = Page.data.ready.map(p => p.key);
    const missing = points.filter(p => !(e.ready || []).includes(p));
    return [
      'load', this.word(e.roll), stock, this.key('length', e.length), this.key('body', e.body), this.key('by', e.by), e.at,
      this.key('light', e.light), this.key('head', e.head),
      missing.length === 0 ? 'ready all' : missing.length === points.length ? 'ready none' : 'ready all except ' + missing.join(','),
      this.key('speed-after', e.speedAfter),
    ];
  },

  unload(e) {
    return [
      'unload', e.at, this.key('by', e.by), this.key('light', e.light), this.key('tail', e.tail), this.key('left', e.left),
      this.key('short-end', e.shortEnd),
    ];
  },

  /** All that was logged, each date on a line of its own before its first. */
  all(entries, device) {
    const lines = [];
    const days = new Map(Page.data.open.map(open => [open.roll, { day: open.at.day, latest: open.at.latest }]));
    let date = '';
    for (const entry of entries) {
      if (entry.day !== date) { lines.push('day ' + (date = entry.day)); }
      lines.push(this.of(entry, device, entry.struck ? '' : this.opens(entry, days)));
    }
    return lines.map(line => line + '\n').join('');
  },

  /** What an entry says of its date where it opens a new shooting day of its roll. The record goes on with the day before
      unless it is said; the night of a day belongs to that day. */
  opens(entry, days) {
    const roll = days.get(entry.roll);
    const known = !roll || entry.verb === 'load';
    const sameDay = !known && (entry.day === roll.day || this.isNightOf(roll, entry));
    const at = entry.day + 'T' + entry.at;
    days.set(entry.roll, { day: sameDay ? roll.day : entry.day, latest: sameDay && roll.latest > at ? roll.latest : at });
    const dated = ['load', 'reload', 'unload'].includes(entry.verb);
    return known || sameDay || dated ? '' : (entry.verb === 'take' ? 'on ' : 'day ') + entry.day;
  },

  /** Hours before six after a later one, and hours within three of the latest of that night. */
  isNightOf(roll, entry) {
    const next = new Date(Date.parse(roll.day + 'T00:00Z') + 86400000).toISOString().slice(0, 10);
    const minutes = time => Number(time.slice(0, 2)) * 60 + Number(time.slice(3, 5));
    const latest = roll.latest || '';
    return entry.day === next
      && (entry.at < '06:00' && latest > roll.day + 'T' + entry.at
        || latest.startsWith(next) && Math.abs(minutes(entry.at) - minutes(latest.slice(11))) <= 180);
  },
};

/** The rolls of this page: those that the production has in a camera, and those loaded here. */
const Rolls = {
  all(upTo = Infinity) {
    const rolls = new Map();
    for (const open of Page.data.open) {
      rolls.set(open.roll, { name: open.roll, by: open.by, open: true, at: { ...open.at }, moments: [], last: open.last });
    }
    for (const entry of Store.state.entries) {
      if (entry.struck || entry.n >= upTo) { continue; }
      if (entry.verb === 'load') {
        rolls.set(entry.roll, { name: entry.roll, by: entry.by, open: true, load: entry, at: this.loaded(entry), moments: [] });
      }
      const roll = rolls.get(entry.roll);
      if (!roll) { continue; }
      if (entry.verb === 'unload') { roll.open = false; roll.unload = entry; continue; }
      if (entry.verb !== 'load') {
        roll.at = Sums.after(roll.at, entry);
        if (entry.verb === 'reload' && entry.by) { roll.by = entry.by; }
        roll.moments.push({ entry, from: roll.at.from, to: roll.at.position });
      }
    }
    return rolls;
  },

  loaded(entry) {
    const frames = entry.length ? Sums.frames(entry.length) : this.stock(entry);
    return {
      position: Sums.frames(entry.head) || 0, zero: 0, driven: 0, spring: true, speed: entry.speedAfter || '24',
      body: entry.body || null, length: frames, from: 0,
    };
  },

  stock(entry) {
    const can = Page.data.stock.find(s => s.lot === entry.lot && (!entry.unit || s.unit === entry.unit) && !entry.shortEndOf
      || entry.shortEndOf && this.isEnd(s, entry));
    return can ? can.frames : null;
  },

  /** Whether a can is the short end that an entry loaded. A telephone may hold entries from before pieces had names. */
  isEnd(can, entry) { return can.shortEndOf === entry.shortEndOf && (!entry.piece || can.name === entry.piece); },

  /** The roll that is worked on, as it was before an entry of this number. */
  current(upTo) {
    const roll = this.all(upTo).get(Store.state.roll);
    return roll && (roll.open || upTo) ? roll : null;
  },

  open() { return [...this.all().values()].filter(r => r.open); },
};

const Page = {
  data: null,
  w: null,
  sure: null,

  begin() {
    this.data = JSON.parse(document.getElementById('production').textContent);
    this.w = this.data.w;
    Sums.perFoot = this.data.perFoot;
    Sums.metric = this.data.metric;
    Store.open(this.data.code);
    const s = Store.state;
    if (!s.who && this.data.people.length === 1) { s.who = this.data.people[0].id; }
    if (!s.take) { s.take = this.firstTake(); }
    if (!s.roll && this.data.open.length) { s.roll = this.data.open[0].roll; s.take = this.firstTake(this.data.open[0].last); }
    if (s.opened === 1 && Rolls.current()) { s.screen = 'take'; }
    document.addEventListener('click', event => this.clicked(event));
    document.addEventListener('change', event => this.changed(event));
    document.addEventListener('input', event => this.changed(event));
    document.addEventListener('keydown', event => this.typed(event));
    addEventListener('storage', event => {
      if (event.newValue && event.key === Store.key(this.data.code + '.' + Store.device)) {
        Store.takeOver(event.newValue);
        this.draw();
      }
    });
    this.draw();
  },

  firstTake(last) {
    const lenses = this.data.lenses;
    const shot = this.data.shots[0];
    return {
      scene: shot ? shot.scene : '1', shot: shot ? shot.shot : 'A', number: null, to: '', speed: null,
      lens: lenses.length === 1 ? lenses[0].name : null, stop: null, filter: [], focus: null, ...(last || {}),
    };
  },

  // Making elements. Text is always text, so that nothing in a name is ever markup.

  el(tag, attributes, ...children) {
    const element = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes || {})) {
      if (value === true) { element.setAttribute(name, ''); } else if (value !== null && value !== undefined && value !== false) {
        element.setAttribute(name, value);
      }
    }
    element.append(...children.flat().filter(child => child !== null && child !== undefined && child !== ''));
    return element;
  },

  button(text, act, arg, attributes) {
    const id = 'b-' + act + (arg === undefined ? '' : '-' + String(arg).replace(/[^\w-]/g, '_'));
    return this.el('button', { type: 'button', id, 'data-do': act, 'data-with': arg, ...attributes }, text);
  },

  chip(name, value, act, arg, attributes) {
    return this.button([
      this.el('span', { class: 'k' }, name), ' ', this.el('span', { class: 'v' }, value || '–'),
    ], act, arg, { class: 'chip', ...attributes });
  },

  row(name, what, act, arg, attributes) {
    return this.el('li', {}, this.button([
      this.el('span', { class: 'v' }, name), what ? this.el('span', { class: 'k' }, what) : '',
    ], act, arg, attributes));
  },

  put(id, ...children) {
    const place = document.getElementById(id);
    place.dataset.drawn = '';
    place.replaceChildren(...children.flat().filter(Boolean));
  },

  fill(text, values) { return text.replace(/\{([a-z]+)\}/g, (whole, name) => name in values ? values[name] : whole); },

  // Lengths and times in words.

  length(frames) {
    return Sums.metric ? this.number(Sums.metres(frames)) + ' m' : Sums.feetAndFrames(frames) + ' ft';
  },

  /** Feet and frames need no unit beside them: nothing else is written so. */
  bare(frames) { return Sums.metric ? this.length(frames) : Sums.feetAndFrames(frames); },

  seconds(frames, speed) { return this.number(Sums.seconds(frames, this.speed(speed))) + ' s'; },

  number(text) { return text.replace('.', this.data.decimal); },

  speed(text) { return this.data.speeds[text] || [24, 1]; },

  written(frames) { return Sums.metric ? frames + 'fr' : Sums.feetAndFrames(frames); },

  /** What was typed on the pad as a length: `70` on a dial of feet is `70+00`. */
  typedLength(typed) {
    if (!typed) { return ''; }
    if (/fr$/.test(typed)) { return typed; }
    if (Sums.metric) { return typed.replace(/\.$/, '') + 'm'; }
    const [feet, over] = typed.split('+');
    return (feet || '0') + '+' + (over || '').padStart(2, '0');
  },

  shownLength(typed) {
    const text = typed && /fr$/.test(typed) ? Sums.metric ? Sums.metres(Sums.frames(typed)) : typed : typed;
    return text ? this.number(text.replace(/m$/, '')) + (Sums.metric ? ' m' : '') : '';
  },

  // Where we are.

  now() {
    const at = new Date();
    const two = n => String(n).padStart(2, '0');
    return {
      day: at.getFullYear() + '-' + two(at.getMonth() + 1) + '-' + two(at.getDate()),
      at: two(at.getHours()) + ':' + two(at.getMinutes()),
    };
  },

  sheet() {
    const s = Store.state;
    const base = s.screen === 'choose' ? s.back : s.screen;
    return base === 'form' ? s.form : s.edit || s.take;
  },

  /** The roll as it was before the entry that is corrected, else as it is. */
  roll() {
    const edited = Store.state.edit || (this.base() === 'form' && Store.state.form && Store.state.form.n ? Store.state.form : null);
    return edited && edited.n ? this.rollOf(edited.roll, edited.n) : Rolls.current();
  },

  rollOf(name, upTo) { return Rolls.all(upTo).get(name) || null; },

  base() { return Store.state.screen === 'choose' ? Store.state.back : Store.state.screen; },

  body(at) { return this.data.bodies.find(b => b.name === at.body) || (this.data.bodies.length === 1 ? this.data.bodies[0] : null); },

  person(id) { const person = this.data.people.find(p => p.id === id); return person ? person.name : id; },

  slate(e) { return (e.scene || '') + (e.shot || '') + '/' + (e.number || this.nextOf(e.scene, e.shot)); },

  nextOf(scene, shot) {
    const planned = this.data.shots.find(s => s.scene === scene && s.shot === (shot || ''));
    const own = Store.state.entries.filter(e => e.verb === 'take' && !e.struck && e.scene === scene && (e.shot || '') === (shot || ''));
    return Math.max(planned ? planned.next - 1 : 0, ...own.map(e => e.number)) + 1;
  },

  // Acting.

  clicked(event) {
    const button = event.target.closest('[data-do]');
    if (!button) { return; }
    const act = button.dataset.do;
    const sure = this.sure;
    this.sure = null;
    this.act[act].call(this, button.dataset.with, sure);
    Store.write();
    this.draw();
  },

  /** A tick, a radio button or a text: taken down as it is set; nothing else on the screen moves. */
  changed(event) {
    const field = event.target;
    const name = field.name;
    if (!name || !field.dataset.sheet) { return; }
    if (/^(date|time)$/.test(field.type) && !field.value) { return; }
    const sheet = this.sheet();
    if (field.type === 'checkbox' && field.dataset.sheet === 'list') {
      const list = new Set(sheet[name] || []);
      if (field.checked) { list.add(field.value); } else { list.delete(field.value); }
      sheet[name] = [...list];
    } else {
      sheet[name] = field.type === 'checkbox' ? field.checked : field.value;
      if (name === 'scene' || name === 'shot') { sheet.number = null; }
    }
    Store.write();
    this.warn();
    if (field.type !== 'text' && this.base() === 'form') { this.drawCautions(); }
  },

  /** A keyboard, where there is one: digits go to the pad that is on the screen. */
  typed(event) {
    if (event.ctrlKey || event.altKey || event.metaKey || /^(INPUT|TEXTAREA)$/.test(event.target.tagName)) { return; }
    const key = event.key === 'Backspace' ? 'back' : event.key === ',' ? '.' : event.key;
    const pad = [...document.querySelectorAll('main section:not([hidden]) .pad [data-with]')].find(b => b.dataset.with === key);
    if (pad) { event.preventDefault(); pad.click(); }
  },

  go(screen) {
    const s = Store.state;
    s.screen = screen;
    if (screen !== 'choose') { s.choose = null; }
  },

  say(text) { this.answer = text; },

  act: {
    go(screen) {
      const s = Store.state;
      if (screen === 'take') { s.edit = null; }
      if (screen === 'help') { s.back = s.screen === 'choose' || s.screen === 'help' ? 'roll' : s.screen; }
      if (screen === 'take' && !Rolls.current()) {
        this.say(this.w.pocket_no_roll);
        screen = 'roll';
      } else { this.say(''); }
      this.go(screen);
    },

    back() { const s = Store.state; this.go(s.back || 'roll'); },

    look() {
      const dark = this.isDark();
      document.documentElement.dataset.look = dark ? 'light' : 'dark';
      try { localStorage.setItem(Store.key('look'), dark ? 'light' : 'dark'); } catch (broken) { Store.failed = broken; }
    },

    choose(what) {
      const s = Store.state;
      if (s.screen !== 'choose') { s.back = s.screen; }
      if (s.back === 'help' && what === 'who') { s.back = 'roll'; }
      s.choose = { what, typed: '' };
      s.screen = 'choose';
    },

    pick(value) {
      const s = Store.state;
      const what = s.choose.what;
      if (what === 'who') { s.who = value; } else if (what === 'stock') {
        const can = this.data.stock[Number(value)];
        Object.assign(s.form, { lot: can.lot, unit: can.unit || null, shortEndOf: can.shortEndOf || null, piece: can.name || null, what: can.what });
      } else { this.sheet()[what] = value === '' ? null : value; }
      this.go(s.back);
      this.focusOn = 'b-choose-' + what;
    },

    filter(value) {
      const sheet = this.sheet();
      const has = (sheet.filter || []).includes(value);
      sheet.filter = value === '' ? [] : has ? sheet.filter.filter(f => f !== value) : [...(sheet.filter || []), value];
      if (value === '') { this.act.done.call(this); }
    },

    done() {
      const s = Store.state;
      const { what, typed } = s.choose;
      if (what === 'focus' && typed) {
        const focus = /^\d+(\.\d+)?$/.test(typed) ? typed + (Sums.metric ? 'm' : 'ft') : typed;
        if (!/^(\d+(\.\d+)?(ft(\d+(\.\d+)?in)?|m|cm)|inf)$/.test(focus)) { this.say(this.fill(this.w.pocket_no_focus, { text: typed })); return; }
        this.sheet().focus = focus;
      }
      this.go(s.back);
      this.focusOn = 'b-choose-' + what;
    },

    shot(at) {
      const s = Store.state;
      const shot = this.data.shots[Number(at)];
      Object.assign(this.sheet(), { scene: shot.scene, shot: shot.shot, number: null });
      this.go(s.back);
      this.focusOn = 'chip-slate';
    },

    number(by) {
      const sheet = this.sheet();
      sheet.number = Math.max(1, (sheet.number || this.nextOf(sheet.scene, sheet.shot)) + Number(by));
    },

    nextshot() {
      const sheet = this.sheet();
      const at = this.data.shots.findIndex(s => s.scene === sheet.scene && s.shot === (sheet.shot || ''));
      const next = this.data.shots[at + 1];
      if (next) { Object.assign(sheet, { scene: next.scene, shot: next.shot, number: null }); } else {
        const letter = /^[A-Y]$/i.test(sheet.shot || '') ? String.fromCharCode(sheet.shot.charCodeAt(0) + 1) : null;
        if (letter) { Object.assign(sheet, { shot: letter, number: null }); } else { this.act.choose.call(this, 'slate'); return; }
      }
      this.say(this.slate(sheet));
    },

    nexttake() {
      const sheet = this.sheet();
      sheet.number = (sheet.number || this.nextOf(sheet.scene, sheet.shot)) + 1;
      this.say(this.slate(sheet));
    },

    meter(name) { this.sheet().meter = name; },

    // The pad: of the take, of a length on any sheet, of the focus.
    pad(key) {
      const s = Store.state;
      const focus = s.screen === 'choose' && s.choose.what === 'focus';
      const holder = focus ? s.choose : this.sheet();
      const name = focus ? 'typed' : s.screen === 'choose' ? s.choose.what : 'to';
      // The first digit on a length that is there already begins a new one.
      const mark = s.screen === 'choose' ? s.choose : s.edit;
      if (mark && !focus && !mark.typed) {
        mark.typed = 'yes';
        if (key !== 'back') { holder[name] = ''; }
      }
      holder[name] = focus ? this.typedFocus(holder[name] || '', key) : this.typedKey(holder[name] || '', key);
    },

    whole(frames) {
      const s = Store.state;
      this.focusOn = 'b-choose-' + s.choose.what;
      s.form[s.choose.what] = this.written(Number(frames));
      this.go(s.back);
    },

    recent(focus) { this.sheet().focus = focus; this.go(Store.state.back); this.focusOn = 'b-choose-focus'; },

    mark(mark, sure) {
      const s = Store.state;
      const sheet = s.edit || s.take;
      const roll = this.roll();
      if (!roll) { this.go('roll'); this.say(this.w.pocket_no_roll); return; }
      const to = this.typedLength(sheet.to);
      const frames = Sums.frames(to);
      if (frames === null) {
        this.say(sheet.to ? this.fill(this.w.pocket_no_length, { text: this.shownLength(sheet.to) }) : this.w.pocket_no_end);
        return;
      }
      const fades = [sheet.fadeIn, sheet.fadeOut].map(typed => this.typedLength(typed || ''));
      const wrong = fades.find(fade => fade && Sums.frames(fade) === null);
      if (wrong) { this.say(this.fill(this.w.pocket_no_length, { text: this.shownLength(wrong) })); return; }
      const end = frames + roll.at.zero;
      const odd = end < roll.at.position ? this.fill(this.w.pocket_behind, { to: this.length(frames), at: this.length(roll.at.position - roll.at.zero) })
        : roll.at.length !== null && end > roll.at.length ? this.fill(this.w.pocket_past_end, { to: this.length(frames), at: this.length(roll.at.length - roll.at.zero) })
          : null;
      if (odd && sure !== 'mark' + mark) {
        this.sure = 'mark' + mark;
        this.say(odd + ' ' + this.w.pocket_sure);
        return;
      }
      const entry = {
        ...this.stamp(s.edit), verb: 'take', roll: roll.name, scene: sheet.scene, shot: sheet.shot || '',
        number: sheet.number || this.nextOf(sheet.scene, sheet.shot), to, speed: this.speedOf(sheet, roll), lens: sheet.lens, stop: sheet.stop,
        reading: sheet.reading || null, meter: sheet.reading ? this.meterOf(sheet) : null,
        filter: sheet.filter || [], focus: sheet.focus, shutter: sheet.shutter || null, motor: sheet.motor || null, sync: Boolean(sheet.sync),
        fadeIn: fades[0], fadeOut: fades[1],
        mute: Boolean(sheet.mute), wound: Boolean(sheet.wound), mark, by: s.edit ? s.edit.by : s.who && s.who !== roll.by ? s.who : null,
        remark: sheet.remark || '',
      };
      this.keep(entry);
      const left = Sums.filmLeft(Rolls.all().get(roll.name).at);
      this.say(this.fill(s.edit ? this.w.pocket_corrected : this.w.pocket_take_logged, {
        slate: this.slate(entry), to: this.length(frames), mark: this.data.marks[mark],
      }) + (left === null ? '' : ' ' + this.fill(this.w.pocket_left, { film: this.length(left) })));
      if (s.edit) { s.edit = null; this.go('log'); return; }
      s.take = { ...sheet, number: null, to: '', shutter: null, mute: false, wound: false, reading: null, fadeIn: '', fadeOut: '', remark: '' };
    },

    wound() {
      const roll = Rolls.current();
      if (!roll) { this.say(this.w.pocket_no_roll); return; }
      this.keep({ ...this.stamp(), verb: 'wind', roll: roll.name });
      this.say(this.w.pocket_wound_logged);
    },

    // Forms: everything that is no take.
    form(verb) {
      const s = Store.state;
      const roll = Rolls.current();
      const usual = {
        load: () => ({
          roll: this.nextRoll(), body: this.data.bodies.length === 1 ? this.data.bodies[0].name : null, by: s.who, light: 'subdued',
          head: '', ready: [], speedAfter: this.usualSpeed(),
        }),
        unload: () => ({ by: s.who, light: Sums.filmLeft(roll.at) > 0 ? 'dark' : 'subdued', tail: '', left: '', shortEnd: 'kept' }),
        rewind: () => ({ to: '', shutter: 'closed', in: 'camera', zeroed: false }),
        'run-off': () => ({ to: '', lens: 'capped' }),
        fog: () => ({ before: '', after: '' }),
        reload: () => ({ by: s.who, body: null, light: 'dark', zeroMoved: '', lost: '', to: '' }),
        note: () => ({}),
      };
      s.form = { verb, n: null, roll: roll ? roll.name : null, ...usual[verb](), from: s.screen === 'more' ? 'more' : 'roll' };
      this.go('form');
      this.say('');
    },

    log() {
      const s = Store.state;
      const form = s.form;
      const wrong = this.wrongIn(form);
      if (wrong) { this.say(wrong); return; }
      const { from, what, ...entry } = form;
      // Loading and taking out have no remark of their own: it is a note, while the roll is in the camera.
      const isApart = form.verb === 'load' || form.verb === 'unload';
      const remark = isApart ? (entry.remark || '').trim() : '';
      if (isApart) { delete entry.remark; }
      const note = () => { if (remark) { this.keep({ ...this.stamp(), verb: 'note', roll: entry.roll, remark }); } };
      for (const name of this.lengthsOf(form.verb)) { entry[name] = this.typedLength(String(entry[name] || '')); }
      if (form.verb === 'unload' && !(Sums.frames(entry.left) > 0) && Sums.filmLeft(this.roll().at) === 0) { entry.shortEnd = null; }
      if (form.verb === 'unload') { note(); }
      this.keep({ ...entry, ...this.stamp(form.n ? form : null), ...(form.verb === 'load' ? { what } : {}) });
      if (form.verb === 'load') { note(); }
      if (form.verb === 'load' && !form.n) {
        s.who = s.who || entry.by;
        s.roll = entry.roll;
        s.take.speed = entry.speedAfter;
      }
      if (form.verb === 'unload' && !form.n) {
        const [next] = Rolls.open();
        s.roll = null;
        if (next) { this.turnTo(next.name); }
      }
      this.say(this.fill(form.n ? this.w.pocket_corrected_form : this.w.pocket_form_logged, { what: this.title(form.verb) }));
      this.go(form.n ? 'log' : form.verb === 'unload' ? 'roll' : 'take');
      s.form = null;
    },

    leave() {
      const s = Store.state;
      const to = s.edit || (s.form && s.form.n) ? 'log' : s.form ? s.form.from : 'take';
      s.edit = null;
      s.form = null;
      this.go(to);
    },

    entry(n) {
      const s = Store.state;
      const entry = s.entries.find(e => e.n === Number(n));
      if (entry.verb === 'take') {
        s.edit = JSON.parse(JSON.stringify(entry));
        for (const name of ['to', 'fadeIn', 'fadeOut']) { s.edit[name] = this.asTyped(entry[name]); }
        this.go('take');
      } else {
        s.form = JSON.parse(JSON.stringify(entry));
        for (const name of this.lengthsOf(entry.verb)) { s.form[name] = this.asTyped(entry[name]); }
        this.go('form');
      }
      this.say('');
    },

    strike(n, sure) {
      const s = Store.state;
      const entry = s.entries.find(e => e.n === Number(n));
      if (!entry.struck && entry.verb === 'load' && s.entries.some(e => e.roll === entry.roll && e !== entry && !e.struck)) {
        this.say(this.fill(this.w.pocket_strike_first, { roll: entry.roll }));
        return;
      }
      if (!entry.struck && sure !== 'strike' + n) {
        this.sure = 'strike' + n;
        this.say(this.fill(this.w.pocket_strike_sure, { number: this.numberOf(entry) }));
        return;
      }
      entry.struck = !entry.struck;
      if (entry.struck && entry.verb === 'load' && s.roll === entry.roll) { s.roll = null; }
      if (!entry.struck && entry.verb === 'load') { s.roll = entry.roll; }
      if (entry.struck && entry.verb === 'unload' && !s.roll) { s.roll = entry.roll; }
      s.edit = null;
      s.form = null;
      this.say(this.fill(entry.struck ? this.w.pocket_struck : this.w.pocket_unstruck, { number: this.numberOf(entry) }));
      this.go('log');
    },

    work(name) { this.turnTo(name); this.go('take'); this.say(this.fill(this.w.pocket_on_roll, { roll: name })); },

    copy() {
      const area = document.getElementById('over-lines');
      const done = () => { this.handed(); this.say(this.w.pocket_copied); Store.write(); this.draw(); };
      const byHand = () => {
        area.focus();
        area.select();
        if (document.execCommand('copy')) { done(); } else { this.say(this.w.pocket_copy_by_hand); this.draw(); }
      };
      if (navigator.clipboard && navigator.clipboard.writeText) { navigator.clipboard.writeText(area.value).then(done, byHand); } else { byHand(); }
    },

    share() {
      const text = this.lines();
      navigator.share({ title: this.fileName(), text }).then(() => { this.handed(); Store.write(); this.draw(); }, () => {});
    },

    save() {
      const address = URL.createObjectURL(new Blob([this.lines()], { type: 'text/plain' }));
      const link = this.el('a', { href: address, download: this.fileName() });
      document.body.append(link);
      link.click();
      link.remove();
      setTimeout(() => URL.revokeObjectURL(address), 60000);
      this.handed();
      this.say(this.fill(this.w.pocket_saved, { file: this.fileName() }));
    },

    /** Other characters for this telephone, as long as nothing carries the first ones. */
    redraw() {
      if (Store.state.entries.length) { return; }
      Store.state.opened = 1;
      Store.redraw();
      this.say(this.fill(this.w.pocket_redrawn, { device: Store.device }));
    },

    clear() { Store.state.clearing = true; },

    keepit() { Store.state.clearing = false; },

    clearall() {
      const s = Store.state;
      const n = s.entries.length;
      Object.assign(s, { entries: [], clearing: false, handed: null, roll: null, edit: null, form: null, take: this.firstTake() });
      if (this.data.open.length) { s.roll = this.data.open[0].roll; }
      this.say(this.fill(this.w.pocket_cleared, { n }));
    },
  },

  /** Another roll is another camera: its lens and its speed are those of its own last take. */
  turnTo(name) {
    const roll = Rolls.all().get(name);
    const moment = [...roll.moments].reverse().find(m => m.entry.verb === 'take');
    const { scene, shot, lens, stop, filter, focus, motor } = moment ? moment.entry : { ...this.firstTake(), ...roll.last };
    Store.state.roll = name;
    Store.state.take = { ...this.firstTake(), scene, shot, lens, stop, filter, focus, motor };
  },

  stamp(of) {
    return of && of.n ? { n: of.n, day: of.day, at: of.at } : { n: Store.state.next, ...this.now() };
  },

  keep(entry) {
    const s = Store.state;
    const at = s.entries.findIndex(e => e.n === entry.n);
    if (at >= 0) { s.entries[at] = entry; } else {
      s.entries.push(entry);
      s.next = entry.n + 1;
    }
    s.clearing = false;
  },

  handed() { Store.state.handed = { ...this.now(), n: Store.state.entries.length, rev: JSON.stringify(Store.state.entries).length }; },

  lines() { return Lines.all(Store.state.entries, Store.device); },

  fileName() { return this.data.code + '-' + Store.device + '-' + this.now().day + '.txt'; },

  numberOf(entry) { return '#' + Store.device + '-' + entry.n; },

  speedOf(sheet, roll) { return sheet.speed || roll.at.speed; },

  asTyped(text) { return (text || '').replace(/m$/, '').replace(/\+00$/, ''); },

  typedKey(typed, key) {
    if (key === 'back') { return typed.slice(0, -1); }
    if (/fr$/.test(typed)) { return key; }
    if (key === '+' || key === '.') { return typed.includes(key) || (key === '+' && !typed) ? typed : typed + key; }
    const parts = typed.split(/[+.]/);
    return parts[parts.length - 1].length >= (parts.length > 1 ? 2 : 4) ? typed : typed + key;
  },

  typedFocus(typed, key) {
    if (key === 'back') { return typed.replace(/(ft|in|cm|m|inf|.)$/, ''); }
    if (key === 'inf') { return 'inf'; }
    if (typed === 'inf') { return /^[a-z]/.test(key) ? typed : key; }
    if (/^[a-z]/.test(key)) { return /\d$/.test(typed) && (key === 'in') === /ft/.test(typed) && !/(in|m)/.test(typed) ? typed + key : typed; }
    if (/(in|m)$/.test(typed) || typed.length > 9) { return typed; }
    return key === '.' && (!/\d$/.test(typed) || /\.\d*$/.test(typed)) ? typed : typed + key;
  },

  /** The meter of a reading; the only one of the kit needs no choosing. */
  meterOf(sheet) { return sheet.meter || (this.data.meters.length === 1 ? this.data.meters[0].name : null); },

  /** The speed that it is projected at, where the camera has it. */
  usualSpeed() {
    const [body] = this.data.bodies;
    return !body || !body.speeds.length || body.speeds.includes(this.data.projected) ? this.data.projected : '24';
  },

  nextRoll() {
    const names = [...this.data.rolls, ...Store.state.entries.filter(e => e.verb === 'load' && !e.struck).map(e => e.roll)];
    const last = names.map(name => /^(.*?)(\d+)$/.exec(name)).filter(Boolean).sort((a, b) => Number(a[2]) - Number(b[2])).pop();
    return last ? last[1] + String(Number(last[2]) + 1).padStart(last[2].length, '0') : 'R01';
  },

  lengthsOf(verb) {
    return { load: ['head', 'length'], unload: ['tail', 'left'], rewind: ['to'], 'run-off': ['to'], fog: ['before', 'after'], reload: ['zeroMoved', 'lost', 'to'] }[verb] || [];
  },

  needed: { load: ['roll', 'lot'], rewind: ['to'], 'run-off': ['to'], fog: ['before', 'after'], note: ['remark'] },

  wrongIn(form) {
    const w = this.w;
    for (const name of this.needed[form.verb] || []) {
      if (!String(form[name] || '').trim() && !(name === 'lot' && form.shortEndOf)) {
        return this.fill(w.pocket_missing, { what: this.nameOf(name, form.verb) });
      }
    }
    for (const name of this.lengthsOf(form.verb)) {
      if (form[name] && Sums.frames(this.typedLength(String(form[name]))) === null) {
        return this.fill(w.pocket_no_length, { text: this.shownLength(form[name]) });
      }
    }
    if (form.verb === 'load' && !form.n && (this.data.rolls.includes(form.roll) || Rolls.all().has(form.roll))) {
      return this.fill(w.pocket_roll_twice, { roll: form.roll });
    }
    return null;
  },

  title(verb) {
    const w = this.w;
    return { load: w.pocket_load, unload: w.pocket_unload, rewind: w.pocket_rewind, 'run-off': w.pocket_run_off, fog: w.pocket_fog, reload: w.pocket_reload, note: w.pocket_note, wind: w.pocket_wound }[verb];
  },

  nameOf(key, verb) {
    const w = this.w;
    const names = {
      roll: w.pocket_roll_name, lot: w.pocket_stock, stock: w.pocket_stock, body: w.body, by: w.pocket_by, who: w.pocket_who, head: w.pocket_head, length: w.pocket_length, tail: w.pocket_tail,
      left: w.pocket_short_end, before: w.pocket_before, after: w.pocket_after, zeroMoved: w.pocket_zero_moved, lost: w.pocket_lost,
      to: verb === 'reload' ? w.pocket_threaded_to : w.pocket_to, remark: w.pocket_remark, speed: w.pocket_speed, speedAfter: w.pocket_speed_after,
      lens: w.pocket_lens, stop: w.pocket_stop, filter: w.pocket_filter, focus: w.pocket_focus, slate: w.pocket_slate, shutter: w.pocket_shutter,
      motor: w.pocket_motor, reading: w.pocket_reading, fadeIn: w.pocket_fade_in, fadeOut: w.pocket_fade_out,
    };
    return names[key];
  },

  isDark() {
    const look = document.documentElement.dataset.look;
    return look ? look === 'dark' : matchMedia('(prefers-color-scheme: dark)').matches;
  },

  // Drawing.

  draw() {
    const s = Store.state;
    const focused = this.focusOn || (document.activeElement && document.activeElement.id);
    const before = this.shown;
    this.shown = s.screen + (s.choose ? s.choose.what : '') + (s.edit ? s.edit.n : '') + (s.form ? s.form.verb + s.form.n : '');
    // What a hidden screen holds is taken away: an id is on the page once.
    for (const section of document.querySelectorAll('main > section')) {
      section.hidden = section.id !== (s.screen === 'help' ? 'how' : s.screen);
      if (section.hidden) { section.querySelectorAll('[data-drawn]').forEach(part => part.replaceChildren()); }
    }
    for (const name of ['roll', 'take', 'log', 'over']) {
      const tab = document.getElementById('to-' + name);
      if (name === s.screen) { tab.setAttribute('aria-current', 'page'); } else { tab.removeAttribute('aria-current'); }
    }
    document.getElementById('device').textContent = Store.device;
    const who = document.getElementById('who');
    who.hidden = this.data.people.length === 0;
    who.textContent = s.who ? s.who : this.w.pocket_who_short;
    who.setAttribute('aria-label', this.w.pocket_who + ': ' + (s.who ? s.who + ', ' + this.person(s.who) : '–'));
    const look = document.getElementById('look');
    look.textContent = this.isDark() ? this.w.pocket_light : this.w.pocket_dark;
    this['draw' + s.screen[0].toUpperCase() + s.screen.slice(1)]();
    this.warn();
    const answer = document.getElementById('answer');
    answer.textContent = this.answer || '';
    answer.classList.toggle('warn', Boolean(this.warned || this.sure));
    this.answer = '';
    this.warned = false;
    const title = document.querySelector('main section:not([hidden]) h2');
    if (before !== undefined && before !== this.shown) {
      document.getElementById('main').scrollTop = 0;
      const again = this.focusOn && document.getElementById(this.focusOn);
      (again || title).focus({ preventScroll: true });
      if (again) { again.scrollIntoView({ block: 'nearest' }); }
    } else if (focused && document.getElementById(focused)) {
      document.getElementById(focused).focus({ preventScroll: true });
    }
    this.focusOn = null;
  },

  warn() {
    const w = this.w;
    const text = Store.failed ? w.pocket_not_kept : Store.lost ? w.pocket_lost_all : null;
    const warning = document.getElementById('warning');
    if (!text) { warning.replaceChildren(); } else if (warning.dataset.says !== text || !warning.firstChild) {
      warning.replaceChildren(this.el('p', {}, text), this.button(w.pocket_over_now, 'go', 'over', { id: 'over-now' }));
    }
    warning.dataset.says = text || '';
  },

  film(id, roll, end) {
    const w = this.w;
    const at = roll.at;
    const left = Sums.filmLeft(at);
    const body = this.body(at);
    const wind = Sums.windLeft(at, body ? body.wind : null);
    const part = frames => Math.min(100, Math.max(0, 100 * frames / at.length)) + '%';
    const parts = [];
    if (at.length) {
      const stretch = (from, to, look) => {
        const piece = this.el('i', { class: look });
        piece.style.left = part(from);
        piece.style.width = 100 * Math.max(0, Math.min(to, at.length) - from) / at.length + '%';
        parts.push(piece);
      };
      const first = roll.moments.length ? roll.moments[0].from : at.position;
      stretch(0, first, roll.load ? 'lost' : '');
      for (const { entry, from, to } of roll.moments) {
        if (entry.verb === 'take') { stretch(from, to, entry.mark === 'G' ? 'good' : ''); }
        if (entry.verb === 'run-off' || entry.verb === 'reload') { stretch(from, to, 'lost'); }
      }
      if (end !== null && end !== undefined && end > at.position) { stretch(at.position, end, 'new'); }
      const head = this.el('b');
      head.style.left = 'min(' + part(at.position) + ', 100% - 3px)';
      parts.push(head);
    }
    const figure = (name, frames, speed) => this.el('div', {}, this.el('dt', {}, name), this.el('dd', {},
      this.bare(frames), ' ', this.el('small', {}, this.seconds(frames, speed))));
    const gauge = this.el('i');
    if (wind !== null) { gauge.style.width = body.wind ? 100 * wind / body.wind + '%' : '0'; }
    this.put(id,
      at.length ? this.el('div', { class: 'strip', 'aria-hidden': 'true' }, parts) : null,
      wind === null ? null : this.el('div', { class: 'wind', 'aria-hidden': 'true' }, gauge),
      this.el('dl', {},
        this.el('div', {}, this.el('dt', {}, this.fill(w.pocket_is_at, { roll: roll.name })), this.el('dd', {}, this.bare(at.position - at.zero))),
        left === null ? null : figure(w.pocket_film_left, left, this.speedOf(this.sheet(), roll)),
        wind === null ? null : figure(w.pocket_wind_left, wind, this.speedOf(this.sheet(), roll))));
  },

  drawTake() {
    const s = Store.state;
    const w = this.w;
    const sheet = s.edit || s.take;
    const roll = this.roll();
    document.getElementById('take').classList.toggle('correcting', Boolean(s.edit));
    document.getElementById('take-title').textContent = s.edit ? this.fill(w.pocket_correct, { what: this.slate(s.edit), number: this.numberOf(s.edit) }) : w.pocket_take;
    if (!roll) { s.screen = 'roll'; s.edit = null; this.shown = ''; this.draw(); return; }
    const frames = Sums.frames(this.typedLength(sheet.to));
    const end = frames === null ? null : frames + roll.at.zero;
    this.film('take-film', roll, end);
    document.getElementById('chip-slate').textContent = this.slate(sheet);
    document.getElementById('chip-slate').setAttribute('aria-label', w.pocket_slate + ' ' + this.slate(sheet));
    this.put('take-to', this.el('small', {}, w.pocket_ends_at + (Sums.metric ? '' : ' · ' + w.unit_feet)),
      sheet.to ? this.el('b', {}, this.shownLength(sheet.to)) : this.el('b', { class: 'empty' }, this.length(roll.at.position - roll.at.zero).replace(/ (ft|m)$/, ' …')));
    const speed = this.speedOf(sheet, roll);
    // In the order in which every place names them.
    const chips = [
      this.chip(w.pocket_speed, speed, 'choose', 'speed'), this.chip(w.pocket_lens, sheet.lens, 'choose', 'lens'),
      this.chip(w.pocket_stop, sheet.stop && this.number(sheet.stop), 'choose', 'stop'),
      this.chip(w.pocket_reading, sheet.reading && this.number(sheet.reading), 'choose', 'reading'),
      this.chip(w.pocket_filter, (sheet.filter || []).join(' + '), 'choose', 'filter'),
      this.chip(w.pocket_focus, this.focusText(sheet.focus), 'choose', 'focus'),
    ];
    for (const name of ['fadeIn', 'fadeOut']) {
      if (sheet[name]) { chips.push(this.chip(this.nameOf(name), this.shownLength(sheet[name]), 'choose', name)); }
    }
    if (sheet.shutter) { chips.push(this.chip(w.pocket_shutter, sheet.shutter, 'choose', 'shutter')); }
    if (sheet.motor) { chips.push(this.chip(w.pocket_motor, sheet.motor, 'choose', 'motor')); }
    if (sheet.wound) { chips.push(this.chip(w.pocket_while, w.pocket_wound, 'go', 'more', { id: 'chip-wound' })); }
    // The remark has the rest of its row.
    const remark = this.chip(w.pocket_remark, sheet.remark, 'choose', 'remark');
    remark.style.gridColumn = 'span ' + (3 - chips.length % 3);
    this.put('take-chips', chips, remark);
    const says = this.takeSays(sheet, roll, end, speed);
    if (!this.answer) { this.answer = says.text; this.warned = says.warn; }
    if (!document.querySelector('#take-pad button')) {
      this.put('take-pad', this.pad('123456789'));
      this.put('take-marks', ['G', 'H', 'NG', 'T'].map(mark => this.button(this.data.marks[mark], 'mark', mark,
        { class: mark === 'T' ? 'test' : null, 'aria-label': this.data.marks[mark] + ', ' + w['pocket_mark_' + mark.toLowerCase()] })));
    }
    for (const mark of document.querySelectorAll('#take-marks button')) {
      if (s.edit && s.edit.mark === mark.dataset.with) { mark.setAttribute('aria-pressed', 'true'); } else { mark.removeAttribute('aria-pressed'); }
    }
    this.put('take-row', s.edit
      ? [this.button(s.edit.struck ? w.pocket_unstrike : w.pocket_strike_it, 'strike', s.edit.n), this.button(w.pocket_more, 'go', 'more'), this.button(w.pocket_leave, 'leave')]
      : [Sums.windLeft(roll.at, this.body(roll.at) ? this.body(roll.at).wind : null) === null ? null : this.button(w.pocket_wound, 'wound'),
        this.button(w.pocket_next_take, 'nexttake'), this.button(w.pocket_next_shot, 'nextshot'), this.button(w.pocket_more, 'go', 'more')]);
  },

  takeSays(sheet, roll, end, speed) {
    const w = this.w;
    if (Store.state.edit) { return { text: this.fill(w.pocket_correct_how, { mark: this.data.marks[Store.state.edit.mark] }), warn: false }; }
    if (end === null) { return { text: '', warn: false }; }
    if (end < roll.at.position) { return { text: this.fill(w.pocket_behind_short, { at: this.length(roll.at.position - roll.at.zero) }), warn: true }; }
    const run = end - roll.at.position;
    const body = this.body(roll.at);
    const wind = sheet.motor || sheet.wound ? null : Sums.windLeft({ ...roll.at, spring: true }, body ? body.wind : null);
    const ran = this.fill(w.pocket_ran, { film: this.bare(run), time: this.seconds(run, speed) });
    if (roll.at.length !== null && end > roll.at.length) { return { text: this.fill(w.pocket_past_short, { at: this.length(roll.at.length - roll.at.zero) }), warn: true }; }
    return wind !== null && run > wind ? { text: ran + ': ' + this.fill(w.pocket_past_wind, { film: this.bare(run - wind) }), warn: true } : { text: ran, warn: false };
  },

  pad(digits, extra) {
    const key = (name, label, says) => this.button(label || name, 'pad', name, says ? { 'aria-label': says } : {});
    const left = extra || (Sums.metric ? key('.', this.data.decimal) : key('+', ['+', this.el('small', {}, ' ' + this.w.pocket_frames)], '+ ' + this.w.pocket_frames));
    return [...digits].map(d => key(d)).concat(left, key('0'), key('back', '⌫', this.w.pocket_delete));
  },

  focusText(focus) { return focus === 'inf' ? '∞' : focus ? this.number(focus.replace(/(ft|in|cm|m)/g, ' $1 ').trim()) : ''; },

  drawRoll() {
    const s = Store.state;
    const w = this.w;
    const roll = Rolls.current();
    const others = Rolls.open().filter(r => r.name !== s.roll);
    const parts = [];
    if (roll) {
      const stock = roll.load ? roll.load.what : (this.data.open.find(o => o.roll === roll.name) || {}).what;
      const by = roll.by ? this.fill(w.pocket_loaded_by, { who: this.person(roll.by) }) : '';
      const film = this.el('div', { class: 'film', id: 'roll-film' });
      parts.push(this.el('p', {}, this.el('span', { class: 'name-of' }, roll.name), ' ', [stock, roll.at.body, by].filter(Boolean).join(' · ')), film,
        this.el('div', { class: 'row' }, this.button(w.pocket_next_take, 'go', 'take', { class: 'main', id: 'b-take' }), this.button(w.pocket_unload, 'form', 'unload')),
        this.el('p', { class: 'soft' }, this.fill(w.pocket_unload_then, { roll: this.nextRoll() })));
      parts.push(this.el('div', { class: 'row' }, this.button(w.pocket_load_other, 'form', 'load')));
    } else {
      parts.push(this.el('p', {}, w.pocket_no_roll_yet), this.el('div', { class: 'row' },
        this.button(this.fill(w.pocket_load_next, { roll: this.nextRoll() }), 'form', 'load', { class: 'main' })));
    }
    if (others.length) {
      parts.push(this.el('h3', {}, w.pocket_other_rolls), this.el('ul', { class: 'list' }, others.map(other =>
        this.row(other.name, this.fill(w.pocket_at, { film: this.length(other.at.position - other.at.zero) }), 'work', other.name))));
    }
    this.put('roll-body', parts);
    if (roll) { this.film('roll-film', roll); }
  },

  drawLog() {
    const s = Store.state;
    const w = this.w;
    const rows = [];
    let day = '';
    for (const entry of [...s.entries].reverse()) {
      if (entry.day !== day) { day = entry.day; rows.push(this.el('li', {}, this.el('h3', {}, day))); }
      const [name, what] = this.told(entry);
      rows.push(this.row(name, what + (entry.struck ? ' · ' + w.pocket_is_struck : ''), 'entry', entry.n, entry.struck ? { class: 'struck' } : {}));
    }
    this.put('log-body', rows.length ? [this.el('p', { class: 'soft' }, w.pocket_tap_to_correct), this.el('ul', { class: 'list' }, rows)]
      : this.el('p', {}, w.pocket_nothing_logged));
  },

  told(entry) {
    const shown = text => this.shownLength(this.asTyped(text)) || text;
    if (entry.verb === 'take') {
      return [this.slate(entry), [shown(entry.to), this.data.marks[entry.mark], entry.lens, entry.at, entry.remark].filter(Boolean).join(' · ')];
    }
    const to = entry.to ? this.fill(this.w.pocket_to_length, { film: shown(entry.to) }) : '';
    return [this.title(entry.verb), [entry.roll, to, entry.at, entry.remark].filter(Boolean).join(' · ')];
  },

  drawOver() {
    const s = Store.state;
    const w = this.w;
    document.getElementById('over-count').textContent = this.fill(w.pocket_over_count, { n: s.entries.length, device: Store.device });
    document.getElementById('over-lines').value = this.lines();
    document.getElementById('over-command').textContent = 'spoolbook log ' + this.fileName();
    this.put('over-row', this.button(w.pocket_copy, 'copy', undefined, { class: 'main' }),
      navigator.share ? this.button(w.pocket_share, 'share') : null, this.button(w.pocket_save, 'save'));
    const handed = s.handed ? this.fill(w.pocket_handed, { day: s.handed.day, at: s.handed.at, n: s.handed.n }) : w.pocket_never_handed;
    this.put('over-clear', this.el('p', {}, handed), s.clearing
      ? [this.el('p', { class: 'strong' }, this.fill(w.pocket_clear_sure, { n: s.entries.length })),
        this.el('div', { class: 'row' }, this.button(w.pocket_keep_it, 'keepit', undefined, { class: 'main' }), this.button(this.fill(w.pocket_clear_all, { n: s.entries.length }), 'clearall'))]
      : s.entries.length ? this.el('div', { class: 'row' }, this.button(w.pocket_clear, 'clear')) : null);
  },

  drawHelp() {
    const n = Store.state.opened - 1;
    document.getElementById('how-kept').textContent = Store.failed ? this.w.pocket_not_kept : n > 0 ? this.fill(this.w.pocket_kept, { n }) : this.w.pocket_kept_unknown;
    this.put('how-row', Store.state.entries.length ? null : this.button(this.w.pocket_redraw, 'redraw'), this.button(this.w.pocket_back, 'back', undefined, { class: 'main' }));
  },

  drawMore() {
    const w = this.w;
    const sheet = this.sheet();
    const roll = this.roll();
    const body = roll && this.body(roll.at);
    const check = (name, text) => this.el('label', {}, this.el('input', {
      type: 'checkbox', name, id: 'more-' + name, 'data-sheet': 'flag', checked: Boolean(sheet[name]),
    }), text);
    const edit = Store.state.edit;
    this.put('more-body',
      this.el('h3', {}, this.fill(w.pocket_of_take, { slate: this.slate(sheet) })),
      edit ? this.when(edit) : null,
      this.el('div', { class: 'chips' },
        body && body.marks.length ? this.chip(w.pocket_shutter, sheet.shutter || '', 'choose', 'shutter') : null,
        ...['fadeIn', 'fadeOut'].map(name => this.chip(this.nameOf(name), this.shownLength(sheet[name]), 'choose', name)),
        this.data.motors.length ? this.chip(w.pocket_motor, sheet.motor || '', 'choose', 'motor') : null),
      this.el('div', { class: 'ticks field' }, check('wound', w.pocket_wound_while), check('sync', w.pocket_sync), check('mute', w.pocket_mute)),
      this.el('div', { class: 'row' }, this.button(w.pocket_back_to_take, 'back2take', undefined, { class: 'main' })),
      edit ? null : [this.el('h3', {}, w.pocket_else),
        this.el('ul', { class: 'list' }, ['rewind', 'run-off', 'fog', 'reload', 'note'].map(verb => this.row(this.title(verb), w['pocket_what_' + verb.replace('-', '_')], 'form', verb)))]);
  },

  when(entry) {
    return this.el('div', { class: 'set field' },
      ...[['day', 'date', this.w.pocket_day], ['at', 'time', this.w.pocket_time]].map(([name, type, text]) => this.el('div', { class: 'field' },
        this.el('label', { class: 'name', for: 'f-' + name }, text), this.el('input', { id: 'f-' + name, name, type, value: entry[name], required: true, 'data-sheet': 'text' }))));
  },

  drawForm() {
    const w = this.w;
    const form = Store.state.form;
    if (!form) { Store.state.screen = 'roll'; this.draw(); return; }
    document.getElementById('form-title').textContent = form.n ? this.fill(w.pocket_correct, { what: this.title(form.verb), number: this.numberOf(form) })
      : this.title(form.verb) + (form.roll && form.verb !== 'load' ? ' · ' + form.roll : '');
    const text = name => this.el('div', { class: 'field' }, this.el('label', { class: 'name', for: 'f-' + name }, this.nameOf(name)),
      name === 'remark' ? this.el('textarea', { id: 'f-' + name, name, rows: 2, 'data-sheet': 'text' }, form[name] || '')
        : this.el('input', { id: 'f-' + name, name, type: 'text', value: form[name] || '', autocomplete: 'off', autocapitalize: 'characters', 'data-sheet': 'text' }));
    const radios = (name, legend, values) => this.el('fieldset', { class: 'field' }, this.el('legend', {}, legend), this.el('div', { class: 'set' },
      values.map(([value, label]) => this.el('label', {}, this.el('input', {
        type: 'radio', name, id: 'f-' + name + '-' + value, value, 'data-sheet': 'text', checked: form[name] === value,
      }), label))));
    const chip = (name, shown) => this.chip(this.nameOf(name, form.verb), shown, 'choose', name);
    const length = name => chip(name, this.shownLength(form[name]));
    const chips = (...inside) => this.el('div', { class: 'chips field' }, inside);
    const by = this.data.people.length ? chip('by', form.by) : null;
    const body = this.data.bodies.length ? chip('body', form.body || '') : null;
    const light = radios('light', w.pocket_in_light, [['dark', w.pocket_light_dark], ['subdued', w.pocket_light_subdued], ['bright', w.pocket_light_bright]]);
    const parts = {
      load: () => [text('roll'), chips(this.chip(w.pocket_stock, this.stockText(form), 'choose', 'stock', { class: 'chip' }), body, by), light,
        this.el('fieldset', { class: 'field' }, this.el('legend', {}, w.pocket_ready_list), this.el('div', { class: 'ticks' }, this.data.ready.map(point =>
          this.el('label', {}, this.el('input', {
            type: 'checkbox', name: 'ready', id: 'f-ready-' + point.key, value: point.key, 'data-sheet': 'list', checked: (form.ready || []).includes(point.key),
          }), point.text)))),
        chips(length('head'), form.shortEndOf ? length('length') : null, chip('speedAfter', form.speedAfter)), this.el('div', { id: 'form-speed' }),
        form.n ? null : text('remark')],
      unload: () => [light, chips(length('tail'), length('left'), by), radios('shortEnd', w.pocket_what_is_left, [['kept', w.pocket_kept_end], ['thrown', w.pocket_thrown_end]]),
        form.n ? null : text('remark')],
      rewind: () => [chips(length('to')), radios('shutter', w.pocket_shutter, [['closed', w.pocket_closed], ['open', w.pocket_open]]),
        radios('in', w.pocket_rewound, [['camera', w.pocket_in_camera], ['dark', w.pocket_in_dark]]),
        this.el('div', { class: 'ticks field' }, this.el('label', {}, this.el('input', { type: 'checkbox', name: 'zeroed', id: 'f-zeroed', 'data-sheet': 'flag', checked: form.zeroed }), w.pocket_zeroed)), text('remark')],
      'run-off': () => [chips(length('to')), radios('lens', w.pocket_lens, [['capped', w.pocket_capped], ['open', w.pocket_open]])],
      fog: () => [chips(length('before'), length('after')), text('remark')],
      reload: () => [light, chips(length('lost'), length('to'), length('zeroMoved'), body, by)],
      note: () => [text('remark')],
      wind: () => [],
    }[form.verb]();
    this.put('form-body', this.el('div', { id: 'form-cautions' }), form.n ? this.when(form) : null, parts,
      this.el('div', { class: 'row' }, form.n ? this.button(form.struck ? w.pocket_unstrike : w.pocket_strike_it, 'strike', form.n) : null,
        this.button(w.pocket_leave, 'leave'), this.button(form.n ? w.pocket_correct_it : this.fill(w.pocket_log_it, { what: this.title(form.verb) }), 'log', undefined, { class: 'main' })));
    this.drawCautions();
  },

  /** What hurts film, beside the form that does it. */
  drawCautions() {
    const w = this.w;
    const form = Store.state.form;
    const roll = this.roll();
    const left = roll && form.verb !== 'load' ? Sums.filmLeft(roll.at) : null;
    const out = w.pocket_c_cartridge_out;
    const text = (this.data.cartridges ? { load: w.pocket_c_cartridge, unload: out, fog: out, reload: out } : {})[form.verb] || {
      load: form.light === 'bright' ? w.pocket_c_load_bright : w.pocket_c_load,
      unload: left === 0 ? w.pocket_c_unload_run_off : this.fill(form.light === 'dark' ? w.pocket_c_unload_dark : w.pocket_c_unload_light, { film: left === null ? '?' : this.length(left) }),
      rewind: form.shutter === 'open' ? w.pocket_c_rewind_open : w.pocket_c_rewind,
      'run-off': form.lens === 'open' ? w.pocket_c_run_off_open : w.pocket_c_run_off,
      fog: w.pocket_c_fog,
      reload: form.light === 'dark' ? w.pocket_c_reload : w.pocket_c_reload_light,
    }[form.verb];
    this.put('form-cautions', text ? this.el('p', { class: 'caution' }, text) : null);
    const loaded = this.data.bodies.find(b => b.name === form.body);
    if (form.verb === 'load' && loaded && loaded.loading) {
      this.put('form-speed', this.el('p', { class: 'caution' }, this.fill(w.pocket_c_speed, { speed: loaded.loading })));
    }
  },

  stockText(form) { return form.shortEndOf ? form.piece || form.shortEndOf + '-SE' : form.lot ? form.lot + (form.unit ? '/' + form.unit : '') : ''; },

  drawChoose() {
    const s = Store.state;
    const w = this.w;
    const what = s.choose.what;
    const sheet = this.sheet();
    const roll = this.roll();
    document.getElementById('choose-title').textContent = this.nameOf(what, s.form && s.form.verb) + (what === 'slate' ? ' · ' + this.slate(sheet) : '');
    const list = (options, now, act = 'pick') => this.el('ul', { class: 'list' }, options.map(([value, name, more]) =>
      this.row(name, more, act, value, { 'aria-pressed': String(Array.isArray(now) ? now.includes(value) : (now || '') === value) })));
    const foot = (...buttons) => this.el('div', { class: 'row' }, this.button(w.pocket_back, 'back'), buttons);
    const done = this.button(w.pocket_done, 'done', undefined, { class: 'main' });
    const none = ['', w.pocket_none, ''];
    const body = roll ? this.body(roll.at) : this.data.bodies[0];
    const speeds = (body && body.speeds.length ? body.speeds : ['16', '18', '24', '25', '48']).map(v => [v, v, this.w.pocket_a_second]);
    const pads = ['fadeIn', 'fadeOut', 'head', 'length', 'tail', 'left', 'before', 'after', 'zeroMoved', 'lost', 'to'];
    const drawn = pads.includes(what) ? () => this.lengthPad(what, roll, foot, done) : {
      who: () => [list(this.data.people.map(p => [p.id, p.id, p.name]), s.who), foot()],
      by: () => [list(this.data.people.map(p => [p.id, p.id, p.name]), sheet.by), foot()],
      speed: () => [list(speeds, this.speedOf(sheet, roll)), foot()],
      speedAfter: () => [list(speeds, sheet.speedAfter), foot()],
      lens: () => [list([...this.data.lenses.map(l => [l.name, l.name, l.what]), none], sheet.lens), foot()],
      body: () => [list(this.data.bodies.map(b => [b.name, b.name, b.what]), sheet.body), foot()],
      motor: () => [list([...this.data.motors.map(m => [m.name, m.name, m.what]), ['', w.pocket_spring, '']], sheet.motor), foot()],
      shutter: () => [list([...(body ? body.marks : []).map(m => [m, m, '']), none], sheet.shutter), foot()],
      filter: () => [list([...this.data.filters.map(f => [f.name, f.name, f.what]), none], (sheet.filter || []).length ? sheet.filter : '', 'filter'), foot(done)],
      stock: () => [list(this.cans(), null), foot()],
      stop: () => [this.stops(sheet, what), foot()],
      reading: () => [this.data.meters.length > 1 ? list(this.data.meters.map(m => [m.name, m.name, m.what]), this.meterOf(sheet), 'meter') : null,
        this.stops(sheet, what), list([none], sheet.reading), foot()],
      focus: () => this.focusPad(sheet, foot, done),
      remark: () => [this.el('div', { class: 'field' }, this.el('label', { class: 'name', for: 'f-remark-take' }, w.pocket_remark_how),
        this.el('textarea', { id: 'f-remark-take', name: 'remark', rows: 4, 'data-sheet': 'text' }, sheet.remark || '')), this.el('div', { class: 'row' }, done)],
      slate: () => [
        this.el('div', { class: 'step' }, this.button('−', 'number', '-1', { 'aria-label': w.pocket_take_before }), this.el('output', { id: 'step-now' }, this.slate(sheet)), this.button('+', 'number', '1', { 'aria-label': w.pocket_next_take })),
        this.el('div', { class: 'row' }, done),
        this.el('h3', {}, w.pocket_shots),
        list(this.data.shots.map((shot, i) => [String(i), shot.scene + shot.shot, this.fill(w.pocket_next_is, { n: this.nextOf(shot.scene, shot.shot) }) + (shot.what ? ' · ' + shot.what : '')]),
          String(this.data.shots.findIndex(shot => shot.scene === sheet.scene && shot.shot === (sheet.shot || ''))), 'shot'),
        this.el('h3', {}, w.pocket_other_shot),
        this.el('div', { class: 'set' }, [['scene', w.pocket_scene], ['shot', w.pocket_shot]].map(([name, text]) => this.el('div', { class: 'field' }, this.el('label', { class: 'name', for: 'f-' + name }, text),
          this.el('input', { id: 'f-' + name, name, type: 'text', value: sheet[name] || '', autocomplete: 'off', autocapitalize: 'characters', maxlength: 8, 'data-sheet': 'text' })))),
        this.el('div', { class: 'row' }, this.button(w.pocket_done, 'done', 'slate', { class: 'main' }))],
    }[what];
    this.put('choose-body', drawn());
  },

  cans() {
    const gone = Store.state.entries.filter(e => e.verb === 'load' && !e.struck && e !== Store.state.form);
    return this.data.stock
      .map((can, i) => [String(i), can.shortEndOf ? can.name : can.lot + '/' + can.unit, can.what + ' · ' + this.length(can.frames).replace(' ', '\u00a0'), can])
      .filter(([, , , can]) => !gone.some(e => can.shortEndOf ? Rolls.isEnd(can, e) : e.lot === can.lot && e.unit === can.unit));
  },

  /** A row for each full stop, of the lens or of a meter: itself, a third, a half and two thirds down. */
  stops(sheet, what) {
    const lens = what === 'stop' && this.data.lenses.find(l => l.name === sheet.lens);
    const rows = lens && lens.stops.length ? lens.stops : this.data.stops;
    return this.el('div', { class: 'grid' }, rows.flatMap(row => row.map((stop, i) => stop
      ? this.button(this.number(stop), 'pick', stop, { class: i === 0 ? 'full' : null, 'aria-pressed': String(sheet[what] === stop) }) : this.el('span'))));
  },

  focusPad(sheet, foot, done) {
    const s = Store.state;
    const w = this.w;
    const used = [...new Set([sheet.focus, ...[...s.entries].reverse().map(e => e.focus)].filter(f => f && f !== 'inf'))].slice(0, 3);
    const unit = name => this.button(name, 'pad', name, { 'aria-label': name + ', ' + w['pocket_unit_' + name] });
    return [
      this.el('div', { class: 'row' }, used.map(f => this.button(this.focusText(f), 'recent', f)), this.button('∞', 'recent', 'inf', { 'aria-label': '∞, ' + this.w.pocket_unit_inf })),
      this.el('p', { class: 'big', 'aria-live': 'polite' }, this.focusText(s.choose.typed) || '…'),
      this.el('div', { class: 'board' }, this.el('div', { class: 'pad' }, this.pad('123456789', this.button(this.data.decimal, 'pad', '.'))),
        this.el('div', { class: 'units' }, ['ft', 'in', 'm', 'cm'].map(name => unit(name)))),
      foot(done),
    ];
  },

  lengthPad(what, roll, foot, done) {
    const sheet = this.sheet();
    const w = this.w;
    const left = roll && what === 'left' ? Sums.filmLeft(roll.at) : null;
    const whole = what === 'to' && sheet.verb === 'run-off' && roll && roll.at.length !== null ? roll.at.length - roll.at.zero : left;
    return [
      this.el('p', { class: 'soft' }, w['pocket_how_' + what.toLowerCase()] || ''),
      this.el('p', { class: 'big', 'aria-live': 'polite' }, this.shownLength(sheet[what]) || '…', Sums.metric ? '' : this.el('small', { class: 'soft' }, ' ' + this.w.unit_feet)),
      whole ? this.el('div', { class: 'row' }, this.button(this.fill(what === 'left' ? this.w.pocket_all_left : this.w.pocket_to_the_end, { film: this.length(whole) }), 'whole', whole)) : null,
      this.el('div', { class: 'pad field' }, this.pad('123456789')), foot(done),
    ];
  },
};

Page.act.back2take = function () { this.go('take'); };

document.addEventListener('DOMContentLoaded', () => Page.begin());
