/* Findings: placed by a tap, listed with those still on their way, changed and taken back until the sheet is signed. */
import { Drafts } from './sheet-drafts.js';

const UNDO = 10000;
const words = (word) => word.replaceAll('-', ' ');

export class Found {
  constructor({ queue, plan, drafts, state, rerender }) {
    Object.assign(this, { queue, plan, drafts, state, rerender });
    this.list = document.getElementById('found');
    this.form = document.getElementById('finding-form');
    this.bar = document.getElementById('undo');
    this.bar.querySelector('button').addEventListener('click', () => { this.bar.hidden = true; this.undo(); });
    if (this.form) this.listen();
  }

  listen() {
    this.plan.onTap((x, y) => {
      this.bar.hidden = true;
      this.set('x', x);
      this.set('y', y);
      this.set('zone', this.plan.zoneAt(Number(x), Number(y)));
      this.drafts.keep(this.form);
      this.rerender();
    });
    this.form.elements.zone.addEventListener('change', () => { this.set('x', ''); this.set('y', ''); });
    this.form.addEventListener('change', (event) => { if (event.target.name === 'kind') this.kindChosen(true); });
    this.form.querySelector('#changing a').addEventListener('click', (event) => { event.preventDefault(); this.empty(); this.rerender(); });
  }

  set(name, value) { Drafts.set(this.form.elements[name], value); }

  /* A crack has a depth, the edge of a sealant holds or not; what the kind before asked for is let go. */
  kindChosen(anew) {
    const kind = this.form.elements.kind.value;
    this.form.querySelectorAll('[name=depth], [name=extent]').forEach((choice) => {
      if (anew) choice.checked = false;
      choice.required = choice.name === 'depth' ? kind === 'crack' : kind === 'adhesion';
    });
  }

  empty() {
    this.form.reset();
    ['x', 'y', 'finding', 'zone', 'lengthCm', 'note'].forEach((name) => this.set(name, ''));
    this.form.querySelectorAll('[type=radio]').forEach((choice) => { choice.checked = false; });
    this.kindChosen(true);
    document.getElementById('changing').hidden = true;
    this.drafts.forget(this.form);
  }

  /* Adds what the form holds, or puts it in the place of the finding that is changed. */
  add(form, typed) {
    const fields = typed.filter(([, value]) => value !== '');
    const old = form.elements.finding.value;
    const unsent = this.unsent(old);
    if (unsent) this.queue.drop(unsent);
    const sent = unsent ? fields.filter(([name]) => name !== 'finding') : fields;
    const entry = this.queue.add('findings', sent, this.inWords(Object.fromEntries(fields)));
    this.empty();
    this.rerender();
    this.offerUndo('Noted: ' + entry.words, () => this.takeBack('key:' + entry.key, null));
  }

  inWords(fields) {
    const length = fields.lengthCm ? ', ' + fields.lengthCm.replace(',', '.') + ' cm' : '';
    const how = [fields.depth, fields.extent].filter(Boolean).map((word) => ', ' + words(word)).join('');
    return words(fields.kind) + how + ', in ' + fields.zone + length;
  }

  /* Returns the entry that a reference names while it was surely never sent. */
  unsent(reference) {
    return this.queue.list().find((entry) => 'key:' + entry.key === reference && !entry.tried);
  }

  takeBack(reference, again) {
    const unsent = this.unsent(reference);
    if (unsent) this.queue.drop(unsent);
    else this.queue.add('withdrawals', [['finding', reference]], 'A finding taken back');
    this.rerender();
    if (again) this.offerUndo('Taken back: ' + again.words, () => this.queue.add('findings', again.fields, again.words));
  }

  offerUndo(what, undo) {
    this.undo = () => { undo(); this.rerender(); };
    this.bar.querySelector('span').textContent = what;
    this.bar.hidden = false;
    clearTimeout(this.timer);
    this.timer = setTimeout(() => { this.bar.hidden = true; }, UNDO);
  }

  change(row) {
    this.empty();
    Drafts.fill(this.form, [...row.fields, ['finding', row.reference]]);
    this.kindChosen(false);
    document.getElementById('changing').hidden = false;
    this.drafts.keep(this.form);
    this.rerender();
    this.form.scrollIntoView();
    this.form.elements.zone.focus({ preventScroll: true });
  }

  /* How many entries of the sheet an entry on its way becomes. */
  weight(entry) {
    if (entry.path === 'withdrawals') return 1;
    if (entry.path !== 'findings') return 0;
    return entry.fields.some(([name]) => name === 'finding') ? 2 : 1;
  }

  /* Returns the findings that stand once everything on its way has arrived. */
  standing() {
    const entries = this.queue.list();
    const gone = new Set(entries.flatMap((entry) => entry.fields.filter(([name]) => name === 'finding').map(([, id]) => this.idOf(id))));
    const sent = this.state().findings.map((found) => ({
      reference: found.id, words: found.words, note: found.note, about: found.who + ', ' + found.when, x: found.x, y: found.y,
      fields: ['x', 'y', 'zone', 'kind', 'depth', 'extent', 'lengthCm', 'note']
        .filter((name) => found[name] !== null && found[name] !== '').map((name) => [name, String(found[name])]),
    }));
    const known = new Set(sent.map((row) => row.reference));
    const waiting = entries.filter((entry) => entry.path === 'findings').map((entry) => {
      const fields = Object.fromEntries(entry.fields);
      const own = entry.fields.filter(([name]) => name !== 'finding');
      return { reference: 'key:' + entry.key, words: entry.words, note: fields.note, about: 'on this phone, not sent yet', x: fields.x, y: fields.y, fields: own, waiting: true };
    });
    return [...sent, ...waiting.filter((row) => !known.has(this.idOf(row.reference)))].filter((row) => !gone.has(this.idOf(row.reference)));
  }

  idOf(reference) {
    return reference.startsWith('key:') ? this.queue.recall('id:' + reference.slice(4)) || reference : reference;
  }

  render() {
    const rows = this.standing();
    this.draw(rows);
    const marks = JSON.stringify([rows, Boolean(this.state().mayFill)]);
    if (this.shown === marks) return;
    this.shown = marks;
    this.list.replaceChildren(...rows.map((row) => this.item(row)));
    document.getElementById('none-yet').hidden = rows.length > 0;
    const back = document.getElementById('taken-back');
    back.hidden = this.state().takenBack.length === 0;
    back.querySelector('ul').replaceChildren(...this.state().takenBack.map((gone) => element('li', gone.words)));
  }

  draw(rows) {
    const dots = rows.map((row, index) => ({ x: row.x, y: row.y, number: String(index + 1) })).filter((dot) => dot.x !== null && dot.x !== undefined);
    if (this.form && this.form.elements.x.value !== '') dots.push({ x: this.form.elements.x.value, y: this.form.elements.y.value });
    this.plan.draw(dots.map((dot) => ({ ...dot, x: Number(dot.x), y: Number(dot.y) })));
  }

  item(row) {
    const item = element('li');
    if (row.waiting) item.className = 'waiting';
    item.append(element('b', row.words));
    if (row.note) item.append(element('div', row.note));
    item.append(element('div', row.about, 'when'));
    if (this.state().mayFill) {
      const buttons = element('div', '', 'row-of');
      buttons.append(this.button('Change', row, () => this.change(row)), this.button('Take back', row, () => this.takeBack(row.reference, row)));
      item.append(buttons);
    }
    return item;
  }

  button(text, row, act) {
    const made = element('button', text, 'btn btn-plain btn-big');
    made.type = 'button';
    made.setAttribute('aria-label', text + ': ' + row.words);
    made.addEventListener('click', act);
    return made;
  }
}

function element(tag, text, className) {
  const made = document.createElement(tag);
  if (text) made.textContent = text;
  if (className) made.className = className;
  return made;
}
